package fairboil.reports.words;

import fairboil.analysis.Results;
import fairboil.analysis.compare.Comparison;
import fairboil.analysis.compare.Fairness.Condition;
import fairboil.analysis.compare.Fairness.Condition.Days;
import fairboil.analysis.compare.Fairness.Condition.Kinds;
import fairboil.analysis.compare.Fairness.Condition.Range;
import fairboil.analysis.compare.Fairness.Inseparable;
import fairboil.analysis.compare.Fairness.Tied;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.List;

/** What is said of the conditions under which things were compared. */
public final class FairnessWords {

  private static final int MOST_LISTED = 6;

  private final Display display;

  private FairnessWords(Display display) {
    this.display = display;
  }

  /** Words for the conditions of a study, in its units. */
  public static FairnessWords of(Results results) {
    return new FairnessWords(Display.in(results.study().settings().get(Settings.SHOW_UNITS)));
  }

  /** What people call a condition. */
  public static String label(String column) {
    return column.equals(RunsSheet.AMBIENT.name()) ? "air temperature" : column;
  }

  /** The values of a condition, and of how many runs it is not known. */
  public String values(Condition condition, int runs) {
    int notTold = runs - condition.known();
    return values(condition) + (notTold > 0 ? " (" + notTold + " not told)" : "");
  }

  private String values(Condition condition) {
    if (condition instanceof Range range) {
      return range(range);
    }
    if (condition instanceof Days days) {
      return days.first().equals(days.last())
          ? days.first().toString()
          : days.first() + " to " + days.last();
    }
    return list(((Kinds) condition).kinds());
  }

  private String range(Range range) {
    if (range.column().equals(RunsSheet.BURN_NUMBER.name())) {
      return joined("" + Math.round(range.low()), "" + Math.round(range.high()));
    }
    double coarseness = coarseness(range.dimension());
    String high = display.value(range.high(), coarseness, range.dimension());
    return display.value(range.low(), coarseness, range.dimension()).equals(high)
        ? high
        : joined(display.number(range.low(), coarseness, range.dimension()), high);
  }

  private static String joined(String low, String high) {
    return low.equals(high) ? high : low + " to " + high;
  }

  /** Whole degrees are enough for the weather; other things to three digits. */
  private static double coarseness(Dimension dimension) {
    return dimension == Dimension.TEMPERATURE ? 3 : 0;
  }

  private static String list(List<String> kinds) {
    int more = kinds.size() - MOST_LISTED;
    return more <= 0
        ? String.join(", ", kinds)
        : String.join(", ", kinds.subList(0, MOST_LISTED)) + " and " + more + " more";
  }

  /** What cannot be told apart, and why. */
  public String sentence(Inseparable pair) {
    String what = Names.inSentence(label(pair.ofA().column()));
    return "Every run of "
        + Names.inSentence(pair.a())
        + " had "
        + what
        + " "
        + Names.inSentence(values(pair.ofA()))
        + ", every run of "
        + Names.inSentence(pair.b())
        + " "
        + Names.inSentence(values(pair.ofB()))
        + ": what that changes cannot be told apart from what the "
        + thing(pair.level())
        + " changes.";
  }

  /** What changed wherever the thing compared did, and what would tell the two apart. */
  public static String sentence(Tied tied) {
    String what = Names.inSentence(label(tied.column()));
    String thing = thing(tied.level());
    String told =
        "No two "
            + thing
            + "s have any "
            + what
            + " in common: what the "
            + what
            + " changes cannot be told apart from what the "
            + thing
            + " changes.";
    return goesRound(tied) ? told + " Send one " + thing + " round to tell them apart." : told;
  }

  /** Whether a build can be sent where the condition is another. */
  private static boolean goesRound(Tied tied) {
    return tied.level().equals(Comparison.BUILD)
        && (tied.column().equals(RunsSheet.SITE.name())
            || tied.column().equals(RunsSheet.TESTER.name()));
  }

  private static String thing(String level) {
    return level.equals(Comparison.BUILD) || level.equals(Comparison.DESIGN)
        ? level
        : Names.inSentence(level);
  }
}
