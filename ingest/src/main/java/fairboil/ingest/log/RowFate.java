package fairboil.ingest.log;

/** Why a line of a log is not a reading of the run. */
public enum RowFate {
  /** Empty, or separators only. */
  BLANK,
  /** A comment. */
  COMMENT,
  /** Text before the table. */
  PREAMBLE,
  /** The header, the units under it, or a header repeated. */
  HEADER,
  /** Text after the table. */
  FOOTER,
  /** Too few or too many cells. */
  RAGGED,
  /** A time that could not be read. */
  NO_TIME,
  /** The same line as one before. */
  REPEATED,
  /** Part of the reading begun on a line before it, in a log with a line for each probe. */
  JOINED,
  /** Cut off at the end of the file. */
  CUT_OFF,
  /** Damaged bytes. */
  DAMAGED,
  /** Before {@code log from} or after {@code log to}, or part of another run in the same file. */
  OUTSIDE_RUN
}
