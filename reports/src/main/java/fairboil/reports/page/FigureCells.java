package fairboil.reports.page;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.group.Summary;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Message;
import fairboil.reports.page.view.CellView;
import fairboil.reports.page.view.ColumnView;
import fairboil.reports.page.view.FactView;
import fairboil.reports.words.Display;
import java.util.Optional;

/** Figures as cells of tables and as facts. */
final class FigureCells {

  /** How finely places of holes are shown: as if uncertain by 0.15 mm, held in metres. */
  static final double OF_A_HOLE = 1.5e-4;

  private final Display display;
  private final double confidence;

  FigureCells(Display display, double confidence) {
    this.display = display;
    this.confidence = confidence;
  }

  /** A reason why something is not known, in the units shown. */
  String reason(Message reason) {
    return display.say(reason);
  }

  /** A column of values of that dimension, with the unit in its heading. */
  ColumnView column(String label, Dimension dimension) {
    String symbol = display.symbol(dimension);
    return ColumnView.numbers(symbol.isEmpty() ? label : label + ", " + symbol);
  }

  /** A figure without its unit; empty if it is not known. */
  CellView cell(Figure figure) {
    return figure.ifKnown().map(this::cell).orElse(CellView.of(""));
  }

  private CellView cell(Measured measured) {
    return cell(measured.value(), measured.standardUncertainty(), measured.dimension());
  }

  /** A figure without its unit, rounded as if it were uncertain by so much; empty if unknown. */
  CellView cell(Figure figure, double coarseness) {
    return figure
        .ifKnown()
        .map(measured -> cell(measured.value(), coarseness, measured.dimension()))
        .orElse(CellView.of(""));
  }

  /** A held value without its unit, rounded by its uncertainty. */
  CellView cell(double held, double uncertainty, Dimension dimension) {
    return CellView.number(plain(held, uncertainty, dimension), held);
  }

  /** A mean with its interval below it. */
  CellView cell(Summary summary, Dimension dimension) {
    double coarseness = coarseness(summary.interval());
    CellView mean = cell(summary.mean(), coarseness, dimension);
    return summary
        .interval()
        .map(interval -> mean.with(display.range(interval, dimension)))
        .orElse(mean.with(summary.n() == 1 ? "1 run" : "all alike"));
  }

  /** A count. */
  static CellView count(long count) {
    return CellView.number(Display.whole(count), (double) count);
  }

  /** A known figure as a fact, with its interval. */
  FactView fact(String name, Figure.Known known) {
    Measured measured = known.measured();
    String value =
        display.value(measured.value(), measured.standardUncertainty(), measured.dimension());
    String note =
        measured.standardUncertainty() > 0
            ? display.range(
                known.interval(confidence), measured.standardUncertainty(), measured.dimension())
            : "";
    return new FactView(name, value, note);
  }

  /** A quarter of the width of an interval: about its standard uncertainty. */
  static double coarseness(Optional<Interval> interval) {
    return interval.map(Display::uncertainty).orElse(0.0);
  }

  private String plain(double held, double uncertainty, Dimension dimension) {
    return display.scale(dimension).isClock() && Math.abs(held) < 60
        ? display.value(held, uncertainty, dimension)
        : display.number(held, uncertainty, dimension);
  }
}
