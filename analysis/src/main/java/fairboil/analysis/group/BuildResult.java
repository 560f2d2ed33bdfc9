package fairboil.analysis.group;

import fairboil.analysis.measure.Measure;
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
 * @param boiled in how many of them the water boiled
 * @param summaries each measure of which at least one run has a figure that counts; unmodifiable. A
 *     boil time is summarised only where every included run boiled
 */
public record BuildResult(Build build, int runs, int boiled, Map<Measure, Summary> summaries) {

  /** Copies the summaries. */
  public BuildResult {
    summaries =
        summaries.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(summaries));
  }

  /** The summary of a measure of which a run has a figure that counts. */
  public Summary summary(Measure measure) {
    return Objects.requireNonNull(summaries.get(measure));
  }
}
