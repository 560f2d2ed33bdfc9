package fairboil.ingest.grid;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;

/** The kinds of file in a study, each with the size up to which it is read. */
public enum FileKind {
  /** A sheet as CSV: 64 MB. */
  SHEET("sheet", 64),
  /** The log of a run: 200 MB. */
  LOG("log", 200),
  /** A workbook, packed as it is on disk: 64 MB. */
  WORKBOOK("workbook", 64);

  private static final long MEGABYTE = 1_000_000;

  private static final Template TOO_LARGE =
      Template.of("this {word} is larger than {number} MB, the most that is read");

  private final String label;
  private final int megabytes;

  FileKind(String label, int megabytes) {
    this.label = label;
    this.megabytes = megabytes;
  }

  /** What people call it. */
  public String label() {
    return label;
  }

  /** The most bytes that are read of one. */
  public long limit() {
    return megabytes * MEGABYTE;
  }

  Message tooLarge() {
    return TOO_LARGE.with(Argument.word(label), Argument.number(megabytes, 0));
  }
}
