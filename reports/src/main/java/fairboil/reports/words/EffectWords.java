package fairboil.reports.words;

import fairboil.analysis.Results;
import fairboil.analysis.effect.BuildPoint;
import fairboil.analysis.effect.EffectChecks;
import fairboil.analysis.effect.EffectRow;
import fairboil.analysis.effect.EffectRow.Model;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.measure.Measure;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.choice.HoleErrorOrigin;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What is said of a hole effect. */
public final class EffectWords {

  /** A line needs two points; two more show how far points stray from it. */
  private static final int BUILDS_WORTH_HAVING = 4;

  /** Positions of holes are told to a tenth of a millimetre or finer. */
  private static final double OF_A_HOLE = 0.3e-3;

  private final Display display;
  private final DisplayUnits units;
  private final HoleErrorOrigin origin;
  private final Results results;

  private EffectWords(DisplayUnits units, HoleErrorOrigin origin, Results results) {
    this.display = Display.in(units);
    this.units = units;
    this.origin = origin;
    this.results = results;
  }

  /** Words for the effects of a study, in its units and as its hole errors came about. */
  public static EffectWords of(Results results) {
    return new EffectWords(
        results.study().settings().get(Settings.SHOW_UNITS),
        results.study().settings().get(Settings.HOLE_ERROR_WAS),
        results);
  }

  /** The effect with its interval, in a sentence; or why there is none. */
  public String sentence(HoleEffect effect) {
    return effect
        .headline()
        .map(row -> "Each " + step() + " " + size(effect, row) + ".")
        .orElseGet(() -> whyNone(effect));
  }

  /** The effect and what may be concluded from it, in one sentence; or why there is none. */
  public String answer(HoleEffect effect) {
    return effect
        .headline()
        .map(row -> "Each " + step() + " " + size(effect, row) + ": " + meaning(effect) + ".")
        .orElseGet(() -> whyNone(effect));
  }

  /** What may be concluded from how the hole errors came about. */
  public String origin() {
    return switch (origin) {
      case AS_IT_CAME ->
          "The hole errors came about by themselves, not by lot, so what is seen is an association:"
              + " something else that differs between these builds may be its cause.";
      case ASSIGNED ->
          "The holes were drilled wrong on purpose and given to builds in random order, so what is"
              + " seen is an effect of hole position.";
    };
  }

  /** What a line through all burns would have claimed, where it was tried. */
  public Optional<String> naive(HoleEffect effect) {
    return effect.rows().stream()
        .filter(row -> row.model() == Model.BURN_LEVEL && isSlope(row))
        .findFirst()
        .map(
            row ->
                "Counting each burn as a stove of its own would have read "
                    + Slopes.range(display, row, slope(effect.response()))
                    + " "
                    + display.symbol(slope(effect.response()))
                    + ", which is no result.");
  }

  private String size(HoleEffect effect, EffectRow row) {
    List<String> allowed = allowedFor(effect);
    return "of RMS hole error in the "
        + Names.inSentence(effect.ring())
        + " ring goes with "
        + signed(row, slope(effect.response()))
        + " in "
        + effect.response().label()
        + " ("
        + Display.percent(confidence(results, effect))
        + " interval "
        + Slopes.range(display, row, slope(effect.response()))
        + "; "
        + Plural.of(row.builds(), "build")
        + ", "
        + Plural.of(row.runs(), "burn")
        + (allowed.isEmpty() ? "" : "; " + Plural.list(allowed) + " allowed for")
        + ")";
  }

  /** What the headline allows for, as people call it. */
  static List<String> allowedFor(HoleEffect effect) {
    List<String> allowed = new ArrayList<>();
    effect.allowedFor().forEach(what -> allowed.add(Names.inSentence(what)));
    if (isMovedByAir(effect)) {
      allowed.add("air temperature");
    }
    return allowed;
  }

  /**
   * Whether the points of an effect are moved to the reference air temperature by what the air was
   * seen to do within builds.
   */
  public static boolean isMovedByAir(HoleEffect effect) {
    return effect.headline().filter(row -> row.model() == Model.AMBIENT_ADJUSTED).isPresent();
  }

  /** What the slope makes from the best drilled build to the worst, in a sentence. */
  public Optional<String> fromBestToWorst(HoleEffect effect) {
    return effect.headline().map(row -> fromBestToWorst(effect, row));
  }

  private String fromBestToWorst(HoleEffect effect, EffectRow row) {
    Comparator<BuildPoint> byError = Comparator.comparingDouble(BuildPoint::holeError);
    BuildPoint best = effect.points().stream().min(byError).orElseThrow();
    BuildPoint worst = effect.points().stream().max(byError).orElseThrow();
    double range = worst.holeError() - best.holeError();
    Interval interval = new Interval(row.interval().low() * range, row.interval().high() * range);
    Dimension dimension = effect.response().dimension().ofDifference();
    double coarseness =
        Coarseness.telling(display, dimension, Display.uncertainty(interval), interval, 0);
    String value = display.value(row.estimate() * range, coarseness, dimension);
    return "From the best drilled build ("
        + drilled(best)
        + ") to the worst ("
        + drilled(worst)
        + ") that makes "
        + (row.estimate() > 0 ? "+" : "")
        + value
        + " ("
        + Display.percent(confidence(results, effect))
        + " interval "
        + display.range(interval, coarseness, dimension)
        + ").";
  }

  private String drilled(BuildPoint point) {
    return Names.inSentence(point.build().name())
        + ", "
        + display.value(point.holeError(), OF_A_HOLE, Dimension.LENGTH);
  }

  /**
   * The confidence of the intervals of an effect: that of the study, or more where several rings
   * are asked about and must hold together.
   */
  public static double confidence(Results results, HoleEffect effect) {
    return results.effectChecks().stream()
        .filter(checks -> checks.response() == effect.response())
        .filter(checks -> checks.ring().equals(effect.ring()))
        .findFirst()
        .map(EffectChecks::confidence)
        .orElse(results.confidence());
  }

  private String signed(EffectRow row, Dimension dimension) {
    String number = Slopes.number(display, row, dimension);
    String symbol = display.symbol(dimension);
    return (row.estimate() > 0 ? "+" : "")
        + number
        + "\u00a0"
        + symbol.substring(0, symbol.indexOf(" per "));
  }

  private String meaning(HoleEffect effect) {
    Measure response = effect.response();
    return switch (effect.verdict()) {
      case FALLS -> conclusion(Labels.less(response), response);
      case RISES -> conclusion(Labels.more(response), response);
      case NOT_SETTLED, TOO_FEW_BUILDS, NO_SPREAD, NO_SCATTER, NO_SCATTER_ABOUT_LINE ->
          "the interval holds zero, so these data do not settle whether hole position matters";
    };
  }

  private String conclusion(String change, Measure response) {
    return switch (origin) {
      case AS_IT_CAME -> "builds with worse holes have a " + change + " " + response.label();
      case ASSIGNED -> "worse holes make for a " + change + " " + response.label();
    };
  }

  private String whyNone(HoleEffect effect) {
    int builds = effect.points().size();
    return switch (effect.verdict()) {
      case NO_SPREAD ->
          "All "
              + Plural.of(builds, "build")
              + " have the same RMS hole error in the "
              + Names.inSentence(effect.ring())
              + " ring, so that its effect on "
              + effect.response().label()
              + " cannot be seen.";
      case NO_SCATTER ->
          "All "
              + Plural.of(
                  effect.points().stream().mapToInt(each -> each.burns().length).sum(), "burn")
              + " have the same "
              + effect.response().label()
              + ", so that an effect of hole error on it cannot be seen.";
      case NO_SCATTER_ABOUT_LINE ->
          "The mean "
              + effect.response().label()
              + " of the "
              + Plural.of(builds, "build")
              + " follows their hole error exactly: without scatter nothing tells how sure that is.";
      default -> tooFew(effect, builds);
    };
  }

  private static String tooFew(HoleEffect effect, int builds) {
    if (builds == 0) {
      return "No build has both measured holes in the "
          + Names.inSentence(effect.ring())
          + " ring and a "
          + effect.response().label()
          + ": "
          + (effect.response().dimension() == Dimension.TEMPERATURE
              ? "log the flame"
              : "time the boil")
          + ", and measure the holes, of at least "
          + BUILDS_WORTH_HAVING
          + ".";
    }
    String line =
        builds == 1
            ? "no line can be drawn through 1 point"
            : "no line through " + builds + " points can be tested";
    int more = Math.max(1, BUILDS_WORTH_HAVING - builds);
    return Plural.of(builds, "build") + ": " + line + "; drill at least " + more + " more.";
  }

  private static boolean isSlope(EffectRow row) {
    return row.term().equals(EffectRow.HOLE_ERROR);
  }

  private static Dimension slope(Measure response) {
    return response.dimension().perLength();
  }

  private String step() {
    return units == DisplayUnits.US ? "1/16 inch" : "millimetre";
  }
}
