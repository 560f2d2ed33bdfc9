package fairboil.reports.words;

import fairboil.analysis.effect.BuildPoint;
import fairboil.analysis.effect.EffectRow;
import fairboil.analysis.effect.HoleEffect;
import fairboil.ingest.dimension.Dimension;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What is said of charts of hole effects. */
public final class EffectCaptions {

  private static final int ENOUGH_BUILDS = 4;

  private final Display display;
  private final double confidence;

  private EffectCaptions(Display display, double confidence) {
    this.display = display;
    this.confidence = confidence;
  }

  /** Captions with numbers as {@code display} shows them and intervals at that confidence. */
  public static EffectCaptions in(Display display, double confidence) {
    return new EffectCaptions(display, confidence);
  }

  /** Of a response against hole error. */
  public Caption holeEffect(HoleEffect effect) {
    String response = effect.response().label();
    String counts = BuildCaptions.counts(effect.points().size(), burns(effect));
    String answer = answer(effect);
    String marks =
        effect.band().isEmpty()
            ? " Large marks are builds, small ones their burns."
            : " Large marks are builds, small ones their burns; the line is fitted to the builds,"
                + " its band is the "
                + Display.percent(confidence)
                + " interval of the line.";
    return new Caption(
        Plural.sentence(response) + " against hole error, ring " + Names.inSentence(effect.ring()),
        effect.headline().isPresent() ? counts + ": " + answer : Plural.sentence(answer),
        Plural.sentence(counts) + ". " + sentence(answer) + marks + moved(effect),
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

  private static String moved(HoleEffect effect) {
    return EffectWords.isMovedByAir(effect)
        ? " All are moved to the reference air temperature by what the air did within builds, so"
            + " they differ from the plain means in other tables."
        : "";
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
    return Plural.of(builds, "build")
        + ": no line through "
        + Plural.of(builds, "point")
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
    EffectResiduals residuals = EffectResiduals.of(effect);
    String response = effect.response().label();
    Comparator<BuildPoint> bySize =
        Comparator.comparingDouble(point -> Math.abs(residuals.ofMean(point)));
    BuildPoint farthest = effect.points().stream().max(bySize).orElseThrow();
    double off = residuals.ofMean(farthest);
    long above = effect.points().stream().filter(point -> residuals.ofMean(point) > 0).count();
    String counts = Plural.sentence(BuildCaptions.counts(effect.points().size(), burns(effect)));
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
        Plural.sentence(response)
            + " beside the fitted line, ring "
            + Names.inSentence(effect.ring()),
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

  private static String sentence(String clause) {
    return Plural.sentence(clause) + ".";
  }
}
