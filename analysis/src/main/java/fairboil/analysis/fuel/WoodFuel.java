package fairboil.analysis.fuel;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Lower heating values of dry wood fuels, J/kg, with the standard uncertainty that the kind leaves.
 *
 * <p>Sources: wood of pines 19.13 MJ/kg with a standard deviation of 0.54 over published values (M.
 * J. Stolarski and others, Energies 15 (2022) 1442), and the typical values of ISO 17225-1 for
 * coniferous and deciduous wood, 19.1 and 18.9 MJ/kg (from memory); cones 17.81 to 19.86 MJ/kg (M.
 * Aniszewska, A. Gendek, Leśne Prace Badawcze, on cones of forest trees: taken as a rectangle).
 */
public enum WoodFuel {
  /** Cones, whatever the tree. */
  CONES(18.8e6, 0.6e6, "cone", "cones", "pinecones"),
  /** Wood of conifers. */
  CONIFER(
      19.1e6,
      0.5e6,
      "conifer",
      "coniferous",
      "softwood",
      "spruce",
      "pine",
      "fir",
      "larch",
      "douglas",
      "cedar",
      "hemlock",
      "juniper",
      "redwood",
      "yew"),
  /** Wood of broadleaved trees. */
  BROADLEAF(
      18.9e6,
      0.5e6,
      "broadleaf",
      "broadleaved",
      "deciduous",
      "hardwood",
      "beech",
      "oak",
      "birch",
      "ash",
      "maple",
      "alder",
      "willow",
      "poplar",
      "aspen",
      "hazel",
      "hornbeam",
      "elm",
      "hickory",
      "cherry",
      "apple",
      "robinia",
      "eucalyptus"),
  /** Wood of which no more is told: anything from broadleaved to resinous. */
  WOOD(
      19.0e6,
      0.6e6,
      "wood",
      "firewood",
      "pellet",
      "pellets",
      "stick",
      "sticks",
      "twig",
      "twigs",
      "chip",
      "chips",
      "kindling",
      "branches");

  /**
   * Lower heating value of char, J/kg, and its standard uncertainty: common practice, no source;
   * charcoals range from 28 to 33 MJ/kg by how far they were charred.
   */
  public static final double CHAR = 29.5e6;

  /** Standard uncertainty of {@link #CHAR}, J/kg. */
  public static final double CHAR_UNCERTAINTY = 1.5e6;

  /** Stuff of which the words above would tell the wrong thing. */
  private static final List<String> NOT_WOOD =
      List.of(
          "straw",
          "husk",
          "husks",
          "shell",
          "shells",
          "dung",
          "bark",
          "grass",
          "bamboo",
          "reed",
          "peat",
          "paper",
          "cardboard",
          "coal",
          "charcoal",
          "alcohol",
          "gel",
          "gas",
          "torrefied");

  private final double heatingValue;
  private final double uncertainty;
  private final List<String> words;

  WoodFuel(double heatingValue, double uncertainty, String... words) {
    this.heatingValue = heatingValue;
    this.uncertainty = uncertainty;
    this.words = List.of(words);
  }

  /** Lower heating value of the dry fuel, J/kg. */
  public double heatingValue() {
    return heatingValue;
  }

  /** Its standard uncertainty, J/kg. */
  public double uncertainty() {
    return uncertainty;
  }

  /** The kind that words of people tell, such as {@code spruce pellets}, if they do. */
  public static Optional<WoodFuel> named(String text) {
    List<String> told = Arrays.asList(text.toLowerCase(Locale.ROOT).split("[^\\p{L}]+", -1));
    return told.stream().anyMatch(NOT_WOOD::contains)
        ? Optional.empty()
        : Arrays.stream(values())
            .filter(kind -> told.stream().anyMatch(kind.words::contains))
            .findFirst();
  }
}
