package fairboil.reports.chart;

import fairboil.ingest.dimension.Dimension;
import fairboil.reports.chart.Axis.Ticks;
import fairboil.reports.words.Display;

/** Values of one dimension as an axis shows them: durations in minutes, the rest as elsewhere. */
record Shown(Display display, Dimension dimension) {

  private static final double MINUTE = 60;

  double of(double held) {
    return isClock() ? held / MINUTE : display.shown(held, dimension);
  }

  Ticks ticks() {
    return isClock() ? Ticks.CLOCK : Ticks.NUMBERS;
  }

  String title(String what) {
    return what + " (" + display.symbol(dimension) + ")";
  }

  private boolean isClock() {
    return display.scale(dimension).isClock();
  }
}
