package fairboil.reports.chart;

/** Draws sheets. Safe for use by several threads at once. */
@FunctionalInterface
public interface Painter {

  /** The sheet as a PNG; equal sheets give equal bytes. */
  byte[] png(Sheet sheet);
}
