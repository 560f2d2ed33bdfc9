package fairboil.reports.words;

import fairboil.analysis.Results;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.precision.Precision;
import fairboil.analysis.precision.Precision.Layout;
import fairboil.analysis.precision.Repeatability;
import fairboil.analysis.precision.Repeatability.Level;
import fairboil.analysis.precision.Repeated;
import fairboil.analysis.precision.Round;
import fairboil.analysis.precision.Round.AtSite;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is said of sites, or testers, that repeated each other's burns. */
public final class PrecisionWords {

  private final Results results;
  private final List<Measure> told;
  private final Precision precision;
  private final Display display;
  private final String one;

  private PrecisionWords(Results results) {
    this.results = results;
    this.told = Headlines.of(results);
    this.precision = results.precision();
    this.display = Display.in(results.study().settings().get(Settings.SHOW_UNITS));
    this.one = precision.repeated().word();
  }

  /** Words for the sites of a study, in its units. */
  public static PrecisionWords of(Results results) {
    return new PrecisionWords(results);
  }

  /** What can be told of sites, and what would have to be done to tell more; none for one site. */
  public List<String> sentences() {
    return switch (precision.layout()) {
      case NOT_REPEATED -> List.of();
      case SAME_STOVE -> sameStove();
      case SEVERAL_OWN_STOVES ->
          List.of(
              "Each of the "
                  + who()
                  + " burnt stoves of its own, so the precision of the method (ISO 5725-2) cannot be"
                  + " told. What differs between stoves at one "
                  + one
                  + " could be told from what differs between "
                  + one
                  + "s, because each had several. "
                  + remedy());
      case ONE_OWN_STOVE_EACH ->
          List.of(
              "Each of the "
                  + who()
                  + " burnt one stove of its own, so "
                  + one
                  + " and stove cannot be told apart: what differs is "
                  + one
                  + " and stove together, and no share of it can be given to either. "
                  + remedy());
      case OWN_DESIGNS ->
          precision.repeated() == Repeated.BY_SITES
              ? List.of(
                  "Each of the "
                      + who()
                      + " burnt designs that the others did not have, so site and design cannot be"
                      + " told apart. "
                      + remedy())
              : List.of();
    };
  }

  /** What the same stove tells of the method, in the first measure that it can be told of. */
  public Optional<String> answer() {
    return precision.layout() == Layout.SAME_STOVE
        ? told.stream().flatMap(measure -> limits(measure).stream()).findFirst()
        : Optional.empty();
  }

  private String who() {
    return Plural.of(precision.names().size(), one) + " (" + names(precision.names()) + ")";
  }

  private static String names(List<String> names) {
    return Plural.list(names.stream().map(Names::inSentence).toList());
  }

  private String remedy() {
    return precision.repeated() == Repeated.BY_SITES
        ? "To tell more, send one stove round: give it one name, and yes under shared, in the"
            + " builds.csv of each study."
        : "To tell more, let the testers burn the same stove.";
  }

  private List<String> sameStove() {
    List<String> sentences = new ArrayList<>();
    List<String> stoves =
        precision.rounds().stream().map(round -> round.stove().name()).distinct().toList();
    sentences.add(
        "Of the "
            + who()
            + ", at least two burnt the same stove ("
            + names(stoves)
            + "), so the precision of the method can be told, as ISO 5725-2 does.");
    for (Measure measure : told) {
      limits(measure).ifPresent(sentences::add);
    }
    precision.rounds().stream()
        .filter(round -> told.contains(round.measure()))
        .forEach(round -> marks(round).ifPresent(sentences::add));
    return sentences;
  }

  private Optional<Repeatability> find(Measure measure, Level level) {
    return results.repeatability().stream()
        .filter(row -> row.measure() == measure && row.level() == level)
        .findFirst();
  }

  private Optional<String> limits(Measure measure) {
    Optional<Repeatability> same = find(measure, Level.RUN_TO_RUN);
    Optional<Repeatability> other =
        find(measure, Level.REPRODUCIBILITY).or(() -> find(measure, Level.INTERMEDIATE));
    return same.isEmpty() || other.isEmpty()
        ? Optional.empty()
        : Optional.of(limits(measure, same.get(), other.get()));
  }

  private String limits(Measure measure, Repeatability same, Repeatability other) {
    Dimension difference = measure.dimension().ofDifference();
    return Plural.sentence(measure.label())
        + ": two burns of one stove by one "
        + one
        + " differ by up to "
        + value(same.limit().orElseThrow(), difference)
        + ", and by two "
        + one
        + "s by up to "
        + value(other.limit().orElseThrow(), difference)
        + ", 19 times in 20; the standard deviations are "
        + value(same.sd(), difference)
        + " ("
        + display.interval(same.interval(), difference, results.confidence())
        + ") and "
        + value(other.sd(), difference)
        + " ("
        + display.interval(other.interval(), difference, results.confidence())
        + ").";
  }

  private String value(double held, Dimension dimension) {
    return display.value(held, held / 5, dimension);
  }

  /** The sites to look at. */
  private Optional<String> marks(Round round) {
    List<String> marked =
        round.sites().stream().filter(AtSite::isMarked).map(AtSite::site).toList();
    return marked.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "In "
                + round.measure().label()
                + " of stove "
                + Names.inSentence(round.stove().name())
                + ", "
                + names(marked)
                + " stands out from the others: look whether something went otherwise there."
                + " Nothing was left out for it.");
  }
}
