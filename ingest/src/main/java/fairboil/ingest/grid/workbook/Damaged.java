package fairboil.ingest.grid.workbook;

import fairboil.ingest.finding.Place;
import fairboil.ingest.grid.UnreadableException;

/** What is said of workbooks that cannot be read. */
final class Damaged {

  private static final String SAVE_AGAIN =
      "open it in a spreadsheet program and save it again as an Excel workbook (.xlsx)";

  private Damaged() {}

  static UnreadableException workbook(Place place) {
    return new UnreadableException(
        place, "this workbook is damaged, or of a kind that is not read", SAVE_AGAIN);
  }

  static UnreadableException tab(Place place) {
    return new UnreadableException(
        place,
        "reading ended here: the workbook is damaged, or of a kind that is not read",
        SAVE_AGAIN);
  }

  static UnreadableException noWorkbook(Place place) {
    return new UnreadableException(
        place, "whatever its name says, this is not an Excel workbook", SAVE_AGAIN);
  }

  static UnreadableException otherKind(Place place, String kind) {
    return new UnreadableException(
        place,
        "this is " + kind + ", which is not read",
        "save it as an Excel workbook (.xlsx), or save each of its sheets as CSV");
  }
}
