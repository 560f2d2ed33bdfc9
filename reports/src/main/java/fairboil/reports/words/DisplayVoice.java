package fairboil.reports.words;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Voice;
import java.math.BigDecimal;

/**
 * The numbers of a message as people read them: in the units shown, as finely as they are known.
 */
record DisplayVoice(Display display) implements Voice {

  @Override
  public String value(Argument.Value value) {
    return display.value(value.held(), value.uncertainty(), value.dimension());
  }

  @Override
  public String range(Argument.Range range) {
    Scale scale = display.scale(range.dimension());
    String low = display.number(range.low(), range.uncertainty(), range.dimension());
    String high = display.value(range.high(), range.uncertainty(), range.dimension());
    return scale.isClock()
        ? display.value(range.low(), range.uncertainty(), range.dimension()) + " to " + high
        : low + " to " + high;
  }

  @Override
  public String typed(Argument.Typed typed) {
    Scale scale = display.scale(typed.dimension());
    if (scale.isClock()) {
      return stopwatch(typed.held(), typed.resolution());
    }
    double step = Math.abs(scale.shownDifference(typed.resolution()));
    int decimals = Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
    return Fixed.of(scale.shown(typed.held()), decimals).replace('\u2212', '-')
        + " "
        + scale.symbol();
  }

  // As no spreadsheet program turns it into something else.
  private static String stopwatch(double seconds, double resolution) {
    long whole = Math.round(Math.floor(seconds));
    if (resolution < 1 || whole < 60) {
      int decimals = resolution < 1 ? (int) Math.ceil(-Math.log10(resolution) - 1e-9) : 0;
      return Fixed.of(seconds, decimals).replace('\u2212', '-') + " s";
    }
    long rounded = Math.round(seconds);
    String hours = rounded < 3600 ? "" : rounded / 3600 + "h";
    return hours + rounded / 60 % 60 + "m" + (rounded % 60 < 10 ? "0" : "") + rounded % 60 + "s";
  }

  @Override
  public String number(Argument.Bare number) {
    return number.decimals() >= 0
        ? Fixed.of(number.value(), number.decimals())
        : plain(number.value());
  }

  private static String plain(double value) {
    return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
  }

  @Override
  public String count(long count) {
    return Display.whole(count);
  }

  @Override
  public String share(double fraction) {
    return Display.percent(fraction);
  }
}
