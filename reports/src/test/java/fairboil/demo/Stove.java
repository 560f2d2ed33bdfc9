package fairboil.demo;

import java.util.List;

/**
 * A stove of the demonstration as built, and what it is truly like.
 *
 * @param name its name
 * @param design its design
 * @param upperRms hole-position error of its upper ring, mm
 * @param lowerRms that of its lower ring, mm
 * @param baseRms that of its base, mm
 * @param notes for the sheet
 */
record Stove(
    String name, Design design, double upperRms, double lowerRms, double baseRms, String notes) {

  /** All stoves, in the order of the sheet. */
  static List<Stove> all() {
    return List.of(
        new Stove("L1", Design.LEEK, 1.1, 1.3, 0.7, ""),
        new Stove("L2", Design.LEEK, 2.4, 0.8, 1.2, "rained off in October: three burns only"),
        new Stove("L3", Design.LEEK, 0.6, 1.9, 0.5, "drilled in a jig"),
        new Stove("L4", Design.LEEK, 3.9, 1.1, 0.9, "punched by eye"),
        new Stove("L5", Design.LEEK, 1.7, 0.6, 1.4, ""),
        new Stove("L6", Design.LEEK, 3.1, 1.5, 0.6, ""),
        new Stove("M1", Design.MARROW, 2.0, 0.9, 1.1, ""),
        new Stove("M2", Design.MARROW, 0.8, 1.4, 0.8, "drilled in a jig"),
        new Stove("M3", Design.MARROW, 3.5, 1.0, 1.3, ""),
        new Stove("M4", Design.MARROW, 2.7, 2.0, 0.6, ""),
        new Stove("M5", Design.MARROW, 1.4, 0.7, 1.0, ""),
        new Stove("M6", Design.MARROW, 4.3, 1.6, 0.7, "punched by eye"));
  }
}
