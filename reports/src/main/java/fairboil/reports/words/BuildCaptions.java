package fairboil.reports.words;

import fairboil.analysis.compare.Comparison;
import fairboil.analysis.compare.Comparison.Verdict;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.group.BuildResult;
import fairboil.analysis.group.Summary;
import fairboil.analysis.layout.RingResult;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.measure.WithoutBoil;
import fairboil.ingest.choice.Surface;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.sheet.Key;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** What is said of charts of builds, of their differences and of their rings. */
public final class BuildCaptions {

  private static final int MOST_TOLD = 12;

  private final Display display;
  private final double confidence;

  private BuildCaptions(Display display, double confidence) {
    this.display = display;
    this.confidence = confidence;
  }

  /** Captions with numbers as {@code display} shows them and intervals at that confidence. */
  public static BuildCaptions in(Display display, double confidence) {
    return new BuildCaptions(display, confidence);
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
    String range =
        ends(
            Ends.OF_MEANS,
            means.keySet().stream().sorted().toList(),
            means::get,
            measure.dimension());
    return new Caption(
        Plural.sentence(measure.label()) + ", build by build",
        counts,
        Plural.sentence(counts)
            + ". Small marks are burns; large marks are the means of builds, with the "
            + Display.percent(confidence)
            + " interval of each mean from that build's own burns."
            + range,
        "Chart of " + measure.label() + ": " + counts + "." + range + " " + list(measure, builds));
  }

  /** What the two ends of a range are called. */
  private record Ends(String low, String high) {

    static final Ends OF_MEANS = new Ends("Lowest", "highest");
    static final Ends OF_RINGS = new Ends("Smallest RMS deviation", "largest");
  }

  private String ends(
      Ends called, List<Key> builds, ToDoubleFunction<Key> value, Dimension dimension) {
    if (builds.size() < 2) {
      return "";
    }
    Key low = builds.stream().min(Comparator.comparingDouble(value)).orElseThrow();
    Key high = builds.stream().max(Comparator.comparingDouble(value)).orElseThrow();
    double size = dimension == Dimension.LENGTH ? 0 : 1;
    if (display
        .value(value.applyAsDouble(low), size, dimension)
        .equals(display.value(value.applyAsDouble(high), size, dimension))) {
      return " All are about the same.";
    }
    return " "
        + called.low()
        + ": "
        + Names.inSentence(low.name())
        + ", "
        + display.value(value.applyAsDouble(low), size, dimension)
        + "; "
        + called.high()
        + ": "
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
      return build.lacksForFailures(measure)
          ? "boiled in " + BoilWords.of(build.boils())
          : "not known";
    }
    double size = summary.sd().isPresent() ? summary.sd().getAsDouble() : 1;
    return display.value(summary.mean(), size, measure.dimension())
        + ", n "
        + summary.n()
        + unseen(measure, build);
  }

  /** Of how many more burns a boil time might have been known, had somebody seen the boil. */
  private static String unseen(Measure measure, BuildResult build) {
    boolean ofABoil = measure.withoutBoil() == WithoutBoil.WOULD_TAKE_LONGER;
    int unseen = build.boils().unseen();
    return ofABoil && unseen > 0 ? ", " + unseen + " not seen" : "";
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
        ends(Ends.OF_RINGS, rms.keySet().stream().sorted().toList(), rms::get, Dimension.LENGTH);
    String view = first.surface() == Surface.WALL ? "the wall unrolled" : "the base in plan";
    return new Caption(
        "Where the holes are, ring " + Names.inSentence(first.ring()),
        view + "; " + scale,
        "Ring "
            + Names.inSentence(first.ring())
            + " of "
            + Plural.of(maps.size(), "build")
            + ", "
            + view
            + ": where each hole was meant to be (open) and where it is (filled) after best fit; "
            + scale
            + "."
            + range,
        "Maps of ring "
            + Names.inSentence(first.ring())
            + " of "
            + Plural.of(maps.size(), "build")
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

  private static String settled(long settled, int differences) {
    if (differences == 1) {
      return settled == 1 ? "1 difference, settled" : "1 difference, not settled";
    }
    return settled == 0
        ? differences + " differences, none of them settled"
        : settled + " of " + differences + " differences settled";
  }

  /** Of differences in one measure; at least one. */
  public Caption forest(Measure measure, List<Comparison> pairs, CompareWords words) {
    long apart = pairs.stream().filter(pair -> pair.verdict() != Verdict.NOT_SETTLED).count();
    String counts = settled(apart, pairs.size());
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
            + Plural.sentence(counts)
            + "; where it holds 0, which of the two has more is not settled.",
        "Chart of " + counts + ". " + each + rest);
  }

  /** How many builds and burns a chart stands on. */
  static String counts(int builds, int burns) {
    return Plural.of(builds, "build") + ", " + Plural.of(burns, "burn");
  }
}
