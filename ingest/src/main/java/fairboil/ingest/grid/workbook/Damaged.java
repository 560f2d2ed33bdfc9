package fairboil.ingest.grid.workbook;

import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.grid.UnreadableException;

/** What is said of workbooks that cannot be read. */
final class Damaged {

  /** What is said of a workbook of an old kind. */
  static final Template OLD_KIND =
      Template.of("this is a workbook of the old kind (.xls), which is not read");

  /** What is said of a workbook in the Open Document format. */
  static final Template OPEN_DOCUMENT =
      Template.of("this is an OpenDocument workbook (.ods), which is not read");

  /** What is said of a binary workbook. */
  static final Template BINARY =
      Template.of("this is a binary workbook (.xlsb), which is not read");

  private static final Template SAVE_ANEW =
      Template.of("save it as an Excel workbook (.xlsx), or save each of its sheets as CSV");
  private static final Template SAVE_AGAIN =
      Template.of(
          "open it in a spreadsheet program and save it again as an Excel workbook (.xlsx)");
  private static final Template DAMAGED =
      Template.of("this workbook is damaged, or of a kind that is not read");
  private static final Template ENDED =
      Template.of("reading ended here: the workbook is damaged, or of a kind that is not read");
  private static final Template NO_WORKBOOK =
      Template.of("whatever its name says, this is not an Excel workbook");

  private Damaged() {}

  static UnreadableException workbook(Place place) {
    return new UnreadableException(place, DAMAGED.with(), SAVE_AGAIN.with());
  }

  static UnreadableException tab(Place place) {
    return new UnreadableException(place, ENDED.with(), SAVE_AGAIN.with());
  }

  static UnreadableException noWorkbook(Place place) {
    return new UnreadableException(place, NO_WORKBOOK.with(), SAVE_AGAIN.with());
  }

  static UnreadableException otherKind(Place place, Template kind) {
    return new UnreadableException(place, kind.with(), SAVE_ANEW.with());
  }
}
