package fairboil.reports.chart;

import java.util.List;

/** Draws sheets. Safe for use by several threads at once. */
@FunctionalInterface
public interface Painter {

  /** The sheet as a PNG; equal sheets give equal bytes. */
  byte[] png(Sheet sheet);

  /** The same, with the places of its tips; a painter that does not know them gives none. */
  default Painted painted(Sheet sheet) {
    return new Painted(png(sheet), List.of());
  }
}
