package fairboil.reports.words;

import fairboil.analysis.Results;
import fairboil.analysis.claim.ClaimResult.Verdict;
import fairboil.analysis.compare.Comparison;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.group.BoilCount;
import fairboil.analysis.group.BuildResult;
import fairboil.analysis.group.Summary;
import fairboil.analysis.measure.Measure;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The question of a study, and its answer in three plain sentences. */
public final class AnswerWords {

  /** More builds than this are counted, not named. */
  private static final int MOST_NAMED = 5;

  private final Results results;
  private final EffectWords effects;
  private final Display display;

  private AnswerWords(Results results) {
    this.results = results;
    this.effects = EffectWords.of(results);
    this.display = Display.in(results.study().settings().get(Settings.SHOW_UNITS));
  }

  /** Words for the whole of a study. */
  public static AnswerWords of(Results results) {
    return new AnswerWords(results);
  }

  /** What the report is headed with. */
  public String title() {
    return results.study().settings().value(Settings.TITLE).orElse("Burns of camp stoves");
  }

  /** The question that the study asks, or the one that is answered for want of it. */
  public String question() {
    return results
        .study()
        .settings()
        .value(Settings.QUESTION)
        .orElse(
            results.holeEffects().isEmpty()
                ? "How fast do these stoves boil water, and how hot do they burn?"
                : "Does hole position matter?");
  }

  /**
   * The answer: three sentences with their numbers and intervals; one more where burns failed, and
   * if the program failed at a part, a doubt before them.
   */
  public List<String> answer() {
    Optional<HoleEffect> first = first();
    Stream<String> found =
        Stream.concat(
            Stream.of(first, first.flatMap(this::other))
                .flatMap(Optional::stream)
                .map(effects::answer),
            spreads());
    Optional<String> ofMethod = PrecisionWords.of(results).answer();
    List<String> sentences = new ArrayList<>();
    FaultWords.doubt(results.faults()).ifPresent(sentences::add);
    sentences.addAll(found.limit(ofMethod.isEmpty() ? 2 : 1).toList());
    ofMethod.ifPresent(sentences::add);
    leftOutForFailures().ifPresent(sentences::add);
    sentences.add(basis());
    return List.copyOf(sentences);
  }

  /** The first effect that builds can be drawn of, else the first. */
  private Optional<HoleEffect> first() {
    return results.holeEffects().stream()
        .filter(effect -> !effect.points().isEmpty())
        .findFirst()
        .or(() -> results.holeEffects().stream().findFirst());
  }

  /** The effect on another response of the same ring: one of another kind if there is one. */
  private Optional<HoleEffect> other(HoleEffect first) {
    return results.holeEffects().stream()
        .filter(effect -> effect.ring().equals(first.ring()))
        .filter(effect -> effect.response() != first.response())
        .filter(effect -> !effect.points().isEmpty())
        .filter(effect -> effect.headline().isPresent() || first.headline().isPresent())
        .min(Comparator.comparingInt(effect -> likeness(effect, first)));
  }

  private static int likeness(HoleEffect effect, HoleEffect other) {
    return effect.response().dimension() == other.response().dimension() ? 1 : 0;
  }

  private Stream<String> spreads() {
    return List.of(
            Measure.NORMALISED_BOIL_TIME, Measure.NORMALISED_PEAK, Measure.BOIL_TIME, Measure.PEAK)
        .stream()
        .flatMap(measure -> spread(measure).stream());
  }

  /** From which mean to which the builds range in a measure, or what the only one has. */
  private Optional<String> spread(Measure measure) {
    List<BuildResult> builds =
        results.builds().stream()
            .filter(build -> build.summaries().containsKey(measure))
            .sorted(Comparator.comparingDouble(build -> build.summary(measure).mean()))
            .toList();
    return builds.size() < 2
        ? builds.stream().findFirst().map(build -> alone(build, measure))
        : Optional.of(
            areAlike(builds, measure) ? alike(builds.get(0), measure) : range(builds, measure));
  }

  /** Of builds in the order of their means. */
  private static boolean areAlike(List<BuildResult> builds, Measure measure) {
    double lowest = builds.get(0).summary(measure).mean();
    double highest = builds.get(builds.size() - 1).summary(measure).mean();
    return new Interval(lowest, highest).isPoint();
  }

  private String alike(BuildResult build, Measure measure) {
    return "Every build has the same mean "
        + measure.label()
        + ", "
        + display.value(build.summary(measure).mean(), 0, measure.dimension())
        + ".";
  }

  private String range(List<BuildResult> builds, Measure measure) {
    return "Build by build, "
        + site()
        + "the mean "
        + measure.label()
        + " runs from "
        + mean(builds.get(0), measure)
        + " to "
        + mean(builds.get(builds.size() - 1), measure)
        + settled(builds.get(0), builds.get(builds.size() - 1), measure)
        + ".";
  }

  private String alone(BuildResult build, Measure measure) {
    Summary summary = build.summary(measure);
    return "The "
        + (summary.n() == 1 ? "only " : "mean ")
        + measure.label()
        + " of build "
        + Names.inSentence(build.build().key().name())
        + " is "
        + (summary.n() == 1 ? ofOnlyRun(build, measure) : ofBurns(summary, measure))
        + ".";
  }

  private String ofBurns(Summary summary, Measure measure) {
    double coarseness = summary.interval().map(Display::uncertainty).orElse(0.0);
    return display.value(summary.mean(), coarseness, measure.dimension())
        + " ("
        + summary
            .interval()
            .map(it -> display.interval(it, measure.dimension(), results.confidence()) + "; ")
            .orElse("")
        + Plural.of(summary.n(), "burn")
        + ")";
  }

  /** One run has the interval of its own measurement. */
  private String ofOnlyRun(BuildResult build, Measure measure) {
    return results.runs().stream()
        .filter(run -> run.inclusion().included())
        .filter(run -> run.build().key().equals(build.build().key()))
        .flatMap(run -> measure.of(run).ifKnown().stream())
        .findFirst()
        .map(measured -> display.value(measured, results.confidence()))
        .orElseGet(() -> display.value(build.summary(measure).mean(), 0, measure.dimension()));
  }

  private String site() {
    boolean tied =
        results.fairness().tied().stream()
            .anyMatch(
                condition ->
                    condition.level().equals(Comparison.BUILD)
                        && condition.column().equals(RunsSheet.SITE.name()));
    return tied ? "each at a site of its own and so not to be told apart from it, " : "";
  }

  /** Nothing where the two are known to differ. */
  private String settled(BuildResult one, BuildResult other, Measure measure) {
    String low = one.build().key().name();
    String high = other.build().key().name();
    boolean open =
        results.comparisons().stream()
            .filter(pair -> pair.measure() == measure && pair.level().equals(Comparison.BUILD))
            .filter(
                pair ->
                    (pair.a().equals(low) && pair.b().equals(high))
                        || (pair.a().equals(high) && pair.b().equals(low)))
            .anyMatch(pair -> pair.verdict() == Comparison.Verdict.NOT_SETTLED);
    return open ? "; that these two differ is not settled" : "";
  }

  private String mean(BuildResult build, Measure measure) {
    Summary summary = build.summary(measure);
    double coarseness = summary.interval().map(Display::uncertainty).orElse(0.0);
    return display.value(summary.mean(), coarseness, measure.dimension())
        + " ("
        + Names.inSentence(build.build().key().name())
        + summary
            .interval()
            .map(found -> "; " + display.interval(found, measure.dimension(), results.confidence()))
            .orElse(summary.n() == 1 ? "; 1 run" : "; " + summary.n() + " runs, all alike")
        + ")";
  }

  private String basis() {
    long counted = results.runs().stream().filter(run -> run.inclusion().included()).count();
    if (results.runs().isEmpty()) {
      return "There are no runs to stand on.";
    }
    return "This stands on "
        + counted
        + " of "
        + Plural.of(results.runs().size(), "run")
        + ", of "
        + Plural.of(burnt(), "build")
        + ": "
        + boiled(counted)
        + ", and "
        + leftOut(results.runs().size() - counted)
        + claims()
        + ".";
  }

  private String boiled(long counted) {
    BoilCount boils = BoilCount.of(results.runs());
    return boils.judged() == counted
        ? "the water boiled in " + (boils.boiled() == 0 ? "none" : "" + boils.boiled())
        : BoilWords.clause(boils);
  }

  /** Builds that means and comparisons leave out because a burn failed, and how that leans. */
  private Optional<String> leftOutForFailures() {
    List<Measure> measures =
        Arrays.stream(Measure.values())
            .filter(measure -> results.runs().stream().anyMatch(it -> measure.of(it).isKnown()))
            .filter(
                measure -> results.builds().stream().anyMatch(it -> it.lacksForFailures(measure)))
            .toList();
    List<BuildResult> builds =
        results.builds().stream()
            .filter(build -> measures.stream().anyMatch(build::lacksForFailures))
            .toList();
    return builds.isEmpty() ? Optional.empty() : Optional.of(leftOut(builds, measures));
  }

  private static String leftOut(List<BuildResult> builds, List<Measure> measures) {
    List<String> named =
        new ArrayList<>(builds.stream().limit(MOST_NAMED).map(AnswerWords::failures).toList());
    if (builds.size() > MOST_NAMED) {
      named.add(builds.size() - MOST_NAMED + " more");
    }
    boolean one = builds.size() == 1;
    return "Burns failed, so "
        + Plural.list(named)
        + (one ? " has" : " have")
        + " no mean "
        + String.join(" or ", measures.stream().map(Measure::label).toList())
        + ". Every mean and comparison of these leaves out "
        + (one ? "that build" : "those builds")
        + " and the designs and groups that hold the failed burns: to skip only the failures would"
        + " make a stove look better than it is.";
  }

  private static String failures(BuildResult build) {
    return "build "
        + Names.inSentence(build.build().key().name())
        + " (boiled in "
        + BoilWords.of(build.boils())
        + ")";
  }

  /** Builds of which there are runs: an empty copy of a study names builds as well. */
  private int burnt() {
    return (int) results.runs().stream().map(run -> run.build().key()).distinct().count();
  }

  private static String leftOut(long count) {
    return switch ((int) Math.min(count, 2)) {
      case 0 -> "no run was left out";
      case 1 -> "1 run was left out";
      default -> count + " runs were left out";
    };
  }

  private String claims() {
    if (results.claims().isEmpty()) {
      return "";
    }
    List<String> counts = new ArrayList<>();
    for (Verdict verdict : Verdict.values()) {
      long count = results.claims().stream().filter(it -> it.verdict() == verdict).count();
      if (count > 0) {
        counts.add(
            count + " " + (verdict == Verdict.NOT_TESTABLE ? "" : be(count)) + verdict.label());
      }
    }
    return "; of " + Plural.of(results.claims().size(), "claim") + ", " + Plural.list(counts);
  }

  private static String be(long count) {
    return count == 1 ? "is " : "are ";
  }
}
