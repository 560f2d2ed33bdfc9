package fairboil.reports.cli;

/** How the program ended, as the shell sees it. */
enum ExitStatus {
  /** All done. */
  DONE(0),
  /** Done, but findings of severity error left something out. */
  LEFT_OUT(1),
  /** The command was used wrongly. */
  USAGE(2),
  /** The study cannot be read. */
  STUDY_UNREADABLE(3),
  /** The report could not be written, or memory ran out. */
  NOT_WRITTEN(4),
  /** Done, but a fault of the program cost a part, which is named. */
  PART_LOST(5);

  private final int code;

  ExitStatus(int code) {
    this.code = code;
  }

  int code() {
    return code;
  }
}
