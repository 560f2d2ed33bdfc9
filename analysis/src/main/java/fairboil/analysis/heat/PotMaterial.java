package fairboil.analysis.heat;

import java.util.Locale;
import java.util.Optional;

/**
 * What pots are made of, with specific heat capacities near room temperature, in J/(kg K).
 *
 * <p>Elements: CRC Handbook of Chemistry and Physics, "Heat Capacity of the Elements at 25 °C".
 * Stainless steel (18/8), carbon steel and glass: handbook values of ASM and makers' data sheets.
 */
public enum PotMaterial {
  /** Aluminium, bare or anodised. */
  ALUMINIUM(897, "aluminium", "aluminum", "alu", "al", "hard anodised", "hard anodized"),
  /** Stainless steel. */
  STAINLESS_STEEL(500, "stainless", "inox"),
  /** Titanium. */
  TITANIUM(523, "titanium", "ti"),
  /** Copper. */
  COPPER(385, "copper", "cu"),
  /** Carbon steel, tinplate or enamelled steel. */
  STEEL(486, "steel", "tin", "enamel", "tinplate"),
  /** Iron, cast or wrought. */
  IRON(449, "iron", "fe"),
  /** Borosilicate glass. */
  GLASS(830, "glass");

  /** Relative standard uncertainty of a specific heat: of alloys, and of parts of another stuff. */
  public static final double RELATIVE_UNCERTAINTY = 0.05;

  private final double specificHeat;
  private final String[] words;

  PotMaterial(double specificHeat, String... words) {
    this.specificHeat = specificHeat;
    this.words = words;
  }

  /** Specific heat capacity, J/(kg K). */
  public double specificHeat() {
    return specificHeat;
  }

  /** The material that a person wrote, such as {@code stainless steel}. */
  public static Optional<PotMaterial> named(String text) {
    String written = text.strip().toLowerCase(Locale.ROOT);
    for (PotMaterial material : values()) {
      for (String word : material.words) {
        boolean symbol = word.length() <= 3;
        if (symbol ? written.equals(word) : written.contains(word)) {
          return Optional.of(material);
        }
      }
    }
    return Optional.empty();
  }
}
