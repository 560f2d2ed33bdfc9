package fairboil.ingest.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DateTextTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026-03-14|2026-03-14", "2026/3/14|2026-03-14", "14/03/2026|2026-03-14",
        "03/14/2026|2026-03-14", "03/03/2026|2026-03-03", "14.3.2026|2026-03-14",
        "3.4.2026|2026-04-03", "14 March 2026|2026-03-14", "14-Mar-2026|2026-03-14",
        "March 14, 2026|2026-03-14", "14th Mar 2026|2026-03-14", "06/27/20|2020-06-27",
        "2026-03-14 00:00:00|2026-03-14", "2024-02-29|2024-02-29"
      })
  void readsDatesThatCanMeanOneDayOnly(String text, LocalDate date) {
    assertThat(DateText.read(text)).isEqualTo(Reading.Read.of(date));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "03/04/2026|type 2026-03-04 or 2026-04-03",
        "14/03/26|type 2014-03-26 or 2026-03-14",
        "2026-02-30|2026-03-14",
        "06-May|2026-03-14",
        "45000|2026-03-14",
        "yesterday|2026-03-14"
      })
  void asksOtherwise(String text, String remedy) {
    assertThat(((Reading.Refused<LocalDate>) DateText.read(text)).remedy().toString())
        .contains(remedy);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "-", "n/a", "?"})
  void knowsWaysToSayNothing(String text) {
    assertThat(DateText.read(text)).isInstanceOf(Reading.Missing.class);
  }

  @Property
  void readsEveryDayAsIsoWritesIt(@ForAll @IntRange(min = 0, max = 40_000) int day) {
    LocalDate date = LocalDate.ofEpochDay(day);
    assertThat(DateText.read(date.toString())).isEqualTo(Reading.Read.of(date));
  }
}
