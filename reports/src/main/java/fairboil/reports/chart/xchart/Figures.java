package fairboil.reports.chart.xchart;

import fairboil.reports.chart.Axis;
import fairboil.reports.chart.Axis.Ticks;
import fairboil.reports.words.Fixed;

/** The figures along an axis. */
final class Figures {

  private static final double ROUNDING = 1e-9;

  private final Ticks ticks;
  private final int decimals;

  private Figures(Ticks ticks, int decimals) {
    this.ticks = ticks;
    this.decimals = decimals;
  }

  /** Of an axis that is marked at the multiples of a step. */
  static Figures of(Axis axis, double step) {
    int decade = (int) Math.floor(Math.log10(step) + ROUNDING);
    return new Figures(axis.ticks(), Math.max(0, -decade));
  }

  String text(double value) {
    return ticks == Ticks.CLOCK ? clock(value) : Fixed.of(value, decimals);
  }

  private static String clock(double minutes) {
    long seconds = Math.round(Math.abs(minutes) * 60);
    String sign = minutes < 0 && seconds > 0 ? "\u2212" : "";
    return sign + seconds / 60 + (seconds % 60 < 10 ? ":0" : ":") + seconds % 60;
  }
}
