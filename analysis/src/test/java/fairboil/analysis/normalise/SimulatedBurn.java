package fairboil.analysis.normalise;

import fairboil.analysis.heat.Fire;
import fairboil.analysis.heat.Loss;
import fairboil.analysis.heat.Surroundings;
import fairboil.analysis.trace.Trace;
import fairboil.analysis.water.Saturation;
import fairboil.analysis.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * What truly happens to a pot on a fire, second by second, by the classical Runge–Kutta method over
 * time, with the heat capacity of the water at each temperature and its mass at each moment. It
 * shares only the properties of water with the code under test.
 *
 * @param water kg put in
 * @param pot J/K
 * @param start °C
 * @param ambient °C
 * @param boilingPoint °C
 * @param fire the fire
 * @param loss the loss beside the fire
 * @param inFire UA in the fire, as a multiple of that beside it
 */
record SimulatedBurn(
    double water,
    double pot,
    double start,
    double ambient,
    double boilingPoint,
    Fire fire,
    Loss loss,
    double inFire) {

  static final int PLATEAU = 150;
  static final int COOLING = 1500;

  private static final double[] CAPACITY = new double[106];
  private static final double[] STEAM = new double[106];
  private static final double LATENT = Water.latentHeat(90);
  private static final int LONG = 6_000;

  static {
    for (int i = 0; i < CAPACITY.length; i++) {
      CAPACITY[i] = Water.heatCapacity(i, i);
      STEAM[i] = Saturation.pressure(i);
    }
  }

  /**
   * What came of it.
   *
   * @param boilAt when it boiled, s; NaN if it did not
   * @param celsius the water each second: heating, plateau, then cooling beside the fire
   * @param potOff when it came off, s
   * @param waterLeft kg then
   */
  @SuppressWarnings("ArrayRecordComponent") // of a simulation, not changed
  record Course(double boilAt, double[] celsius, int potOff, double waterLeft) {

    /** The readings of a probe, with first-order autoregressive noise. */
    Trace read(double sd, double memory, RandomGenerator random) {
      double keeps = Math.exp(-1 / memory);
      double[] seconds = new double[celsius.length];
      double[] noisy = celsius.clone();
      double noise = sd * random.nextGaussian();
      for (int i = 0; i < noisy.length; i++) {
        seconds[i] = i;
        noisy[i] += noise;
        noise = keeps * noise + Math.sqrt(1 - keeps * keeps) * sd * random.nextGaussian();
      }
      return Trace.of(seconds, noisy, 1);
    }
  }

  /** The same fire under another load in other air. */
  SimulatedBurn under(double otherWater, double otherStart, double air, double otherBoilingPoint) {
    return new SimulatedBurn(
        otherWater, pot, otherStart, air, otherBoilingPoint, fire, loss, inFire);
  }

  /** When it boils, s; NaN if it does not. */
  double boilAt() {
    double[] state = {start, water};
    for (int second = 0; second < LONG; second++) {
      double before = state[0];
      state = step(state, fire.at(second), fire.at(second + 0.5), fire.at(second + 1), inFire);
      if (state[0] >= boilingPoint) {
        return second + (boilingPoint - before) / (state[0] - before);
      }
    }
    return Double.NaN;
  }

  /** The whole course. */
  Course run() {
    List<Double> celsius = new ArrayList<>();
    double[] state = {start, water};
    double boilAt = boilAt();
    int potOff = (int) Math.ceil(boilAt) + PLATEAU;
    for (int second = 0; second < potOff; second++) {
      celsius.add(state[0]);
      double[] next =
          step(state, fire.at(second), fire.at(second + 0.5), fire.at(second + 1), inFire);
      double over = Math.max(0, next[0] - boilingPoint);
      double gone = over * (state[1] * CAPACITY[95] + pot) / LATENT;
      state = new double[] {next[0] - over, next[1] - gone};
    }
    double left = state[1];
    for (int second = 0; second < COOLING; second++) {
      celsius.add(state[0]);
      state = step(state, 0, 0, 0, 1);
    }
    return new Course(
        boilAt, celsius.stream().mapToDouble(Double::doubleValue).toArray(), potOff, left);
  }

  private double[] step(double[] state, double before, double middle, double after, double ratio) {
    double[] k1 = slope(state, before, ratio);
    double[] k2 = slope(moved(state, k1, 0.5), middle, ratio);
    double[] k3 = slope(moved(state, k2, 0.5), middle, ratio);
    double[] k4 = slope(moved(state, k3, 1), after, ratio);
    double[] next = new double[2];
    for (int i = 0; i < 2; i++) {
      next[i] = state[i] + (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]) / 6;
    }
    return next;
  }

  private static double[] moved(double[] state, double[] slope, double seconds) {
    return new double[] {state[0] + seconds * slope[0], state[1] + seconds * slope[1]};
  }

  private double[] slope(double[] state, double power, double ratio) {
    double air = Surroundings.USUAL_HUMIDITY * table(STEAM, ambient);
    double steam = loss.perPascal() * Math.max(0, table(STEAM, state[0]) - air);
    double net = power - ratio * loss.perKelvin() * (state[0] - ambient) - steam;
    double capacity = state[1] * table(CAPACITY, state[0]) + pot;
    return new double[] {net / capacity, -steam / LATENT};
  }

  private static double table(double[] table, double celsius) {
    double within = Math.max(0, Math.min(table.length - 1.001, celsius));
    int below = (int) within;
    return table[below] + (within - below) * (table[below + 1] - table[below]);
  }
}
