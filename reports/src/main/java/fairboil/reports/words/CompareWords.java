package fairboil.reports.words;

import fairboil.analysis.Results;
import fairboil.analysis.compare.Comparison;
import fairboil.analysis.compare.RankComparison;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.group.BoilCount;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.sheet.Settings;
import java.util.Locale;

/** What is said of two things beside each other. */
public final class CompareWords {

  private final Display display;
  private final double confidence;
  private final Results results;

  private CompareWords(Display display, Results results) {
    this.display = display;
    this.confidence = results.confidence();
    this.results = results;
  }

  /** Words for the comparisons of a study, in its units. */
  public static CompareWords of(Results results) {
    return new CompareWords(
        Display.in(results.study().settings().get(Settings.SHOW_UNITS)), results);
  }

  /** Which of the two is more, by how much, or that it is not settled. */
  public String sentence(Comparison pair) {
    return switch (pair.verdict()) {
      case LOWER -> apart(pair, Labels.less(pair.measure()));
      case HIGHER -> apart(pair, Labels.more(pair.measure()));
      case NOT_SETTLED -> notSettled(pair);
    };
  }

  private String apart(Comparison pair, String how) {
    Interval interval = pair.interval();
    Interval size =
        pair.difference() < 0 ? new Interval(-interval.high(), -interval.low()) : interval;
    return name(pair.level(), pair.a())
        + " has a "
        + how
        + " "
        + pair.measure().label()
        + " than "
        + name(pair.level(), pair.b())
        + ", by "
        + difference(Math.abs(pair.difference()), size, pair)
        + ".";
  }

  private String notSettled(Comparison pair) {
    return "Whether "
        + name(pair.level(), pair.a())
        + " or "
        + name(pair.level(), pair.b())
        + " has the "
        + Labels.more(pair.measure())
        + " "
        + pair.measure().label()
        + " is not settled: the one less the other is "
        + difference(pair.difference(), pair.interval(), pair)
        + ".";
  }

  /** Which is taken from which, such as {@code Leek less Marrow}. */
  public static String less(Comparison pair) {
    return Names.inSentence(pair.a()) + " less " + Names.inSentence(pair.b());
  }

  /** A difference with its unit. */
  public String difference(Comparison pair) {
    return display.value(
        pair.difference(), coarseness(pair), pair.measure().dimension().ofDifference());
  }

  /** A difference with its unit and the ends of its interval. */
  public String withInterval(Comparison pair) {
    Dimension dimension = pair.measure().dimension().ofDifference();
    return difference(pair)
        + " ("
        + display.range(pair.interval(), coarseness(pair), dimension)
        + ")";
  }

  /** As coarsely as the difference and its interval may be told without hiding the verdict. */
  public double coarseness(Comparison pair) {
    return Coarseness.telling(
        display,
        pair.measure().dimension().ofDifference(),
        Display.uncertainty(pair.interval()),
        pair.interval(),
        0);
  }

  private String difference(double difference, Interval interval, Comparison pair) {
    Dimension dimension = pair.measure().dimension().ofDifference();
    double coarseness = coarseness(pair);
    return display.value(difference, coarseness, dimension)
        + " ("
        + Display.percent(confidence)
        + " interval "
        + display.range(interval, coarseness, dimension)
        + ")";
  }

  /** A difference in standard deviations with its interval, such as {@code −1.3 (−2.2 to −0.3)}. */
  public static String size(Comparison pair, Interval interval) {
    return decimal(pair.effectSize())
        + " ("
        + decimal(interval.low())
        + " to "
        + decimal(interval.high())
        + ")";
  }

  private static String decimal(double number) {
    String text = String.format(Locale.ROOT, "%.1f", Math.abs(number));
    return (number < 0 && !text.equals("0.0") ? "\u2212" : "") + text;
  }

  /** How two things compare of which some runs did not boil. */
  public String sentence(RankComparison pair) {
    return "The water boiled in "
        + boiled(pair.level(), pair.a(), pair.boilsA())
        + " and in "
        + boiled(pair.level(), pair.b(), pair.boilsB())
        + ". Counting a run that did not boil as longer than any that did, "
        + longer(pair)
        + ". "
        + settled(pair);
  }

  /** What chance alone would give, and so what may be concluded. */
  private String settled(RankComparison pair) {
    double pValue = pair.test().pValue();
    return basis(pair)
        + (pValue < 0.001 ? "fewer than 0.1\u00a0%" : Display.percent(pValue))
        + " of such studies"
        + (pValue < (1 - confidence) / ofItsKind(pair)
            ? ": that is more than chance would explain."
            : ": this does not settle which takes longer.");
  }

  private static String basis(RankComparison pair) {
    return switch (pair.unit()) {
      case RUNS -> "Were there no difference, one as great would come about in ";
      case BUILDS ->
          "Judging each build by its middle run, were there no difference between builds of the two,"
              + " one as great would come about in ";
      case WITHIN_BUILDS ->
          "Judging each build that had both by its middle runs, were there no difference, one as"
              + " great would come about in ";
    };
  }

  /** How many pairs are compared by rank beside each other: the chance of error is shared out. */
  private long ofItsKind(RankComparison pair) {
    long pairs =
        results.rankComparisons().stream()
            .filter(other -> other.measure() == pair.measure())
            .filter(other -> other.level().equals(pair.level()))
            .count();
    return Math.max(1, pairs);
  }

  private static String longer(RankComparison pair) {
    return "a run"
        + whose(pair.level())
        + name(pair.level(), pair.a())
        + " had the longer "
        + pair.measure().label()
        + " in "
        + Display.percent(pair.test().superiority())
        + " of the pairs of runs that can be made";
  }

  private static String boiled(String level, String name, BoilCount boils) {
    return boils.boiled()
        + " of "
        + Plural.of(boils.judged(), "run")
        + whose(level)
        + name(level, name)
        + (boils.unseen() == 0 ? "" : " (" + boils.unseen() + " more were not seen)");
  }

  /** A build or a design by its name; anything else with its column, such as {@code lid on}. */
  private static String name(String level, String name) {
    return isThing(level) ? Names.inSentence(name) : Names.inSentence(level + " " + name);
  }

  private static String whose(String level) {
    return isThing(level) ? " of " : " with ";
  }

  private static boolean isThing(String level) {
    return level.equals(Comparison.BUILD) || level.equals(Comparison.DESIGN);
  }
}
