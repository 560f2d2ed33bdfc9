package fairboil.reports.page;

import fairboil.analysis.Results;
import fairboil.analysis.run.RunResult;
import fairboil.reports.chart.ChartBook;
import fairboil.reports.chart.Picture;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a page is made from.
 *
 * @param results everything worked out
 * @param charts the charts of the study, in the order in which they are to stand; unmodifiable
 * @param trace gives the chart of a run, if it has one: asked once a run, in the order of the
 *     study; not asked at all where runs have pages of their own
 * @param version the version of the program
 */
public record PageModel(
    Results results,
    List<Picture> charts,
    Function<RunResult, Optional<Picture>> trace,
    String version) {

  /** As many runs as a page holds; with more, each has a page of its own beside it. */
  public static final int MOST_RUNS_IN_PAGE = ChartBook.MOST_RUNS_IN_PAGE;

  /** Copies the list and checks that all parts are there. */
  public PageModel {
    Objects.requireNonNull(results, "results");
    Objects.requireNonNull(trace, "trace");
    Objects.requireNonNull(version, "version");
    charts = List.copyOf(charts);
  }

  /** Whether each run has a page of its own, to be written with {@link Page#writeRun}. */
  public boolean runsStandBeside() {
    return results.runs().size() > MOST_RUNS_IN_PAGE;
  }
}
