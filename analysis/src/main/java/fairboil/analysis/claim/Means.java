package fairboil.analysis.claim;

import fairboil.analysis.claim.Subject.Scope;
import fairboil.analysis.figure.Deviations;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.group.RunGroup;
import fairboil.analysis.group.Summary;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.measure.WithoutBoil;
import fairboil.ingest.choice.Relation;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.sheet.Key;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.random.RandomGenerator;

/** What runs say of a mean, and of a difference between two means. */
final class Means {

  private static final Optional<Message> ONE_STOVE = Optional.of(ClaimSays.ONE_STOVE.with());

  private final Measure measure;

  Means(Measure measure) {
    this.measure = measure;
  }

  /** The values of a subject by build; builds without any are left out. Failures may be missing. */
  private Map<Key, double[]> byBuild(RunGroup runs) {
    Map<Key, double[]> values = new LinkedHashMap<>();
    runs.byBuild()
        .forEach(
            (build, own) -> {
              double[] known =
                  own.figures(measure).stream()
                      .mapToDouble(figure -> figure.measured().value())
                      .toArray();
              if (known.length > 0) {
                values.put(build, known);
              }
            });
    return values;
  }

  /** The mean, to be judged against a fixed value: what instruments share counts once. */
  Evidence mean(Subject subject) {
    Map<Key, double[]> builds = byBuild(subject.runs());
    int runs = count(builds);
    if (runs == 0) {
      return Evidence.none(0, 0, nothingKnown(subject.runs()));
    }
    Optional<Message> noBound = noBound(subject.runs());
    if (noBound.isPresent()) {
      return Evidence.none(runs, builds.size(), noBound.get());
    }
    boolean ofRuns = subject.scope() == Scope.ONE_BUILD || builds.size() == 1;
    double[] units = ofRuns ? all(builds) : means(builds);
    Optional<Message> reason =
        ofRuns && subject.scope() == Scope.BUILDS ? ONE_STOVE : Optional.empty();
    if (units.length < 2) {
      return Evidence.none(runs, builds.size(), ClaimSays.SINGLE_RUN.with());
    }
    Summary summary = Summary.of(units, 0.5);
    double scatter = summary.sd().orElseThrow() / Math.sqrt(units.length);
    double shared = SharedParts.of(subject.runs(), measure).size();
    double standardError = Math.hypot(scatter, shared);
    Evidence evidence =
        Evidence.student(
                summary.mean(),
                standardError,
                effectiveDegreesOfFreedom(scatter, standardError, units.length - 1.0),
                runs,
                builds.size(),
                reason)
            .with(
                new Scatter(
                    scatter,
                    units.length,
                    units.length - 1.0,
                    shared,
                    ofRuns
                        ? OutlookSays.BURNS_OF_THAT_STOVE
                        : OutlookSays.builds(runs, builds.size()),
                    OutlookSays.MEAN_IS));
    return subject.runs().hidesFailures(measure)
        ? evidence.fromBelow(tooShort(subject.runs()))
        : evidence;
  }

  /** Nothing is known of the mean if what the failures lack may have been more or less. */
  private Optional<Message> noBound(RunGroup runs) {
    return measure.withoutBoil() == WithoutBoil.WOULD_TAKE_LONGER
        ? Optional.empty()
        : Optional.of(runs).filter(it -> it.hidesFailures(measure)).map(this::didNotBoil);
  }

  private Message tooShort(RunGroup runs) {
    return ClaimSays.TOO_SHORT.with(
        Argument.count(runs.hidden(measure)), Argument.count(counted(runs)));
  }

  /** How many runs either have the measure or failed. */
  private int counted(RunGroup runs) {
    return runs.hidden(measure) + runs.figures(measure).size();
  }

  /** Most runs, to be judged against a fixed value. */
  Evidence mostRuns(Subject subject, Relation relation, RandomGenerator random) {
    Map<Key, double[]> builds = byBuild(subject.runs());
    int runs = count(builds);
    Optional<Message> trouble = trouble(subject.runs(), runs);
    if (trouble.isPresent()) {
      return Evidence.none(runs, builds.size(), trouble.get());
    }
    MostRuns most = new MostRuns(relation, sharedByARun(subject.runs()));
    if (subject.scope() == Scope.ONE_BUILD) {
      return most.ofOneBuild(all(builds), Optional.empty());
    }
    return builds.size() == 1
        ? most.ofOneBuild(all(builds), ONE_STOVE)
        : most.ofBuilds(List.copyOf(builds.values()), random);
  }

  private Message nothingKnown(RunGroup runs) {
    return runs.hidesFailures(measure)
        ? didNotBoil(runs)
        : ClaimSays.NONE_KNOWN.with(Argument.word(measure.label()));
  }

  private Message didNotBoil(RunGroup runs) {
    return ClaimSays.NO_MEAN.with(
        Argument.count(runs.hidden(measure)),
        Argument.count(counted(runs)),
        Argument.word(measure.label()));
  }

  /** Welch–Satterthwaite (JCGM 100:2008, G.2b); the shared part is known well. */
  private static double effectiveDegreesOfFreedom(
      double scatter, double combined, double degreesOfFreedom) {
    return scatter == 0
        ? Double.POSITIVE_INFINITY
        : degreesOfFreedom * Math.pow(combined / scatter, 4);
  }

  /** The part of the uncertainty that does not average out, root mean square over the runs. */
  private double sharedByARun(RunGroup runs) {
    return Math.sqrt(
        runs.figures(measure).stream()
            .map(Figure::budget)
            .mapToDouble(budget -> budget.shared() * budget.shared())
            .average()
            .orElse(0));
  }

  private Optional<Message> trouble(RunGroup runs, int known) {
    if (known == 0) {
      return Optional.of(nothingKnown(runs));
    }
    return runs.hidesFailures(measure) ? Optional.of(didNotBoil(runs)) : Optional.empty();
  }

  /**
   * The first mean less the second. What one instrument adds to both cancels; where the sides were
   * read by different instruments, as at different sites, what these add does not.
   *
   * @param all the runs from which the scatter within builds may be pooled
   */
  Evidence difference(Subject first, Subject second, RunGroup all) {
    Map<Key, double[]> a = byBuild(first.runs());
    Map<Key, double[]> b = byBuild(second.runs());
    int runs = count(a) + count(b);
    Map<Key, double[]> both = new LinkedHashMap<>(a);
    both.putAll(b);
    int builds = both.size();
    Optional<Message> trouble =
        trouble(first.runs(), count(a)).or(() -> trouble(second.runs(), count(b)));
    if (trouble.isPresent()) {
      return Evidence.none(runs, builds, trouble.get());
    }
    double shared =
        SharedParts.of(first.runs(), measure).apart(SharedParts.of(second.runs(), measure));
    List<Key> common = a.keySet().stream().filter(b::containsKey).toList();
    if (common.size() > 1) {
      return withinBuilds(a, b, common, runs, shared);
    }
    if (common.size() == 1) {
      Key build = common.get(0);
      return welch(
          Objects.requireNonNull(a.get(build)),
          Objects.requireNonNull(b.get(build)),
          shared,
          ONE_STOVE);
    }
    if (a.size() == 1 && b.size() == 1) {
      return twoStoves(only(a), only(b), shared, all, stovesOrDesigns(first, second));
    }
    return pooled(means(a), means(b), shared, runs, builds);
  }

  private static Optional<Message> stovesOrDesigns(Subject first, Subject second) {
    boolean stoves = first.scope() == Scope.ONE_BUILD && second.scope() == Scope.ONE_BUILD;
    return stoves ? Optional.empty() : Optional.of(ClaimSays.TWO_STOVES.with());
  }

  /** The differences within builds that have both. */
  private static Evidence withinBuilds(
      Map<Key, double[]> a, Map<Key, double[]> b, List<Key> common, int runs, double shared) {
    double[] differences =
        common.stream()
            .mapToDouble(
                build ->
                    mean(Objects.requireNonNull(a.get(build)))
                        - mean(Objects.requireNonNull(b.get(build))))
            .toArray();
    Summary summary = Summary.of(differences, 0.5);
    double standardError = summary.sd().orElseThrow() / Math.sqrt(differences.length);
    return difference(
        summary.mean(),
        new Scatter(
            standardError,
            common.size(),
            differences.length - 1.0,
            shared,
            OutlookSays.BURNT_BOTH_WAYS,
            OutlookSays.DIFFERENCE_IS),
        runs,
        common.size(),
        Optional.empty());
  }

  /** Two stoves, by the scatter of runs pooled over all builds. */
  private Evidence twoStoves(
      double[] a, double[] b, double shared, RunGroup all, Optional<Message> reason) {
    double squares = 0;
    int degreesOfFreedom = 0;
    for (RunGroup own : all.byBuild().values()) {
      double[] values = own.values(measure);
      squares += values.length == 0 ? 0 : Deviations.squares(values);
      degreesOfFreedom += Math.max(0, values.length - 1);
    }
    if (degreesOfFreedom == 0) {
      return Evidence.none(a.length + b.length, 2, ClaimSays.NEVER_TWICE.with());
    }
    double variance = squares / degreesOfFreedom;
    double standardError = Math.sqrt(variance * (1.0 / a.length + 1.0 / b.length));
    int burns = a.length + b.length;
    return difference(
        mean(a) - mean(b),
        new Scatter(
            standardError,
            burns,
            degreesOfFreedom,
            shared,
            OutlookSays.BURNS_OF_THE_TWO,
            OutlookSays.DIFFERENCE_IS),
        burns,
        2,
        reason);
  }

  /** Means of builds, by their scatter pooled over both sides. */
  private static Evidence pooled(double[] a, double[] b, double shared, int runs, int builds) {
    int degreesOfFreedom = a.length + b.length - 2;
    double variance = (Deviations.squares(a) + Deviations.squares(b)) / degreesOfFreedom;
    double standardError = Math.sqrt(variance * (1.0 / a.length + 1.0 / b.length));
    return difference(
        mean(a) - mean(b),
        new Scatter(
            standardError,
            builds,
            degreesOfFreedom,
            shared,
            OutlookSays.BOTH_SIDES.with(Argument.clause(OutlookSays.builds(runs, builds))),
            OutlookSays.DIFFERENCE_IS),
        runs,
        builds,
        Optional.empty());
  }

  /** Welch (Biometrika 34, 1947). */
  private static Evidence welch(double[] a, double[] b, double shared, Optional<Message> reason) {
    int runs = a.length + b.length;
    if (a.length < 2 || b.length < 2) {
      return Evidence.none(runs, 1, ClaimSays.SINGLE_RUN_ON_ONE_SIDE.with());
    }
    double ofA = Deviations.squares(a) / (a.length - 1) / a.length;
    double ofB = Deviations.squares(b) / (b.length - 1) / b.length;
    double variance = ofA + ofB;
    double degreesOfFreedom =
        variance == 0
            ? runs - 2.0
            : variance * variance / (ofA * ofA / (a.length - 1) + ofB * ofB / (b.length - 1));
    double standardError = Math.sqrt(variance);
    return difference(
        mean(a) - mean(b),
        new Scatter(
            standardError,
            runs,
            degreesOfFreedom,
            shared,
            OutlookSays.BURNS_OF_THAT_STOVE,
            OutlookSays.DIFFERENCE_IS),
        runs,
        1,
        reason);
  }

  private static Evidence difference(
      double value, Scatter scatter, int runs, int builds, Optional<Message> reason) {
    double combined = Math.hypot(scatter.standardError(), scatter.shared());
    double degreesOfFreedom =
        scatter.shared() == 0
            ? scatter.degreesOfFreedom()
            : effectiveDegreesOfFreedom(
                scatter.standardError(), combined, scatter.degreesOfFreedom());
    return Evidence.student(value, combined, degreesOfFreedom, runs, builds, reason).with(scatter);
  }

  private static int count(Map<Key, double[]> builds) {
    return builds.values().stream().mapToInt(values -> values.length).sum();
  }

  private static double[] only(Map<Key, double[]> builds) {
    return builds.values().iterator().next();
  }

  private static double[] all(Map<Key, double[]> builds) {
    return builds.values().stream().flatMapToDouble(Arrays::stream).toArray();
  }

  private static double[] means(Map<Key, double[]> builds) {
    List<Double> means = new ArrayList<>();
    builds.values().forEach(values -> means.add(mean(values)));
    return means.stream().mapToDouble(mean -> mean).toArray();
  }

  private static double mean(double[] values) {
    return Arrays.stream(values).average().orElseThrow();
  }
}
