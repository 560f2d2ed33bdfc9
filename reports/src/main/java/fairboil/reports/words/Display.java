package fairboil.reports.words;

import fairboil.analysis.figure.Interval;
import fairboil.analysis.figure.Measured;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Fix;
import fairboil.ingest.finding.Message;
import fairboil.ingest.quantity.Unit;
import java.util.Map;

/**
 * Numbers as people read them: in their units, with the digits that their uncertainty leaves.
 *
 * <p>The one place where held values become shown values; text, tables of the page and charts all
 * come here. Negative numbers carry a true minus sign. Immutable.
 */
public final class Display {

  private static final int USUAL_DIGITS = 3;

  /** Nothing here is measured so well that more digits would mean anything. */
  private static final int MOST_DIGITS = 6;

  private static final char MINUS = '\u2212';

  private final DisplayUnits units;

  private Display(DisplayUnits units) {
    this.units = units;
  }

  /** Shows numbers in the given system of units. */
  public static Display in(DisplayUnits units) {
    return new Display(units);
  }

  /** The scale on which values of that dimension are shown. */
  public Scale scale(Dimension dimension) {
    return Scale.of(dimension, units);
  }

  /** A held value on the scale on which its dimension is shown: for axes and arithmetic on them. */
  public double shown(double held, Dimension dimension) {
    return scale(dimension).shown(held);
  }

  /** The symbol of the unit shown, such as {@code °F}. */
  public String symbol(Dimension dimension) {
    return scale(dimension).symbol();
  }

  /**
   * A held value without its unit, rounded to the decade below its uncertainty: a value of 812.34
   * uncertain by 3.2 becomes {@code 812}, one uncertain by 0.4 becomes {@code 812.3}. Durations
   * become {@code 5:43}, or {@code 1:05:43} from an hour on.
   *
   * @param held the value, in the unit in which the dimension is held
   * @param uncertainty its standard uncertainty or the size of an interval about it, held as a
   *     difference; 0 for three significant digits
   * @param dimension what it is a value of
   */
  public String number(double held, double uncertainty, Dimension dimension) {
    Scale scale = scale(dimension);
    double shown = scale.shown(held);
    if (scale.isClock() && Math.abs(held) >= 60) {
      return clock(held);
    }
    return rounded(shown, decimals(shown, scale.shownDifference(uncertainty)));
  }

  /** A held value with its unit, such as {@code 812 °C}, rounded as {@link #number} does. */
  public String value(double held, double uncertainty, Dimension dimension) {
    String number = number(held, uncertainty, dimension);
    if (scale(dimension).isClock()) {
      return number + clockUnit(held);
    }
    return number + " " + symbol(dimension);
  }

  /** A measured value with its interval, such as {@code 812 °C (95 % interval 805 to 819)}. */
  public String value(Measured measured, double confidence) {
    Interval interval = measured.interval(confidence);
    return value(measured.value(), measured.standardUncertainty(), measured.dimension())
        + " ("
        + percent(confidence)
        + " interval "
        + range(interval, measured.standardUncertainty(), measured.dimension())
        + ")";
  }

  /** A message in words, its values in the units shown. */
  public String say(Message message) {
    return message.text(new DisplayVoice(this));
  }

  /** A message as the start of a sentence, with a capital and without a full stop. */
  public String sentence(Message message) {
    return Plural.sentence(say(message));
  }

  /** What a finding says, without its place: {@code error: what is wrong. What to do.} */
  public String sentences(Finding finding) {
    return finding.sentences(new DisplayVoice(this));
  }

  /** What a fix says to type: column name to cell, in the units shown. */
  public Map<String, String> texts(Fix fix) {
    return fix.texts(new DisplayVoice(this));
  }

  /** A height above the sea, which is told in metres or feet, not in the units of holes. */
  public String altitude(double metres) {
    Unit unit = units == DisplayUnits.US ? Unit.FOOT : Unit.METRE;
    return Math.round(unit.fromHeld(metres, Dimension.LENGTH)) + "\u00a0" + unit.symbol();
  }

  /** An interval in words, such as {@code 95 % interval 805 to 819}. */
  public String interval(Interval interval, Dimension dimension, double confidence) {
    return percent(confidence) + " interval " + range(interval, dimension);
  }

  /** The ends of an interval, such as {@code 805 to 819}, without their unit. */
  public String range(Interval interval, Dimension dimension) {
    return range(interval, uncertainty(interval), dimension);
  }

  /** The same, rounded as a value of the given uncertainty would be. */
  public String range(Interval interval, double uncertainty, Dimension dimension) {
    double furthest = Math.max(Math.abs(interval.low()), Math.abs(interval.high()));
    // both ends in the same way: not minutes and seconds to seconds
    return scale(dimension).isClock() && furthest >= 60 && Double.isFinite(furthest)
        ? clock(interval.low()) + " to " + clock(interval.high())
        : number(interval.low(), uncertainty, dimension)
            + " to "
            + number(interval.high(), uncertainty, dimension);
  }

  /** About the standard uncertainty behind an interval: what its ends are to be rounded to. */
  public static double uncertainty(Interval interval) {
    return interval.width() / 3.9;
  }

  /** A level of confidence or a share, such as {@code 95 %}; at most one decimal. */
  public static String percent(double fraction) {
    String percent = Fixed.of(fraction * 100, 1);
    return (percent.endsWith(".0") ? percent.substring(0, percent.length() - 2) : percent)
        + "\u00a0%";
  }

  /** A whole number of at least 0 with commas between thousands. */
  public static String whole(long count) {
    StringBuilder text = new StringBuilder(Long.toString(count));
    for (int comma = text.length() - 3; comma > 0; comma -= 3) {
      text.insert(comma, ',');
    }
    return text.toString();
  }

  private static int decimals(double shown, double uncertainty) {
    if (uncertainty > 0 && Double.isFinite(uncertainty)) {
      int decade = (int) Math.floor(Math.log10(uncertainty));
      boolean leadingDigitSmall = uncertainty / Math.pow(10, decade) < 2;
      int wanted = Math.min(MOST_DIGITS, leadingDigitSmall ? 1 - decade : -decade);
      return Math.max(0, shown == 0 ? wanted : Math.min(wanted, decimals(shown, MOST_DIGITS)));
    }
    return decimals(shown, USUAL_DIGITS);
  }

  /** The decimals that give so many significant digits. */
  private static int decimals(double shown, int digits) {
    return shown == 0 ? 0 : Math.max(0, digits - 1 - (int) Math.floor(Math.log10(Math.abs(shown))));
  }

  private static String rounded(double shown, int decimals) {
    if (!Double.isFinite(shown)) {
      return shown > 0 ? "∞" : MINUS + "∞";
    }
    return Fixed.of(shown, decimals);
  }

  private static String clockUnit(double seconds) {
    if (Math.round(Math.abs(seconds)) >= 3600) {
      return " h";
    }
    return Math.abs(seconds) >= 60 ? " min" : " s";
  }

  /** Minutes and seconds as a stopwatch shows them. */
  private static String clock(double seconds) {
    long whole = Math.round(Math.abs(seconds));
    String sign = seconds < 0 ? String.valueOf(MINUS) : "";
    String minutes =
        whole < 3600 ? "" + whole / 60 : whole / 3600 + ":" + twoDigits(whole / 60 % 60);
    return sign + minutes + ":" + twoDigits(whole % 60);
  }

  private static String twoDigits(long number) {
    return (number < 10 ? "0" : "") + number;
  }
}
