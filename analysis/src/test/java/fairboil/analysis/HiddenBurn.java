package fairboil.analysis;

import java.util.random.RandomGenerator;

/**
 * A burn whose truth is hidden from the program: its own formulas and figures throughout. Steam
 * over water by W. Wagner and A. Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783, equation (1); heat
 * capacity of water by the usual steam tables; both cited from memory. The fire grows, the open pot
 * steams, the pot loses more or less in the fire than beside it, both probes lag and are off, and
 * the flame flickers before its bead does.
 */
final class HiddenBurn {

  static final int POT_ON = 120;
  static final int LIT = 40;
  private static final int PLATEAU = 240;
  private static final int COOLING = 1500;
  private static final double[] HEAT = {
    4219.9, 4195.5, 4184.4, 4180.1, 4179.6, 4181.5, 4185.1, 4190.2, 4196.9, 4205.3, 4215.7
  };

  /** After the flame its probe is dipped into boiling water for a minute. */
  private static final double DIPPED = 300;

  private static final double LATENT = 2.257e6;
  private static final double STEP = 0.1;

  final double water;
  final double potGrams;
  final double start;
  final double ambient;
  final double pascals;
  final double waterLag;
  final double flameLag;

  private final double power;
  private final double growth;
  private final double perKelvin;
  private final double perPascal;
  private final double inFire;
  private final double potHeat;
  private final double waterOffset;
  private final double flameShare;
  private final double hottest;
  private final double crest;

  double boiledAt = Double.NaN;
  double truePeak;
  double potOff;
  double flameOut;
  double waterLeft;
  double[] seconds;
  double[] waterRead;
  double[] flameRead;

  HiddenBurn(RandomGenerator random) {
    water = between(random, 0.5, 1.6);
    potGrams = between(random, 150, 350);
    start = between(random, 5, 22);
    ambient = between(random, -5, 30);
    pascals = between(random, 75_000, 102_000);
    power = between(random, 500, 900) * Math.cbrt(water * water);
    growth = between(random, -0.2, 0.3) / 600;
    perKelvin = between(random, 0.8, 1.3) * Math.cbrt(water * water);
    perPascal = between(random, 0.0004, 0.0012) * Math.cbrt(water * water);
    inFire = between(random, 0.75, 1.25);
    potHeat = potGrams / 1000 * 897 * (1 + 0.05 * random.nextGaussian());
    waterLag = between(random, 3, 8);
    flameLag = between(random, 3, 8);
    waterOffset = between(random, -2.5, 2.5);
    flameShare = between(random, -0.0075, 0.0075);
    hottest = between(random, 600, 850);
    crest = between(random, 0.3, 0.7);
    run(random);
  }

  static double between(RandomGenerator random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** Pressure of steam over water, Pa. */
  static double steam(double celsius) {
    double kelvin = celsius + 273.15;
    double t = 1 - kelvin / 647.096;
    double sum =
        -7.85951783 * t
            + 1.84408259 * Math.pow(t, 1.5)
            - 11.7866497 * Math.pow(t, 3)
            + 22.6807411 * Math.pow(t, 3.5)
            - 15.9618719 * Math.pow(t, 4)
            + 1.80122502 * Math.pow(t, 7.5);
    return 22.064e6 * Math.exp(647.096 / kelvin * sum);
  }

  static double boilingPoint(double pascals) {
    double low = 50;
    double high = 110;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (steam(middle) < pascals) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static double heat(double celsius) {
    double tens = Math.max(0, Math.min(9.999, celsius / 10));
    int below = (int) tens;
    return HEAT[below] + (tens - below) * (HEAT[below + 1] - HEAT[below]);
  }

  private double lost(double celsius, double air, double ratio) {
    double moist = 0.5 * steam(Math.max(0, air));
    return ratio * perKelvin * (celsius - air) + perPascal * Math.max(0, steam(celsius) - moist);
  }

  /** Seconds from pot on until so much water boils there. */
  double boilTime(double kilograms, double from, double air, double boiling) {
    double celsius = from;
    double mass = kilograms;
    for (double t = 0; t < 7200; t += STEP) {
      double net = power * (1 + growth * t) - lost(celsius, air, inFire);
      double rise = net / (mass * heat(celsius) + potHeat) * STEP;
      mass -=
          perPascal * Math.max(0, steam(celsius) - 0.5 * steam(Math.max(0, air))) / LATENT * STEP;
      if (celsius + rise >= boiling) {
        return t + STEP * (boiling - celsius) / rise;
      }
      celsius += rise;
    }
    return Double.NaN;
  }

  private double flame(double t) {
    if (t < LIT) {
      return ambient;
    }
    double up = 1 - Math.exp(-(t - LIT) / 25);
    double middle = POT_ON + crest * (flameOut - POT_ON);
    double width = 0.35 * (flameOut - POT_ON);
    double swell =
        hottest - 120 * Math.pow((t - middle) / width, 2) / (1 + Math.pow((t - middle) / width, 2));
    double down = t < flameOut ? 1 : Math.exp(-(t - flameOut) / 40);
    return ambient + (swell - ambient) * up * down;
  }

  private void run(RandomGenerator random) {
    double boiling = boilingPoint(pascals);
    boiledAt = boilTime(water, start, ambient, boiling);
    potOff = POT_ON + Math.ceil(boiledAt) + PLATEAU;
    flameOut = potOff + 60;
    int length = (int) potOff + COOLING;
    seconds = new double[length];
    waterRead = new double[length];
    flameRead = new double[length];
    truePeak = truePeak();
    double celsius = start;
    double mass = water;
    double probe = start;
    double bead = ambient;
    double flicker = 0;
    double noise = 0;
    for (int i = 0; i < length; i++) {
      seconds[i] = i;
      noise = 0.8 * noise + 0.6 * 0.12 * random.nextGaussian();
      waterRead[i] = round(probe + waterOffset + noise);
      double read = bead + flameShare * bead + 0.5 * random.nextGaussian();
      flameRead[i] = round(read);
      for (int k = 0; k < 10; k++) {
        double t = i + k * STEP;
        boolean on = t >= POT_ON && t < potOff;
        double fire = on ? power * (1 + growth * (t - POT_ON)) : 0;
        double net = t < POT_ON ? 0 : fire - lost(celsius, ambient, on ? inFire : 1);
        double gone =
            t < POT_ON
                ? 0
                : perPascal * Math.max(0, steam(celsius) - 0.5 * steam(Math.max(0, ambient)));
        double next = celsius + net / (mass * heat(celsius) + potHeat) * STEP;
        double over = Math.max(0, next - boiling);
        mass -= STEP * gone / LATENT + over * (mass * heat(celsius) + potHeat) / LATENT;
        celsius = next - over;
        waterLeft = on ? mass : waterLeft;
        probe += STEP / waterLag * (celsius - probe);
        double keeps = Math.exp(-STEP / 2);
        flicker = keeps * flicker + Math.sqrt(1 - keeps * keeps) * 20 * random.nextGaussian();
        double gas = flame(t) + (t > LIT + 30 && t < flameOut ? flicker : 0);
        gas = t > flameOut + DIPPED && t < flameOut + DIPPED + 60 ? boiling : gas;
        bead += STEP / flameLag * (gas - bead);
      }
    }
  }

  private static double round(double value) {
    return Math.rint(value * 10) / 10;
  }

  /** Highest mean over 10 s of the flame beneath the flicker, from pot on to flame out. */
  private double truePeak() {
    double highest = 0;
    for (double from = POT_ON; from + 10 <= flameOut; from += 0.5) {
      double sum = 0;
      for (int k = 0; k <= 20; k++) {
        sum += flame(from + k * 0.5);
      }
      highest = Math.max(highest, sum / 21);
    }
    return highest;
  }
}
