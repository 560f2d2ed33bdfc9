package fairboil.reports.chart;

/** Draws sheets for print. Safe for use by several threads at once; same sheet, same bytes. */
public interface Press {

  /**
   * The sheet as a PNG that is as wide as the format says and tells its resolution.
   *
   * @param format a format for print
   */
  byte[] png(Sheet sheet, Format format, Tint tint);

  /**
   * The sheet as a PDF of one page of that width: lines, curves and outlines of letters only, so
   * that it needs no font and can be enlarged at will.
   *
   * @param format a format for print
   * @param title what the file says it is
   */
  byte[] pdf(Sheet sheet, Format format, String title);
}
