package fairboil.reports.words;

import fairboil.analysis.Results;
import fairboil.analysis.claim.ClaimResult;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.group.BuildResult;
import fairboil.analysis.group.Summary;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.precision.Repeatability;
import fairboil.analysis.precision.Repeatability.Level;
import fairboil.analysis.protocol.RunProtocol;
import fairboil.analysis.protocol.RunProtocol.Departure;
import fairboil.analysis.protocol.Without;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is said of runs that kept, or did not keep, to what the group agreed. */
public final class ProtocolWords {

  /** How well the method repeats: one stove at one place, and at several or by several people. */
  private static final List<Level> METHOD =
      List.of(Level.RUN_TO_RUN, Level.REPRODUCIBILITY, Level.INTERMEDIATE);

  private final Results results;
  private final List<Measure> told;
  private final Display display;
  private final EffectWords effects;

  private ProtocolWords(Results results) {
    this.results = results;
    this.told = Headlines.of(results);
    this.display = Display.in(results.study().settings().get(Settings.SHOW_UNITS));
    this.effects = EffectWords.of(results);
  }

  /** Words for the protocol of a study, in its units. */
  public static ProtocolWords of(Results results) {
    return new ProtocolWords(results);
  }

  /** Why a run is not within protocol; empty text if it is. */
  public static String reasons(RunProtocol run) {
    return run.departures().stream().map(ProtocolWords::reason).collect(Collectors.joining("; "));
  }

  private static String reason(Departure departure) {
    String cell = departure.column() + " " + Names.inSentence(departure.written());
    return switch (departure.how()) {
      case NOT_TOLD -> departure.column() + " not told";
      case BELOW -> cell + ", below " + departure.agreed();
      case ABOVE -> cell + ", above " + departure.agreed();
      case NOT_ALLOWED -> cell + ", not one of: " + departure.agreed();
      case NOT_COMPARABLE -> cell + ", cannot be compared with " + departure.agreed();
    };
  }

  /** How many runs kept to the protocol, and what changes without the others. */
  public List<String> sentences() {
    if (results.protocol().isEmpty()) {
      return List.of();
    }
    long within = results.protocol().stream().filter(RunProtocol::isWithin).count();
    List<String> sentences = new ArrayList<>();
    sentences.add(
        within == results.protocol().size()
            ? "Every run kept to what the group agreed (protocol.csv)."
            : within
                + " of "
                + Plural.of(results.protocol().size(), "run")
                + " kept to what the group agreed (protocol.csv); the others count all the same."
                + (within == 0 ? " Without them nothing would be left." : ""));
    results.without().ifPresent(without -> tell(without, sentences));
    return sentences;
  }

  private void tell(Without without, List<String> sentences) {
    told.forEach(measure -> means(without, measure).ifPresent(sentences::add));
    told.forEach(measure -> scatter(without, measure).ifPresent(sentences::add));
    for (HoleEffect all : results.holeEffects()) {
      without.holeEffects().stream()
          .filter(kept -> kept.response() == all.response() && kept.ring().equals(all.ring()))
          .filter(kept -> told.contains(kept.response()))
          .filter(kept -> kept.headline().isPresent() || all.headline().isPresent())
          .findFirst()
          .map(kept -> "Without those runs: " + effects.answer(kept))
          .ifPresent(sentences::add);
    }
    sentences.addAll(claims(without));
  }

  /** The mean of the builds with and without. */
  private Optional<String> means(Without without, Measure measure) {
    Optional<Double> all = mean(results.builds(), measure);
    Optional<Double> kept = mean(without.builds(), measure);
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Mean "
                + measure.label()
                + " of the builds: "
                + display.value(all.get(), 0, measure.dimension())
                + " with all runs, "
                + kept.map(value -> display.value(value, 0, measure.dimension()))
                    .orElse("not known")
                + " with those within protocol only.");
  }

  private static Optional<Double> mean(List<BuildResult> builds, Measure measure) {
    List<Double> means =
        builds.stream()
            .map(build -> Optional.ofNullable(build.summaries().get(measure)))
            .flatMap(Optional::stream)
            .map(Summary::mean)
            .toList();
    return means.isEmpty()
        ? Optional.empty()
        : Optional.of(means.stream().mapToDouble(each -> each).average().orElseThrow());
  }

  /** The precision of the method with and without. */
  private Optional<String> scatter(Without without, Measure measure) {
    Dimension difference = measure.dimension().ofDifference();
    List<String> levels = new ArrayList<>();
    for (Level level : METHOD) {
      sd(results.repeatability(), measure, level)
          .ifPresent(
              all ->
                  levels.add(
                      level.label()
                          + " "
                          + scatter(all, difference)
                          + " with all runs, "
                          + sd(without.repeatability(), measure, level)
                              .map(kept -> scatter(kept, difference))
                              .orElse("not known")
                          + " with those within protocol only"));
    }
    return levels.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Standard deviation of " + measure.label() + ": " + String.join("; ", levels) + ".");
  }

  private String scatter(double sd, Dimension difference) {
    return display.value(sd, sd / 5, difference);
  }

  private static Optional<Double> sd(List<Repeatability> rows, Measure measure, Level level) {
    return rows.stream()
        .filter(row -> row.measure() == measure && row.level() == level)
        .map(Repeatability::sd)
        .findFirst();
  }

  private List<String> claims(Without without) {
    if (results.claims().isEmpty()) {
      return List.of();
    }
    List<String> changed = new ArrayList<>();
    for (int i = 0; i < results.claims().size(); i++) {
      ClaimResult all = results.claims().get(i);
      ClaimResult kept = without.claims().get(i);
      if (all.verdict() != kept.verdict()) {
        changed.add(
            "Claim "
                + Names.inSentence(all.claim().key().name())
                + " is "
                + all.verdict().label()
                + " with all runs, but without those runs "
                + kept.verdict().label()
                + ".");
      }
    }
    return changed.isEmpty()
        ? List.of("The verdict on each claim is the same with and without them.")
        : changed;
  }
}
