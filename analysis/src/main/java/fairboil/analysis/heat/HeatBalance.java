package fairboil.analysis.heat;

import fairboil.analysis.water.Water;
import java.util.OptionalDouble;

/**
 * The heat balance of a pot on a fire, {@code C dT/dt = P0 (1 + g t) − UA (T − Ta) − k [ps(T) −
 * e]}, with {@code C} the mean heat capacity of the load, less that of the water that has left as
 * steam.
 *
 * <p>Water that only warms up passes each temperature once, so that the balance is integrated over
 * temperature, {@code dt/dT}: then the end is known beforehand, and a fixed number of steps of the
 * classical Runge–Kutta method will do. A fire that cannot bring the load up has no finite time.
 */
public final class HeatBalance {

  private static final int STEPS = 24;

  /** The power that is left over must stay above this share of the fire's first. */
  private static final double LEAST_SHARE_LEFT = 0.01;

  private static final double CLOSE_ENOUGH = 1e-9;
  private static final int MOST_TRIES = 60;
  private static final double HIGHEST_STEP = 0.5;
  private static final double FLATTEST = -0.2;

  private final Load load;
  private final Surroundings air;
  private final double heat;
  private final double step;
  private final double capacity;
  private final double leavingPerJoule;
  private final double[] steamAbove = new double[2 * STEPS + 1];

  private HeatBalance(Load load, Surroundings air) {
    this.load = load;
    this.air = air;
    this.heat = load.heat();
    this.step = (load.to() - load.from()) / STEPS;
    this.capacity = heat / (load.to() - load.from());
    double middle = (load.from() + load.to()) / 2;
    double ofWater = (capacity - load.pot()) / load.water();
    this.leavingPerJoule = ofWater / Water.latentHeat(middle);
    for (int i = 0; i < steamAbove.length; i++) {
      steamAbove[i] = air.steamAbove(load.from() + i * step / 2);
    }
  }

  /**
   * The balance of a load.
   *
   * @param load what is heated
   * @param air the air about it
   */
  public static HeatBalance of(Load load, Surroundings air) {
    return new HeatBalance(load, air);
  }

  /**
   * The time from pot on until the load reaches its end, s.
   *
   * @return empty if this fire never brings it there
   */
  public OptionalDouble seconds(Fire fire, Loss loss) {
    return new Course(fire, loss).seconds();
  }

  /**
   * The power of a fire, growing as told, that brings the load to its end in a time, W.
   *
   * @param seconds the time, above 0
   * @param growth growth a second as a share of the power sought, 1/s
   * @return empty if there is none: the fire would have died down before
   */
  public OptionalDouble power(double seconds, double growth, Loss loss) {
    double grown = 1 + growth * seconds;
    if (!(seconds > 0) || !(grown > 0)) {
      return OptionalDouble.empty();
    }
    double middle = (load.from() + load.to()) / 2;
    double mean = heat / seconds + Math.max(0, loss.watts(middle, air));
    return refine(mean / ((1 + grown) / 2), seconds, growth, loss);
  }

  /** Secant steps in log time against log power, which is nearly a straight line. */
  private OptionalDouble refine(double first, double seconds, double growth, Loss loss) {
    double power = first;
    double last = Double.NaN;
    double lastOff = Double.NaN;
    for (int i = 0; i < MOST_TRIES; i++) {
      OptionalDouble time = seconds(new Fire(power, growth), loss);
      if (time.isEmpty()) {
        power *= 1 + HIGHEST_STEP;
        last = Double.NaN;
        continue;
      }
      double off = Math.log(time.getAsDouble() / seconds);
      if (Math.abs(off) < CLOSE_ENOUGH) {
        return OptionalDouble.of(power);
      }
      double slope = Double.isNaN(last) ? -1 : (off - lastOff) / Math.log(power / last);
      double change = -off / (slope < FLATTEST ? slope : FLATTEST);
      last = power;
      lastOff = off;
      power *= Math.exp(Math.max(-HIGHEST_STEP, Math.min(HIGHEST_STEP, change)));
    }
    return OptionalDouble.empty();
  }

  /**
   * One course of the balance: two unknowns, time and heat that left as steam, over temperature.
   */
  private final class Course {

    private final Fire fire;
    private final Loss loss;
    private final double least;
    private boolean stalled;

    Course(Fire fire, Loss loss) {
      this.fire = fire;
      this.loss = loss;
      this.least = LEAST_SHARE_LEFT * fire.power();
    }

    OptionalDouble seconds() {
      double half = step / 2;
      double time = 0;
      double steam = 0;
      for (int i = 0; i < STEPS && !stalled; i++) {
        double steam0 = steamWatts(2 * i);
        double steam1 = steamWatts(2 * i + 1);
        double steam2 = steamWatts(2 * i + 2);
        double k0 = slope(2 * i, time, steam, steam0);
        double k1 = slope(2 * i + 1, time + k0 * half, steam + steam0 * k0 * half, steam1);
        double k2 = slope(2 * i + 1, time + k1 * half, steam + steam1 * k1 * half, steam1);
        double k3 = slope(2 * i + 2, time + k2 * step, steam + steam1 * k2 * step, steam2);
        time += (k0 + 2 * k1 + 2 * k2 + k3) * step / 6;
        steam += (steam0 * k0 + 2 * steam1 * (k1 + k2) + steam2 * k3) * step / 6;
      }
      return stalled ? OptionalDouble.empty() : OptionalDouble.of(time);
    }

    private double steamWatts(int node) {
      return loss.perPascal() * steamAbove[node];
    }

    /** Seconds for each kelvin. */
    private double slope(int node, double time, double steam, double steamWatts) {
      double above = load.from() + node * step / 2 - air.ambient();
      double left = fire.at(time) - loss.perKelvin() * above - steamWatts;
      if (!(left > least)) {
        stalled = true;
        return 0;
      }
      return (capacity - steam * leavingPerJoule) / left;
    }
  }
}
