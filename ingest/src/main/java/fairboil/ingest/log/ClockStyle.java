package fairboil.ingest.log;

/** What a time of two parts, such as {@code 14:05}, means. */
enum ClockStyle {
  /** {@code h:mm}. */
  HOURS_FIRST,
  /** {@code m:ss}. */
  MINUTES_FIRST
}
