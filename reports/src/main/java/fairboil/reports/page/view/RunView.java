package fairboil.reports.page.view;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One run.
 *
 * @param id its name in the page, unique
 * @param name its name
 * @param build the build that was burnt, with its design
 * @param outcome how it ended
 * @param leftOut why it or part of it is left out; empty if it counts
 * @param figure its trace
 * @param groups its figures, by what they are about
 * @param unknown the figures that are not known, by reason
 * @param notes what the tester noted; empty for nothing
 * @param findings what a reader should know of it
 * @param sheet its row as written
 */
public record RunView(
    String id,
    String name,
    String build,
    CellView outcome,
    String leftOut,
    Optional<FigureView> figure,
    List<Group> groups,
    List<FactView> unknown,
    String notes,
    List<FindingView> findings,
    List<FactView> sheet) {

  private static final int BESIDE = 2;

  /** The groups in two parts: those beside the chart, and those below it; neither is empty. */
  public List<List<Group>> parts() {
    int beside = Math.min(BESIDE, groups.size());
    return Stream.of(groups.subList(0, beside), groups.subList(beside, groups.size()))
        .filter(part -> !part.isEmpty())
        .toList();
  }

  /**
   * Figures that belong together.
   *
   * @param title what they are about
   * @param facts the figures
   */
  public record Group(String title, List<FactView> facts) {}
}
