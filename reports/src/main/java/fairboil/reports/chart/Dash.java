package fairboil.reports.chart;

/** How lines are broken. */
public enum Dash {
  /** Unbroken. */
  SOLID,
  /** Long dashes. */
  DASHED,
  /** Dots. */
  DOTTED
}
