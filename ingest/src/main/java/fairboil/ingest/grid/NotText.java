package fairboil.ingest.grid;

import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;

/** Refuses files that are not text, by their first bytes. */
final class NotText {

  private static final Template WORKBOOK = Template.of("this is a spreadsheet workbook, not CSV");
  private static final Template SAVE_AS_CSV = Template.of("save the sheet as CSV");
  private static final Template NO_TEXT = Template.of("this is not a text file");
  private static final Template EXPORT_AS_CSV =
      Template.of("export the table as CSV and give that file");

  private NotText() {}

  /** Throws if the first bytes are those of a workbook, a picture or other machine data. */
  static void refuse(Place place, byte[] head, int length, Encoding encoding)
      throws UnreadableException {
    if (isWorkbook(head, length)) {
      throw new UnreadableException(place, WORKBOOK.with(), SAVE_AS_CSV.with());
    }
    if (encoding == Encoding.UTF_8 && isMachineData(head, length)) {
      throw new UnreadableException(place, NO_TEXT.with(), EXPORT_AS_CSV.with());
    }
  }

  // Zip, as new workbooks are, and the compound file of old ones.
  private static boolean isWorkbook(byte[] head, int length) {
    return Encoding.startsWith(head, length, 'P', 'K', 3, 4)
        || Encoding.startsWith(head, length, 'P', 'K', 5, 6)
        || Encoding.startsWith(head, length, 0xD0, 0xCF, 0x11, 0xE0);
  }

  // Loggers that lose power leave blocks of 00 or FF behind: these alone do not count.
  private static boolean isMachineData(byte[] head, int length) {
    int controls = 0;
    int others = 0;
    for (int i = 0; i < length; i++) {
      if (isControl(head[i])) {
        controls++;
      } else if (head[i] != 0 && head[i] != (byte) 0xFF) {
        others++;
      }
    }
    return (length > 0 && controls * 20 >= others) || isKnownFormat(head, length);
  }

  private static boolean isKnownFormat(byte[] head, int length) {
    return Encoding.startsWith(head, length, '%', 'P', 'D', 'F', '-')
        || Encoding.startsWith(head, length, 0xFF, 0xD8, 0xFF)
        || Encoding.startsWith(head, length, 0x89, 'P', 'N', 'G')
        || Encoding.startsWith(head, length, 0x1F, 0x8B);
  }

  private static boolean isControl(byte b) {
    return b > 0 && b < ' ' && b != '\t' && b != '\n' && b != '\r' && b != '\f';
  }
}
