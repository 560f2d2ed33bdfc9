package fairboil.analysis.sensor;

import java.util.Locale;
import java.util.Optional;

/** Thermocouple types by their letters (IEC 60584-1), and the platinum thermometer. */
public enum SensorType {
  /** Platinum–30 % rhodium against platinum–6 % rhodium. */
  B,
  /** Nickel–chromium against copper–nickel. */
  E,
  /** Iron against copper–nickel. */
  J,
  /** Nickel–chromium against nickel–aluminium. */
  K,
  /** Nickel–chromium–silicon against nickel–silicon. */
  N,
  /** Platinum–13 % rhodium against platinum. */
  R,
  /** Platinum–10 % rhodium against platinum. */
  S,
  /** Copper against copper–nickel. */
  T,
  /** Platinum resistance thermometer of 100 Ω at 0 °C (IEC 60751). */
  PT100;

  /** The type that a person wrote, such as {@code K}, {@code type K} or {@code Pt 100}. */
  public static Optional<SensorType> named(String text) {
    String word =
        text.toUpperCase(Locale.ROOT)
            .replace("THERMOCOUPLE", "")
            .replace("TYPE", "")
            .replaceAll("[\\s_-]", "");
    for (SensorType type : values()) {
      if (type.name().equals(word)) {
        return Optional.of(type);
      }
    }
    return word.startsWith("PT100") ? Optional.of(PT100) : Optional.empty();
  }

  /** Whether it is a thermocouple. */
  public boolean isThermocouple() {
    return this != PT100;
  }
}
