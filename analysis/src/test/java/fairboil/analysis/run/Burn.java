package fairboil.analysis.run;

import java.util.Random;

/** A burn whose truth is known, made with formulas of the tests' own: 1 s readings. */
final class Burn {

  static final double BOILING = 98.99;
  static final double AMBIENT = 8;
  static final double START = 12;
  static final double WATER = 0.8;
  static final double POT_GRAMS = 240;
  static final double POWER = 450;
  static final int POT_ON = 90;
  static final int LENGTH = 1800;
  static final int FLAME_OUT = 1500;

  final double[] seconds = new double[LENGTH];
  final double[] flame = new double[LENGTH];
  final double[] water = new double[LENGTH];
  final double boiledAt;

  /** A burn with this share of the usual power. */
  Burn(double share, long seed) {
    Random random = new Random(seed);
    double capacity = WATER * 4187 + POT_GRAMS / 1000 * 897;
    double celsius = START;
    double boiled = Double.NaN;
    for (int i = 0; i < LENGTH; i++) {
      seconds[i] = i;
      double fire = i < FLAME_OUT ? 700 * (1 - Math.exp(-i / 30.0)) : 350;
      flame[i] = AMBIENT + fire + 3 * random.nextGaussian();
      water[i] = celsius + 0.2 * random.nextGaussian();
      for (int k = 0; k < 10 && i >= POT_ON; k++) {
        double net = (i < FLAME_OUT ? POWER * share : 0) - 1.2 * (celsius - AMBIENT);
        celsius = Math.min(BOILING, celsius + net / capacity * 0.1);
        boiled = celsius >= BOILING && Double.isNaN(boiled) ? i + (k + 1) * 0.1 : boiled;
      }
    }
    boiledAt = boiled;
  }
}
