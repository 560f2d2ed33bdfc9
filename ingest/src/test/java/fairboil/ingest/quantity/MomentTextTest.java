package fairboil.ingest.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MomentTextTest {

  private static Reading<ClockTime> read(String text) {
    return MomentText.read(text, Optional.empty(), DecimalMark.POINT);
  }

  private static ClockTime value(Reading<ClockTime> reading) {
    assertThat(reading).isInstanceOf(Reading.Read.class);
    return ((Reading.Read<ClockTime>) reading).value();
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "5:43, 343, 1",
        "0:45:00, 2700, 1",
        "3:59:59, 14399, 1",
        "5m43s, 343, 1",
        "343 s, 343, 1",
        "1:22.3, 82.3, 0.1",
        "00:01:246, 1.246, 0.001",
        "5.43 min, 325.8, 0.6",
        "90:00, 5400, 1"
      })
  void readsStopwatches(String text, double seconds, double resolution) {
    ClockTime.Elapsed elapsed = (ClockTime.Elapsed) value(read(text));

    assertThat(elapsed.seconds()).isCloseTo(seconds, org.assertj.core.api.Assertions.within(1e-9));
    assertThat(elapsed.resolution())
        .isCloseTo(resolution, org.assertj.core.api.Assertions.within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "14:05:30, 50730, 1, ",
    "04:00:00, 14400, 1, ",
    "2:05 pm, 50700, 60, ",
    "2:05:30 PM, 50730, 1, ",
    "12:00 am, 0, 60, ",
    "12:00 p.m., 43200, 60, ",
    "2 pm, 50400, 60, ",
    "2026-03-14 14:05:30, 50730, 1, 2026-03-14",
    "2026-03-14T14:05:30.25, 50730.25, 0.01, 2026-03-14",
    "2018-11-30-09:48:31, 35311, 1, 2018-11-30",
    "14.3.2026 9:05, 32700, 60, 2026-03-14",
    "2026-03-14 14:05:30 -08:00, 50730, 1, 2026-03-14"
  })
  void readsClocks(String text, double secondOfDay, double resolution, LocalDate date) {
    assertThat(value(read(text)))
        .isEqualTo(new ClockTime.TimeOfDay(secondOfDay, Optional.ofNullable(date), resolution));
  }

  @ParameterizedTest
  @CsvSource({"14:05, 50700", "2:05, 7500", "14h05, 50700", "9:54, 35640", "11:21:00 AM, 40860"})
  void readsTimesOfDayWhereOneIsWanted(String text, double secondOfDay) {
    ClockTime.TimeOfDay time = (ClockTime.TimeOfDay) value(MomentText.readTimeOfDay(text));
    assertThat(time.secondOfDay()).isEqualTo(secondOfDay);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"343", "5.43", "boil", "-5 s", "0.238194", "03/04/2026 14:00", "1:99", "13:00 pm"})
  void asksOtherwise(String text) {
    assertThat(read(text)).isInstanceOf(Reading.Refused.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"24:00", "14.05", "noon", "0:30 pm"})
  void asksOfTimesOfDayToo(String text) {
    assertThat(MomentText.readTimeOfDay(text)).isInstanceOf(Reading.Refused.class);
  }
}
