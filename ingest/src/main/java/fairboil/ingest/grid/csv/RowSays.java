package fairboil.ingest.grid.csv;

import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;

/** What is said of rows that cannot be read. */
public final class RowSays {

  /** Of a row with too many cells. */
  public static final Message TOO_MANY_CELLS =
      Template.of("this row has more than 1,000 cells, the most that are read").with();

  /** What to do about too many cells. */
  public static final Message LEAVE_SOME_OUT = Template.of("leave some out").with();

  /** Of a cell with too long a text. */
  public static final Message CELL_TOO_LONG =
      Template.of("a cell of this row is longer than 64 KiB, the most that is read").with();

  /** What to do about too long a text. */
  public static final Message SHORTEN = Template.of("shorten it").with();

  static final Message UNCLOSED =
      Template.of("a quotation mark is opened on this line and never closed").with();
  static final Message GOES_ON =
      Template.of("a cell of this line goes on after its closing quotation mark").with();
  static final Template ENDED =
      Template.of("{clause}, as on {count|line} before it, so reading ended here");
  static final Message SAVE_AS_CSV =
      Template.of(
              "save the sheet as CSV with a spreadsheet program, which sets the quotation marks")
          .with();
  static final Template LINE_ASIDE = Template.of("{clause}, so the line was set aside");
  static final Message QUOTE_CELL =
      Template.of("put the whole cell in quotation marks, and write each one inside it twice")
          .with();

  private RowSays() {}
}
