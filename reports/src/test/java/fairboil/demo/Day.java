package fairboil.demo;

import java.time.LocalDate;
import java.util.List;

/**
 * A day of burns of the demonstration.
 *
 * @param season 1 to 4: the number that its runs end with
 * @param date the day
 * @param morning air temperature at the first burn, °C
 * @param tap temperature of the water from the butt, °C
 * @param wind Beaufort number
 * @param weather in words
 * @param seaLevel air pressure reduced to sea level, Pa
 * @param barometer what was read of it
 * @param moisture water in the fuel, percent of moist fuel
 */
record Day(
    int season,
    LocalDate date,
    double morning,
    double tap,
    int wind,
    String weather,
    double seaLevel,
    Barometer barometer,
    double moisture) {

  /** Height of the allotments above sea level, m. */
  static final double ALTITUDE = 410;

  /** What the group knew of the air pressure on a day. */
  enum Barometer {
    /** Read at the place. */
    THERE,
    /** Taken from the forecast, reduced to sea level. */
    FORECAST,
    /** Not taken. */
    NONE
  }

  /** All days, in order. */
  static List<Day> all() {
    return List.of(
        day(1, "2025-01-18", -8.5, 3, 1, "clear frost", 102_600, Barometer.THERE, 7.6),
        day(1, "2025-01-19", -4, 4, 0, "high cloud", 102_100, Barometer.THERE, 7.6),
        day(2, "2025-04-12", 3.5, 8, 1, "sun and cloud", 100_900, Barometer.FORECAST, 8.1),
        day(2, "2025-04-13", 6, 9, 2, "breezy", 101_200, Barometer.FORECAST, 8.1),
        day(3, "2025-07-19", 19, 16, 0, "sun", 101_800, Barometer.THERE, 7.2),
        day(3, "2025-07-20", 22, 17, 1, "haze", 101_500, Barometer.THERE, 7.2),
        day(4, "2025-10-11", 4.5, 11, 1, "fog, then sun", 101_100, Barometer.NONE, 8.8),
        day(4, "2025-10-12", 8, 12, 2, "breezy, showers later", 100_700, Barometer.NONE, 8.8));
  }

  private static Day day(
      int season,
      String date,
      double morning,
      double tap,
      int wind,
      String weather,
      double seaLevel,
      Barometer barometer,
      double moisture) {
    return new Day(
        season, LocalDate.parse(date), morning, tap, wind, weather, seaLevel, barometer, moisture);
  }

  /** Air pressure at the allotments, Pa. */
  double pressure() {
    return Air.pressureAt(ALTITUDE, seaLevel);
  }

  /** Air temperature at the burn of that place in the day, from 0, °C. */
  double air(int slot) {
    return morning + 5.5 * StrictMath.sin(Math.PI * slot / 8);
  }
}
