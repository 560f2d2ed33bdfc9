package fairboil.reports.words;

import fairboil.analysis.effect.BuildPoint;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.effect.HoleEffect.BandPoint;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.DoubleStream;

/** Distances from the fitted line of a hole effect, held as differences of its response. */
public final class EffectResiduals {

  private final BandPoint from;
  private final BandPoint to;

  private EffectResiduals(BandPoint from, BandPoint to) {
    this.from = from;
    this.to = to;
  }

  /** Distances from the line of an effect that has one. */
  public static EffectResiduals of(HoleEffect effect) {
    Comparator<BandPoint> along = Comparator.comparingDouble(BandPoint::holeError);
    return new EffectResiduals(
        effect.band().stream().min(along).orElseThrow(),
        effect.band().stream().max(along).orElseThrow());
  }

  private double line(double holeError) {
    double share = (holeError - from.holeError()) / (to.holeError() - from.holeError());
    return from.fitted() + share * (to.fitted() - from.fitted());
  }

  /** How far the mean of a build lies above the line; below it negative. */
  public double ofMean(BuildPoint build) {
    return build.mean() - line(build.holeError());
  }

  /** How far each burn of a build lies above the line. */
  public DoubleStream ofBurns(BuildPoint build) {
    return Arrays.stream(build.burns()).map(burn -> burn - line(build.holeError()));
  }
}
