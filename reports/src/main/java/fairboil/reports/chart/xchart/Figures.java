package fairboil.reports.chart.xchart;

import fairboil.reports.chart.Axis;
import fairboil.reports.chart.Axis.Ticks;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** The figures along an axis. */
final class Figures {

  private final Ticks ticks;
  private final int decimals;

  private Figures(Ticks ticks, int decimals) {
    this.ticks = ticks;
    this.decimals = decimals;
  }

  static Figures of(Axis axis) {
    int decade = (int) Math.floor(Math.log10(axis.length() / 5));
    return new Figures(axis.ticks(), Math.max(0, -decade));
  }

  String text(double value) {
    return ticks == Ticks.CLOCK ? clock(value) : number(value);
  }

  /** With as many decimals as the axis calls for, or as the value itself needs. */
  private String number(double value) {
    BigDecimal exact = new BigDecimal(value).round(new MathContext(9)).stripTrailingZeros();
    BigDecimal shown =
        exact.setScale(Math.max(decimals, Math.min(exact.scale(), 9)), RoundingMode.HALF_EVEN);
    return shown.signum() < 0 ? "\u2212" + shown.negate().toPlainString() : shown.toPlainString();
  }

  private static String clock(double minutes) {
    long seconds = Math.round(Math.abs(minutes) * 60);
    String sign = minutes < 0 && seconds > 0 ? "\u2212" : "";
    return sign + String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
  }
}
