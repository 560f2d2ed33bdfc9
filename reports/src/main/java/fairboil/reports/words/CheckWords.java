package fairboil.reports.words;

import fairboil.analysis.Results;
import fairboil.analysis.effect.EffectChecks;
import fairboil.analysis.effect.EffectChecks.AllRings;
import fairboil.analysis.effect.EffectChecks.WithoutBuild;
import fairboil.analysis.effect.EffectChecks.WithoutRun;
import fairboil.analysis.effect.EffectRow;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.model.SlopePermutation;
import fairboil.analysis.model.SlopePermutation.Method;
import fairboil.analysis.model.TheilSen;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.sheet.Settings;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What is said of a hole effect asked in other ways. */
public final class CheckWords {

  private final Display display;

  private CheckWords(Display display) {
    this.display = display;
  }

  /** Words for the checks of a study, in its units. */
  public static CheckWords of(Results results) {
    return new CheckWords(Display.in(results.study().settings().get(Settings.SHOW_UNITS)));
  }

  /** What the checks found, in sentences; none for checks that could not be made. */
  public List<String> sentences(EffectChecks checks) {
    List<String> sentences = new ArrayList<>();
    withoutEach(checks, sentences);
    checks.theilSen().ifPresent(fit -> sentences.add(median(fit, checks)));
    checks.permutation().ifPresent(deals -> sentences.add(deals(deals, checks)));
    checks.hardestRun().ifPresent(run -> sentences.add(without(run, checks)));
    checks.curvature().ifPresent(bend -> sentences.add(bend(bend, checks)));
    checks
        .readingTakenOut()
        .ifPresent(
            row ->
                sentences.add(
                    "With the error of reading holes taken out of each RMS, and what is left of it undone"
                        + " by simulation: "
                        + slope(row, checks)
                        + "."));
    checks.allRings().ifPresent(all -> sentences.add(beside(all, checks)));
    checks
        .withExcluded()
        .ifPresent(
            row -> sentences.add("With the runs that were left out: " + slope(row, checks) + "."));
    together(checks, sentences);
    checks.smallestSlope().ifPresent(least -> sentences.add(findable(least, checks)));
    return List.copyOf(sentences);
  }

  private void withoutEach(EffectChecks checks, List<String> sentences) {
    Comparator<WithoutBuild> bySlope = Comparator.comparingDouble(WithoutBuild::slope);
    List<WithoutBuild> sorted = checks.withoutEachBuild().stream().sorted(bySlope).toList();
    if (sorted.size() > 1) {
      WithoutBuild least = sorted.get(0);
      WithoutBuild most = sorted.get(sorted.size() - 1);
      Interval range = new Interval(least.slope(), most.slope());
      sentences.add(
          "Leaving out one build at a time, the slope lies between "
              + number(least.slope(), range, checks)
              + " (without "
              + Names.inSentence(least.build().name())
              + ") and "
              + number(most.slope(), range, checks)
              + unit(checks)
              + " (without "
              + Names.inSentence(most.build().name())
              + ").");
      sentences.add(
          hardest(
              checks.withoutEachBuild().stream()
                  .max(Comparator.comparingDouble(WithoutBuild::cook))
                  .orElseThrow()));
    }
  }

  private static String hardest(WithoutBuild build) {
    String name = Names.inSentence(build.build().name());
    return Double.isInfinite(build.cook())
        ? "The line hangs on " + name + " alone."
        : "The build that pulls hardest on the line is "
            + name
            + " (Cook's distance "
            + twoDecimals(build.cook())
            + (build.cook() > 1 ? ": too hard for comfort)." : ").");
  }

  private String without(WithoutRun run, EffectChecks checks) {
    return "The run that pulls hardest is "
        + Names.inSentence(run.run().name())
        + ": without it the slope would be "
        + number(run.slope(), run.interval(), checks)
        + unit(checks)
        + " ("
        + Display.percent(checks.confidence())
        + " interval "
        + display.range(run.interval(), run.interval().width() / 12, dimension(checks))
        + ").";
  }

  /** A share that few builds cannot bring low enough says nothing. */
  private static String deals(SlopePermutation deals, EffectChecks checks) {
    String found =
        "Dealing the hole errors out anew among the builds of each design gives a slope as steep in "
            + share(deals.pValue())
            + " of all deals ("
            + checks.exactness().label()
            + (deals.method() == Method.ALL
                ? "; with these builds"
                : "; with " + Display.whole(Math.round(1 / deals.floor())) + " deals tried")
            + " it cannot be less than "
            + leastShare(deals.floor())
            + ")";
    return deals.floor() > 1 - checks.confidence()
        ? found + ": too few builds for this to settle anything."
        : found + ".";
  }

  private static String bend(EffectRow bend, EffectChecks checks) {
    if (bend.interval().contains(0)) {
      return "Whether the line bends is not settled: a straight one is not contradicted.";
    }
    return "As holes get worse, the means of the builds bend "
        + (bend.estimate() > 0 ? "upwards" : "downwards")
        + " from the line. Where the truth is straight, chance makes such a bend in "
        + Display.percent(1 - checks.confidence())
        + " of studies: a question for the next tests. If it is real, the line is only an average.";
  }

  private String beside(AllRings all, EffectChecks checks) {
    return "Beside the other rings in one line: "
        + slope(all.row(), checks)
        + "; what the rings have in common makes the variance of this slope "
        + twoDecimals(all.inflation())
        + " times as large (variance inflation factor).";
  }

  private String median(TheilSen fit, EffectChecks checks) {
    return "The median of the slopes between pairs of builds, which no single build can drag, is "
        + number(fit.slope(), fit.interval().orElse(new Interval(0, 0)), checks)
        + unit(checks)
        + fit.interval()
            .map(
                interval ->
                    " ("
                        + Display.percent(fit.confidence())
                        + " interval "
                        + display.range(interval, interval.width() / 12, dimension(checks))
                        + ")")
            .orElse("")
        + ".";
  }

  private String slope(EffectRow row, EffectChecks checks) {
    return Slopes.number(display, row, dimension(checks))
        + unit(checks)
        + " ("
        + Display.percent(checks.confidence())
        + " interval "
        + Slopes.range(display, row, dimension(checks))
        + ")";
  }

  private static void together(EffectChecks checks, List<String> sentences) {
    checks
        .ambientCorrelation()
        .ifPresent(
            air ->
                sentences.add(
                    "Hole error and the air temperature of a build's burns have a correlation of "
                        + twoDecimals(air)
                        + (checks.wentWithAmbient() ? ": they cannot be told apart well." : ".")));
    if (checks.wentWithOpenArea()) {
      sentences.add(
          "Hole error and the error of the open area have a correlation of "
              + twoDecimals(checks.areaCorrelation().orElseThrow())
              + ": they cannot be separated.");
    }
  }

  private String findable(double least, EffectChecks checks) {
    Interval size = new Interval(0, Math.abs(least));
    return "A study like this one would find a slope of "
        + number(Math.abs(least), size, checks)
        + unit(checks)
        + ", up or down, in 4 cases of 5; a smaller one more rarely.";
  }

  private String number(double held, Interval about, EffectChecks checks) {
    return display.number(held, about.width() / 12, dimension(checks));
  }

  private String unit(EffectChecks checks) {
    return "\u00a0" + display.symbol(dimension(checks));
  }

  private static Dimension dimension(EffectChecks checks) {
    return checks.response().dimension().perLength();
  }

  private static String share(double share) {
    return share < 0.001 ? "fewer than 0.1\u00a0%" : Display.percent(share);
  }

  /** Rounded down where {@link #share} has no number: no share may lie under the least. */
  static String leastShare(double share) {
    return share < 0.001
        ? BigDecimal.valueOf(100 * share)
                .round(new MathContext(1, RoundingMode.DOWN))
                .toPlainString()
            + "\u00a0%"
        : Display.percent(share);
  }

  /** A correlation as people read it. */
  static String twoDecimals(double correlation) {
    long hundredths = Math.round(Math.abs(correlation) * 100);
    return (correlation < 0 ? "\u2212" : "")
        + hundredths / 100
        + "."
        + (hundredths % 100 < 10 ? "0" : "")
        + hundredths % 100;
  }
}
