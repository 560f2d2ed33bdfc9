package fairboil.ingest.log;

/** What the parts of a time mean where their number does not say it: {@code 14:05}. */
enum ClockStyle {
  /** {@code h:mm}. */
  HOURS_FIRST,
  /** {@code m:ss}. */
  MINUTES_FIRST,
  /** {@code m:ss:mmm}, with milliseconds after a second colon. */
  MILLISECONDS_LAST
}
