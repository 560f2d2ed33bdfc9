package fairboil.reports.words;

import fairboil.analysis.Results;
import fairboil.analysis.measure.Measure;
import java.util.List;
import java.util.stream.Stream;

/** The measures that are told in sentences; the tables hold all. */
final class Headlines {

  private Headlines() {}

  /** Boil time and peak: restated if any build has them so, else as they were. */
  static List<Measure> of(Results results) {
    return Stream.of(
            either(results, Measure.NORMALISED_BOIL_TIME, Measure.BOIL_TIME),
            either(results, Measure.NORMALISED_PEAK, Measure.PEAK))
        .toList();
  }

  private static Measure either(Results results, Measure restated, Measure plain) {
    return results.builds().stream().anyMatch(build -> build.summaries().containsKey(restated))
        ? restated
        : plain;
  }
}
