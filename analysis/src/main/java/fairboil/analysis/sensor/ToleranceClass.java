package fairboil.analysis.sensor;

import java.util.Locale;
import java.util.Optional;

/** Tolerance classes of sensors as sold. */
public enum ToleranceClass {
  /** Thermocouple, IEC 60584-1 class 1. */
  CLASS_1("1"),
  /** Thermocouple, IEC 60584-1 class 2. */
  CLASS_2("2"),
  /** Thermocouple for the cold, IEC 60584-1 class 3. */
  CLASS_3("3"),
  /** Thermocouple, ASTM E230 special limits of error. */
  SPECIAL("SPECIAL"),
  /** Thermocouple, ASTM E230 standard limits of error. */
  STANDARD("STANDARD"),
  /** Platinum thermometer, IEC 60751 class AA. */
  CLASS_AA("AA"),
  /** Platinum thermometer, IEC 60751 class A. */
  CLASS_A("A"),
  /** Platinum thermometer, IEC 60751 class B. */
  CLASS_B("B");

  private final String word;

  ToleranceClass(String word) {
    this.word = word;
  }

  /** The class that a person wrote, such as {@code class 2}, {@code special} or {@code A}. */
  public static Optional<ToleranceClass> named(String text) {
    String wanted =
        text.toUpperCase(Locale.ROOT)
            .replaceAll("CLASS|LIMITS?|OF ERROR|GRADE", "")
            .replaceAll("[\\s_-]", "");
    for (ToleranceClass tolerance : values()) {
      if (tolerance.word.equals(wanted)) {
        return Optional.of(tolerance);
      }
    }
    return Optional.empty();
  }
}
