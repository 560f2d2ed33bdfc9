package fairboil.reports.chart;

import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.measure.Measure;
import fairboil.ingest.sheet.Key;
import java.util.Objects;
import java.util.Optional;

/**
 * What a chart is of: by it the page finds the chart, and what belongs to it. Where so much is
 * shown that it takes several charts, they share their key.
 *
 * @param kind what is shown
 * @param measure the measure it is shown in, if it is one
 * @param ring the ring it is about, if it is one
 * @param run the run it is about, if it is one
 */
public record ChartKey(
    Picture.Kind kind, Optional<Measure> measure, Optional<String> ring, Optional<Key> run) {

  /** Checks that all parts are there. */
  public ChartKey {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(measure, "measure");
    Objects.requireNonNull(ring, "ring");
    Objects.requireNonNull(run, "run");
  }

  /** A chart of the whole study. */
  public static ChartKey of(Picture.Kind kind) {
    return new ChartKey(kind, Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** A chart of one measure. */
  public static ChartKey of(Picture.Kind kind, Measure measure) {
    return new ChartKey(kind, Optional.of(measure), Optional.empty(), Optional.empty());
  }

  /** A chart of one effect: its response against the hole error of its ring. */
  public static ChartKey of(Picture.Kind kind, HoleEffect effect) {
    return new ChartKey(
        kind, Optional.of(effect.response()), Optional.of(effect.ring()), Optional.empty());
  }

  /** A chart of one ring. */
  public static ChartKey ofRing(Picture.Kind kind, String ring) {
    return new ChartKey(kind, Optional.empty(), Optional.of(ring), Optional.empty());
  }

  /** A chart of one run. */
  public static ChartKey ofRun(Picture.Kind kind, Key run) {
    return new ChartKey(kind, Optional.empty(), Optional.empty(), Optional.of(run));
  }

  // A record's own equality is put together at run time, which takes as long as reading a sheet.

  @Override
  public boolean equals(Object other) {
    return other instanceof ChartKey key
        && kind == key.kind
        && measure.equals(key.measure)
        && ring.equals(key.ring)
        && run.equals(key.run);
  }

  @Override
  public int hashCode() {
    return Objects.hash(kind, measure, ring, run);
  }
}
