package fairboil.reports.chart;

/** In what inks a chart is drawn. */
public enum Tint {
  /** In colours. */
  COLOUR,
  /**
   * In greys. Each colour has a grey of its own, because some colours that are unlike to the eye
   * are alike to a printer without colours.
   */
  GREY
}
