package fairboil.reports.words;

import fairboil.analysis.Results;
import fairboil.analysis.claim.ClaimResult;
import fairboil.analysis.claim.ClaimResult.Estimate;
import fairboil.analysis.claim.WrittenDown;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.measure.Measure.Level;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.choice.HoldsFor;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Selection;
import fairboil.ingest.sheet.Settings;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What is said of a claim: its verdict, and the interval from which anyone can read it off. */
public final class ClaimWords {

  /** A bead in a flame reads below the gas; in a difference of like readings that cancels. */
  private static final Set<Measure> OF_A_BEAD =
      EnumSet.of(Measure.PEAK, Measure.NORMALISED_PEAK, Measure.STEADY_FLAME);

  private final Display display;

  private final List<RunResult> runs;

  private ClaimWords(Display display, List<RunResult> runs) {
    this.display = display;
    this.runs = runs;
  }

  /** Words for the claims of a study, in its units. */
  public static ClaimWords of(Results results) {
    return new ClaimWords(
        Display.in(results.study().settings().get(Settings.SHOW_UNITS)), results.runs());
  }

  /** The verdict with its numbers, in plain sentences. */
  public String wording(ClaimResult claim) {
    List<String> sentences = new ArrayList<>();
    Optional<String> numbers = numbers(claim);
    Optional<String> why = claim.reason().map(display::say);
    numbers.ifPresent(text -> sentences.add(verdict(claim) + ": " + text + "."));
    if (numbers.isEmpty()) {
      sentences.add(verdict(claim) + why.map(reason -> ": " + reason).orElse("") + ".");
    } else {
      why.ifPresent(reason -> sentences.add(Plural.sentence(reason) + "."));
    }
    if (numbers.isPresent() && claim.runs() > 0) {
      sentences.add(basis(claim));
    }
    return String.join(" ", sentences);
  }

  /** Whether it was set before the tests or chosen after seeing results, in a sentence. */
  public String written(ClaimResult claim) {
    String day = claim.claim().row().value(ClaimsSheet.WRITTEN_ON).map(Object::toString).orElse("");
    return switch (WrittenDown.of(claim.claim(), runs)) {
      case BEFORE_THE_TESTS -> "Set before the tests, on " + day + ".";
      case ON_THE_FIRST_DAY ->
          "Written down on " + day + ", the day of the first test: before or after it is not told.";
      case AFTER_SEEING_RESULTS ->
          "Chosen after seeing results: it was written down on "
              + day
              + ", and the tests began on "
              + WrittenDown.firstDay(runs).orElseThrow()
              + ".";
      case NOT_TOLD ->
          day.isEmpty()
              ? "When it was written down is not told, so it may have been chosen after seeing the"
                  + " results."
              : "Written down on "
                  + day
                  + "; not every test has a date, so that it was set before"
                  + " the tests cannot be shown.";
    };
  }

  /** Where a day lies beside those of the burns. */
  public static String beside(LocalDate written, LocalDate first, LocalDate last) {
    if (written.isBefore(first)) {
      return "before the first burn";
    }
    if (written.isAfter(last)) {
      return "after the last burn";
    }
    return written.equals(first) ? "on the day of the first burn" : "after the first burn";
  }

  private static String verdict(ClaimResult claim) {
    return Plural.sentence(claim.verdict().label());
  }

  private static String basis(ClaimResult claim) {
    String runs = "It stands on " + Plural.of(claim.runs(), "run");
    return runs + (claim.builds() > 0 ? " of " + Plural.of(claim.builds(), "build") : "") + ".";
  }

  private Optional<String> numbers(ClaimResult claim) {
    if (claim.measure().isEmpty() || claim.estimate().isEmpty() || claim.bounds().isEmpty()) {
      return Optional.empty();
    }
    Row row = claim.claim().row();
    Measure measure = claim.measure().get();
    Estimate estimate = claim.estimate().get();
    Dimension dimension = dimension(measure, row);
    Interval interval = estimate.interval();
    Interval bounds = claim.bounds().get();
    double coarseness =
        Coarseness.telling(
            display,
            dimension,
            Display.uncertainty(interval),
            interval,
            bounds.low(),
            bounds.high());
    return Optional.of(
        subject(measure, row)
            + " is "
            + display.value(estimate.value(), coarseness, dimension)
            + " ("
            + Display.percent(claim.confidence())
            + " interval "
            + display.range(interval, coarseness, dimension)
            + "), and "
            + share(claim)
            + " of that interval lies "
            + bounds(bounds, coarseness, dimension));
  }

  private static String share(ClaimResult claim) {
    return switch (claim.verdict()) {
      case SUPPORTED -> "all";
      case CONTRADICTED -> "none";
      case NOT_SETTLED, NOT_TESTABLE -> "only part";
    };
  }

  private static Dimension dimension(Measure measure, Row row) {
    return row.value(ClaimsSheet.AGAINST).isPresent()
        ? measure.dimension().ofDifference()
        : measure.dimension();
  }

  private String bounds(Interval bounds, double coarseness, Dimension dimension) {
    String low = display.value(bounds.low(), coarseness, dimension);
    String high = display.value(bounds.high(), coarseness, dimension);
    if (Double.isInfinite(bounds.low())) {
      return "at or below " + high;
    }
    return Double.isInfinite(bounds.high())
        ? "at or above " + low
        : "between " + low + " and " + high;
  }

  private static String subject(Measure measure, Row row) {
    String what = statistic(measure, row) + measure.label();
    Optional<String> about = row.value(ClaimsSheet.ABOUT).map(ClaimWords::name);
    Optional<String> against = row.value(ClaimsSheet.AGAINST).map(ClaimWords::name);
    String whose = about.map(name -> " of " + name).orElse("");
    String less = against.map(name -> ", less that of " + name + ",").orElse("");
    String where = row.value(ClaimsSheet.WHERE).map(runs -> " in " + name(runs)).orElse("");
    String bead =
        against.isEmpty() && OF_A_BEAD.contains(measure) ? ", as a bare bead reads it," : "";
    return what + whose + where + less + bead;
  }

  private static String statistic(Measure measure, Row row) {
    if (row.get(ClaimsSheet.HOLDS_FOR) == HoldsFor.MOST_RUNS) {
      return "for 19 runs in 20, the ";
    }
    return measure.level() == Level.RUN ? "the mean " : "the ";
  }

  private static String name(Selection selection) {
    if (selection instanceof Selection.Named named) {
      return Names.inSentence(named.name());
    }
    List<String> conditions = new ArrayList<>();
    ((Selection.Where) selection)
        .cells()
        .forEach((column, text) -> conditions.add(column + " " + text));
    return "runs with " + Names.inSentence(Plural.list(conditions));
  }
}
