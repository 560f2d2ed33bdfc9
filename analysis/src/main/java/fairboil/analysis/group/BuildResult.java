package fairboil.analysis.group;

import fairboil.analysis.measure.Measure;
import fairboil.analysis.measure.WithoutBoil;
import fairboil.ingest.sheet.Build;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * The runs of one build together.
 *
 * @param build the build
 * @param runs how many runs are included
 * @param boils in how many of those that count for their boil the water boiled
 * @param summaries each measure of which at least one run has a figure that counts; unmodifiable. A
 *     measure is summarised only where no failure to boil hides a part of it
 */
public record BuildResult(Build build, int runs, BoilCount boils, Map<Measure, Summary> summaries) {

  /** Copies the summaries. */
  public BuildResult {
    summaries =
        summaries.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(summaries));
  }

  /** Whether there is no mean of the measure, and some run failed that cannot have it. */
  public boolean lacksForFailures(Measure measure) {
    return boils.failed() > 0
        && measure.withoutBoil() != WithoutBoil.HAS_A_VALUE
        && !summaries.containsKey(measure);
  }

  /** The summary of a measure of which a run has a figure that counts. */
  public Summary summary(Measure measure) {
    return Objects.requireNonNull(summaries.get(measure));
  }
}
