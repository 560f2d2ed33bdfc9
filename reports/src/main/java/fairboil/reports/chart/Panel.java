package fairboil.reports.chart;

import java.util.List;
import java.util.Objects;

/**
 * One pair of axes and what is drawn between them.
 *
 * @param box the part of the sheet it takes, with the figures along its axes
 * @param heading words above its upper left corner, bold; may be empty
 * @param note words after the heading, plain; may be empty
 * @param x the axis along
 * @param y the axis up
 * @param edge how much of the box is left free on all sides, so that the first and last figure of
 *     an axis are not cut off
 * @param lanes how many lines of words for {@link ChartMark.Moment} there is room for above it
 * @param marks what is drawn, the first at the bottom
 */
public record Panel(
    Box box,
    String heading,
    String note,
    Axis x,
    Axis y,
    int edge,
    int lanes,
    List<ChartMark> marks) {

  /** Copies the marks. */
  public Panel {
    Objects.requireNonNull(box, "box");
    Objects.requireNonNull(heading, "heading");
    Objects.requireNonNull(note, "note");
    Objects.requireNonNull(x, "x");
    Objects.requireNonNull(y, "y");
    marks = List.copyOf(marks);
  }

  /** The same panel with other marks. */
  Panel with(List<ChartMark> others) {
    return new Panel(box, heading, note, x, y, edge, lanes, others);
  }
}
