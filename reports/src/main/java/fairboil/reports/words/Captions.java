package fairboil.reports.words;

import fairboil.analysis.compare.Comparison;
import fairboil.analysis.compare.Comparison.Verdict;
import fairboil.analysis.effect.BuildPoint;
import fairboil.analysis.effect.EffectRow;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.group.BuildResult;
import fairboil.analysis.group.Restating;
import fairboil.analysis.group.Summary;
import fairboil.analysis.layout.RingResult;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.RunResult;
import fairboil.analysis.run.TimedEvent;
import fairboil.ingest.choice.Outcome;
import fairboil.ingest.choice.Surface;
import fairboil.ingest.quantity.Dimension;
import fairboil.ingest.sheet.Key;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** What is said above, below and in place of each chart: short sentences that say what to see. */
public final class Captions {

  private static final int ENOUGH_BUILDS = 4;
  private static final int MOST_TOLD = 12;

  private final Display display;
  private final double confidence;

  private Captions(Display display, double confidence) {
    this.display = display;
    this.confidence = confidence;
  }

  /** Captions with numbers as {@code display} shows them and intervals at that confidence. */
  public static Captions in(Display display, double confidence) {
    return new Captions(display, confidence);
  }

  /**
   * What is said of one chart.
   *
   * @param title what it shows, in a few words
   * @param subtitle what to know of it, in one line
   * @param text what to see, with n: for below it
   * @param alternative what the chart says: for those who cannot see it
   */
  public record Caption(String title, String subtitle, String text, String alternative) {}

  /** Of a response against hole error. */
  public Caption holeEffect(HoleEffect effect) {
    String response = effect.response().label();
    String counts = counts(effect.points().size(), burns(effect));
    String answer = answer(effect);
    String marks =
        effect.band().isEmpty()
            ? " Large marks are builds, small ones their burns."
            : " Large marks are builds, small ones their burns; the line is fitted to the builds,"
                + " its band is the "
                + Display.percent(confidence)
                + " interval of the line.";
    return new Caption(
        capitalised(response) + " against hole error, ring " + Names.inSentence(effect.ring()),
        effect.headline().isPresent() ? counts + ": " + answer : capitalised(answer),
        capitalised(counts) + ". " + sentence(answer) + marks,
        "Chart of "
            + response
            + " against the RMS hole error of ring "
            + Names.inSentence(effect.ring())
            + ": "
            + counts
            + ". "
            + sentence(answer)
            + extremes(effect));
  }

  private static int burns(HoleEffect effect) {
    return effect.points().stream().mapToInt(point -> point.burns().length).sum();
  }

  private String answer(HoleEffect effect) {
    return effect.headline().isPresent() ? slope(effect, effect.headline().get()) : noLine(effect);
  }

  private String slope(HoleEffect effect, EffectRow row) {
    Dimension dimension = effect.response().dimension().perLength();
    List<String> allowed = EffectWords.allowedFor(effect);
    String allowing = allowed.isEmpty() ? "" : ", " + Plural.list(allowed) + " allowed for";
    return switch (effect.verdict()) {
      case FALLS -> "falls by " + slope(Slopes.turned(row), dimension) + allowing;
      case RISES -> "rises by " + slope(row, dimension) + allowing;
      default -> "not settled whether it rises or falls: " + slope(row, dimension) + allowing;
    };
  }

  private String slope(EffectRow row, Dimension dimension) {
    return Slopes.number(display, row, dimension)
        + " "
        + display.symbol(dimension)
        + " ("
        + Display.percent(confidence)
        + " interval "
        + Slopes.range(display, row, dimension)
        + ")";
  }

  private String noLine(HoleEffect effect) {
    int builds = effect.points().size();
    if (builds == 0) {
      return "no build has both a hole error and a " + effect.response().label();
    }
    if (builds >= 3) {
      return "all builds have the same hole error: no slope can be seen";
    }
    return plural(builds, "build")
        + ": no line through "
        + plural(builds, "point")
        + " can be tested; drill at least "
        + (ENOUGH_BUILDS - builds)
        + " more";
  }

  private String extremes(HoleEffect effect) {
    Comparator<BuildPoint> byMean = Comparator.comparingDouble(BuildPoint::mean);
    Optional<BuildPoint> low = effect.points().stream().min(byMean);
    Optional<BuildPoint> high = effect.points().stream().max(byMean);
    return low.isEmpty() || effect.points().size() < 2
        ? ""
        : " Highest: " + point(effect, high.get()) + "; lowest: " + point(effect, low.get()) + ".";
  }

  private String point(HoleEffect effect, BuildPoint point) {
    return Names.inSentence(point.build().name())
        + ", "
        + display.value(point.mean(), 1, effect.response().dimension())
        + " at "
        + display.value(point.holeError(), 0, Dimension.LENGTH);
  }

  /** Of how far builds and burns lie from the line of a hole effect, which must have one. */
  public Caption residuals(HoleEffect effect) {
    Residuals residuals = Residuals.of(effect);
    String response = effect.response().label();
    Comparator<BuildPoint> bySize =
        Comparator.comparingDouble(point -> Math.abs(residuals.ofMean(point)));
    BuildPoint farthest = effect.points().stream().max(bySize).orElseThrow();
    double off = residuals.ofMean(farthest);
    long above = effect.points().stream().filter(point -> residuals.ofMean(point) > 0).count();
    String counts = capitalised(counts(effect.points().size(), burns(effect)));
    String found =
        "Farthest from the line: build "
            + Names.inSentence(farthest.build().name())
            + ", "
            + display.value(
                Math.abs(off), Math.abs(off) / 10, effect.response().dimension().ofDifference())
            + (off < 0 ? " below it." : " above it.");
    String sides =
        " Of the means of builds "
            + above
            + " lie above it and "
            + (effect.points().size() - above)
            + " below or on it.";
    return new Caption(
        capitalised(response) + " beside the fitted line, ring " + Names.inSentence(effect.ring()),
        "how far each build and burn lies from the line; a bend or a funnel would speak against it",
        counts
            + ". "
            + found
            + sides
            + " Large marks are builds, small ones their burns. A bend, or a spread that grows"
            + " along the line, would speak against it.",
        "Chart of how far "
            + response
            + " lies from the line fitted to hole error: "
            + counts
            + ". "
            + found
            + sides);
  }

  /** Of differences in one measure; at least one. */
  public Caption forest(Measure measure, List<Comparison> pairs, CompareWords words) {
    long apart = pairs.stream().filter(pair -> pair.verdict() != Verdict.NOT_SETTLED).count();
    String counts =
        apart == 0
            ? plural(pairs.size(), "difference") + ", none of them settled"
            : apart + " of " + plural(pairs.size(), "difference") + " settled";
    String each =
        pairs.stream()
            .limit(MOST_TOLD)
            .map(pair -> CompareWords.less(pair) + ": " + words.withInterval(pair))
            .collect(Collectors.joining("; "));
    String rest = pairs.size() > MOST_TOLD ? "; and " + (pairs.size() - MOST_TOLD) + " more." : ".";
    return new Caption(
        "Differences in " + measure.label(),
        counts,
        "Differences in "
            + measure.label()
            + ", the first less the second, each with its "
            + Display.percent(confidence)
            + " interval, which allows for all pairs of its kind together. "
            + capitalised(counts)
            + "; where it holds 0, which of the two has more is not settled.",
        "Chart of " + counts + ". " + each + rest);
  }

  /** Of boil times as measured and normalised, against air and water. */
  public Caption normalising(Restating restating) {
    String scatter =
        "standard deviation over all burns "
            + time(restating.scatter(Measure.BOIL_TIME))
            + " as measured and "
            + time(restating.scatter(Measure.NORMALISED_BOIL_TIME))
            + " normalised";
    String runs = plural(restating.runs().size(), "burn");
    String water =
        correlations(
            "mass of water",
            restating.withWater(Measure.BOIL_TIME),
            restating.withWater(Measure.NORMALISED_BOIL_TIME));
    String air =
        correlations(
            "air temperature",
            restating.withAmbient(Measure.BOIL_TIME),
            restating.withAmbient(Measure.NORMALISED_BOIL_TIME));
    return new Caption(
        "What normalising did to boil times",
        runs + "; " + scatter,
        capitalised(runs)
            + ", each once above as measured and once below normalised, on one scale of time: "
            + scatter
            + "."
            + water
            + air
            + " What is left lies between stoves, fires and days.",
        "Charts of boil time against air temperature and mass of water, as measured and"
            + " normalised. "
            + capitalised(runs)
            + ": "
            + scatter
            + "."
            + water
            + air);
  }

  private String time(double seconds) {
    return display.value(seconds, seconds / 10, Dimension.DURATION);
  }

  private static String correlations(
      String condition, OptionalDouble measured, OptionalDouble normalised) {
    return measured.isEmpty() || normalised.isEmpty()
        ? ""
        : " Correlation with "
            + condition
            + ": "
            + CheckWords.twoDecimals(measured.getAsDouble())
            + " as measured, "
            + CheckWords.twoDecimals(normalised.getAsDouble())
            + " normalised.";
  }

  /**
   * Of the traces of many runs, small and side by side.
   *
   * @param some the runs of one sheet; at least one
   * @param minutes how far the time axis of each reaches
   * @param axis from and to which shown temperature each reaches
   */
  public Caption traces(List<RunResult> some, double minutes, String axis) {
    String first = Names.inSentence(some.get(0).run().key().name());
    String last = Names.inSentence(some.get(some.size() - 1).run().key().name());
    long boiled = some.stream().filter(RunResult::boiled).count();
    String scale = Math.round(minutes) + " minutes along, " + axis + " up";
    String found = "the water boiled in " + boiled + " of " + plural(some.size(), "run");
    return new Caption(
        some.size() == 1 ? "Trace of " + first : "Traces from " + first + " to " + last,
        plural(some.size(), "run") + ", all over the same axes: " + scale,
        capitalised(plural(some.size(), "run"))
            + ", from "
            + first
            + " to "
            + last
            + ", all over the same axes: "
            + scale
            + ". Beside each name is its boil time; "
            + found
            + ". Each run has a page of its own, to which the table above leads.",
        "Small traces of flame and water of "
            + plural(some.size(), "run")
            + ", from "
            + first
            + " to "
            + last
            + ": "
            + found
            + ".");
  }

  /** Of builds side by side in one measure. */
  public Caption builds(Measure measure, List<BuildResult> builds, int runs) {
    String counts = counts(builds.size(), runs);
    Map<Key, Double> means =
        builds.stream()
            .filter(build -> build.summaries().containsKey(measure))
            .collect(
                Collectors.toMap(
                    build -> build.build().key(), build -> build.summaries().get(measure).mean()));
    String range = ends(means.keySet().stream().sorted().toList(), means::get, measure.dimension());
    return new Caption(
        capitalised(measure.label()) + ", build by build",
        counts,
        capitalised(counts)
            + ". Small marks are burns; large marks are the means of builds, with the "
            + Display.percent(confidence)
            + " interval of each mean from that build's own burns."
            + range,
        "Chart of " + measure.label() + ": " + counts + "." + range + " " + list(measure, builds));
  }

  private String ends(List<Key> builds, ToDoubleFunction<Key> value, Dimension dimension) {
    if (builds.size() < 2) {
      return "";
    }
    Key low = builds.stream().min(Comparator.comparingDouble(value)).orElseThrow();
    Key high = builds.stream().max(Comparator.comparingDouble(value)).orElseThrow();
    double size = dimension == Dimension.LENGTH ? 0 : 1;
    return " Lowest: "
        + Names.inSentence(low.name())
        + ", "
        + display.value(value.applyAsDouble(low), size, dimension)
        + "; highest: "
        + Names.inSentence(high.name())
        + ", "
        + display.value(value.applyAsDouble(high), size, dimension)
        + ".";
  }

  private String list(Measure measure, List<BuildResult> builds) {
    return builds.stream()
            .map(
                build -> Names.inSentence(build.build().key().name()) + ": " + mean(measure, build))
            .collect(Collectors.joining("; "))
        + ".";
  }

  /** The mean of a build in a measure and how many burns it stands on, or why there is none. */
  public String mean(Measure measure, BuildResult build) {
    Summary summary = build.summaries().get(measure);
    if (summary == null) {
      return build.boiled() < build.runs()
          ? "boiled in " + build.boiled() + " of " + build.runs()
          : "not known";
    }
    double size = summary.sd().isPresent() ? summary.sd().getAsDouble() : 1;
    return display.value(summary.mean(), size, measure.dimension()) + ", n " + summary.n();
  }

  /**
   * Of the maps of one ring.
   *
   * @param maps the ring in each build; at least one
   * @param times how many times their size deviations are drawn
   */
  public Caption ringMaps(List<RingResult> maps, int times) {
    RingResult first = maps.get(0);
    String scale =
        times == 1
            ? "deviations drawn true to scale"
            : "deviations drawn " + times + " times their size";
    Map<Key, Double> rms =
        maps.stream()
            .filter(map -> map.rms().isKnown())
            .collect(Collectors.toMap(RingResult::build, map -> map.rms().orNaN(), (a, b) -> a));
    String range =
        ends(rms.keySet().stream().sorted().toList(), rms::get, Dimension.LENGTH)
            .replace(" Lowest:", " Smallest RMS deviation:")
            .replace("highest:", "largest:");
    String view = first.surface() == Surface.WALL ? "the wall unrolled" : "the base in plan";
    return new Caption(
        "Where the holes are, ring " + Names.inSentence(first.ring()),
        view + "; " + scale,
        "Ring "
            + Names.inSentence(first.ring())
            + " of "
            + plural(maps.size(), "build")
            + ", "
            + view
            + ": where each hole was meant to be (open) and where it is (filled) after best fit; "
            + scale
            + "."
            + range,
        "Maps of ring "
            + Names.inSentence(first.ring())
            + " of "
            + plural(maps.size(), "build")
            + ", one a build; "
            + scale
            + "."
            + range);
  }

  /** The RMS of one ring and its largest deviation. */
  public String deviations(RingResult map) {
    return map.rms()
        .ifKnown()
        .map(rms -> "RMS " + length(rms) + largest(map))
        .orElse("hole error not known");
  }

  /** The RMS of one ring alone. */
  public String rms(RingResult map) {
    return map.rms().ifKnown().map(rms -> "RMS " + length(rms)).orElse("RMS not known");
  }

  private String largest(RingResult map) {
    return map.holes().stream()
        .max(Comparator.comparingDouble(hole -> hole.deviation()))
        .map(
            hole ->
                ", largest "
                    + display.value(hole.deviation(), tenth(hole.deviation()), Dimension.LENGTH)
                    + " (hole "
                    + hole.number()
                    + ")")
        .orElse("");
  }

  private String length(Measured measured) {
    return display.value(measured.value(), tenth(measured.value()), Dimension.LENGTH);
  }

  /** Two figures are enough for the eye. */
  private static double tenth(double value) {
    return Math.abs(value) / 10;
  }

  /** Of the trace of one run. */
  public Caption run(RunResult run) {
    String of =
        run.build().design().map(design -> ", design " + Names.inSentence(design)).orElse("");
    String name =
        "Run "
            + Names.inSentence(run.run().key().name())
            + ", build "
            + Names.inSentence(run.build().key().name())
            + of;
    String facts = String.join("; ", facts(run));
    return new Caption(
        name,
        facts,
        name + ": " + facts + ".",
        "Flame and water temperature over time. " + name + ": " + facts + "." + events(run));
  }

  private List<String> facts(RunResult run) {
    List<String> facts = new ArrayList<>();
    run.inclusion()
        .excluded()
        .ifPresent(reason -> facts.add("left out of the results: " + Names.inSentence(reason)));
    run.inclusion()
        .peakExcluded()
        .ifPresent(reason -> facts.add("peak left out: " + Names.inSentence(reason)));
    run.inclusion()
        .boilExcluded()
        .ifPresent(reason -> facts.add("boil left out: " + Names.inSentence(reason)));
    add(facts, "peak", run.flame().peak());
    if (run.boil().boilTime().isKnown()) {
      add(facts, "boil time", run.boil().boilTime());
    } else {
      run.outcome().map(Outcome::label).ifPresent(facts::add);
      add(facts, "hottest water", run.boil().hottestWater());
    }
    add(facts, "air", run.conditions().ambient());
    add(facts, "water", run.conditions().water());
    return facts;
  }

  private void add(List<String> facts, String name, Figure figure) {
    figure
        .ifKnown()
        .ifPresent(
            known ->
                facts.add(
                    name
                        + " "
                        + display.value(
                            known.value(), known.standardUncertainty(), known.dimension())));
  }

  private String events(RunResult run) {
    List<TimedEvent> events = run.timeline().events();
    return events.isEmpty()
        ? ""
        : " Events: " + events.stream().map(this::event).collect(Collectors.joining(", ")) + ".";
  }

  private String event(TimedEvent event) {
    return Names.inSentence(event.text())
        + " "
        + display.number(event.seconds(), 1, Dimension.DURATION);
  }

  private static String counts(int builds, int burns) {
    return plural(builds, "build") + ", " + plural(burns, "burn");
  }

  private static String plural(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }

  private static String sentence(String clause) {
    return capitalised(clause) + ".";
  }

  private static String capitalised(String text) {
    int first = text.codePointAt(0);
    return new StringBuilder()
        .appendCodePoint(Character.toUpperCase(first))
        .append(text, Character.charCount(first), text.length())
        .toString();
  }
}
