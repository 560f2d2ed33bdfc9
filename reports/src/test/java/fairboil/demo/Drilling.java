package fairboil.demo;

import java.util.List;
import java.util.stream.Stream;

/** Drilling errors of a stated size: what is left of them after the best fit has it exactly. */
final class Drilling {

  private Drilling() {}

  /**
   * Errors of the holes of a wall ring. Turning the whole ring is no error, so the mean error along
   * the wrap is taken out; a mean error in height is one, and stays.
   *
   * @param rms root mean square of the distances from the intended places, mm
   */
  static List<Spot> wall(int holes, double rms, Chance chance) {
    List<Spot> raw = raw(holes, chance);
    double turn = raw.stream().mapToDouble(Spot::first).sum() / holes;
    return scaled(raw.stream().map(error -> error.plus(new Spot(-turn, 0))).toList(), rms);
  }

  /**
   * Errors of the holes of a base. Shifting and turning the whole pattern is no error.
   *
   * @param intended the intended places, whose mean is the origin
   * @param rms root mean square of the distances from the intended places, mm
   */
  static List<Spot> base(List<Spot> intended, double rms, Chance chance) {
    List<Spot> raw = raw(intended.size(), chance);
    double x = raw.stream().mapToDouble(Spot::first).sum() / raw.size();
    double y = raw.stream().mapToDouble(Spot::second).sum() / raw.size();
    List<Spot> centred = raw.stream().map(error -> error.plus(new Spot(-x, -y))).toList();
    return scaled(unturned(intended, centred), rms);
  }

  private static List<Spot> raw(int holes, Chance chance) {
    return Stream.generate(() -> new Spot(chance.gauss(1), chance.gauss(1))).limit(holes).toList();
  }

  private static List<Spot> unturned(List<Spot> intended, List<Spot> errors) {
    double moment = 0;
    double inertia = 0;
    for (int i = 0; i < errors.size(); i++) {
      Spot place = intended.get(i);
      moment += place.first() * errors.get(i).second() - place.second() * errors.get(i).first();
      inertia += place.square();
    }
    double turn = moment / inertia;
    return Stream.iterate(0, i -> i < errors.size(), i -> i + 1)
        .map(i -> errors.get(i).plus(sideways(intended.get(i)).times(-turn)))
        .toList();
  }

  private static Spot sideways(Spot place) {
    return new Spot(-place.second(), place.first());
  }

  private static List<Spot> scaled(List<Spot> errors, double rms) {
    double now = StrictMath.sqrt(errors.stream().mapToDouble(Spot::square).sum() / errors.size());
    return errors.stream().map(error -> error.times(rms / now)).toList();
  }
}
