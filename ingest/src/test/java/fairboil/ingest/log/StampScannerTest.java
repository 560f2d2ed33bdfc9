package fairboil.ingest.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The reference is {@code java.time}: what its formatters write must be read back. */
class StampScannerTest {

  private final StampScanner scanner = new StampScanner();

  private boolean scan(String text) {
    return scanner.scan(text.toCharArray(), 0, text.length());
  }

  @Property
  void readsWhatJavaTimeWrites(@ForAll @LongRange(min = 0, max = 4_000_000_000_000L) long millis) {
    LocalDateTime time = LocalDateTime.ofEpochSecond(millis / 1000, 0, ZoneOffset.UTC);
    check(time, "uuuu-MM-dd HH:mm:ss", DateOrder.YEAR_MONTH_DAY);
    check(time, "uuuu/M/d,H:m:s", DateOrder.YEAR_MONTH_DAY);
    check(time, "dd.MM.uuuu HH:mm:ss", DateOrder.DAY_MONTH_YEAR);
    check(time, "MM/dd/uuuu hh:mm:ss a", DateOrder.MONTH_DAY_YEAR);
    check(time, "d-MMM-uuuu HH:mm:ss", DateOrder.DAY_MONTH_YEAR);
    check(time, "uuuu-MM-dd'T'HH:mm:ss.SSS", DateOrder.YEAR_MONTH_DAY);
  }

  private void check(LocalDateTime time, String pattern, DateOrder order) {
    String text = time.format(DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH));
    assertThat(scan(text)).as(text).isTrue();
    assertThat(order.date(scanner)).as(text).contains(time.toLocalDate());
    assertThat(scanner.seconds(ClockStyle.HOURS_FIRST))
        .as(text)
        .isEqualTo(time.toLocalTime().toSecondOfDay());
  }

  @Property
  void readsOffsets(@ForAll @LongRange(min = -64, max = 64) long quarters) {
    ZoneOffset offset = ZoneOffset.ofTotalSeconds((int) quarters * 900);
    OffsetDateTime time = LocalDateTime.of(2026, 3, 14, 10, 0, 1).atOffset(offset);
    for (String pattern : new String[] {"uuuu-MM-dd HH:mm:ssxxx", "uuuu-MM-dd HH:mm:ss xx"}) {
      String text = time.format(DateTimeFormatter.ofPattern(pattern, Locale.ROOT));
      assertThat(scan(text)).as(text).isTrue();
      assertThat(scanner.offsetSeconds()).as(text).isEqualTo(offset.getTotalSeconds());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0:05, MINUTES_FIRST, 5",
    "75:30, MINUTES_FIRST, 4530",
    "1:02.5, MINUTES_FIRST, 62.5",
    "14:05, HOURS_FIRST, 50700",
    "1:00:00, MINUTES_FIRST, 3600",
    "27:00:00, HOURS_FIRST, 97200",
    "12:00:05 AM, HOURS_FIRST, 5",
    "12:00:05 PM, HOURS_FIRST, 43205",
    "1:34 p.m., HOURS_FIRST, 48840",
    "23:44:40:402, HOURS_FIRST, 85480.402",
    "00:01:246, MILLISECONDS_LAST, 1.246"
  })
  void readsTimes(String text, ClockStyle style, double seconds) {
    assertThat(scan(text)).isTrue();
    assertThat(scanner.isProper()).isTrue();
    assertThat(scanner.seconds(style)).isEqualTo(seconds);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "12",
        "19.1",
        "10:",
        ":30",
        "10:00:00 boil",
        "1/2",
        "2026-01",
        "a:b",
        "10:000",
        "2026-01-25 18:39:53 +25:99",
        "1:2:3:4:5"
      })
  void refusesWhatIsNoMoment(String text) {
    assertThat(scan(text)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"10:61", "10:00:75", "13:00:00 PM", "0:30 AM"})
  void findsImproperTimes(String text) {
    assertThat(scan(text)).isTrue();
    assertThat(scanner.isProper()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "2026-01-25, YEAR_MONTH_DAY",
    "25/01/2026, DAY_MONTH_YEAR",
    "01/25/2026, MONTH_DAY_YEAR",
    "05.03.2026, DAY_MONTH_YEAR",
    "06/27/20, MONTH_DAY_YEAR"
  })
  void knowsTheOrderOfADate(String text, DateOrder order) {
    assertThat(scan(text)).isTrue();
    assertThat(DateOrder.allowedBy(scanner)).containsExactly(order);
  }

  @ParameterizedTest
  @ValueSource(strings = {"01/11/2026", "1-11-2026"})
  void asksForTheOrderOfADate(String text) {
    assertThat(scan(text)).isTrue();
    assertThat(DateOrder.allowedBy(scanner))
        .containsExactly(DateOrder.DAY_MONTH_YEAR, DateOrder.MONTH_DAY_YEAR);
    assertThat(DateOrder.DAY_MONTH_YEAR.date(scanner)).contains(LocalDate.of(2026, 11, 1));
  }
}
