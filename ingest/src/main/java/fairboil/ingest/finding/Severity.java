package fairboil.ingest.finding;

/** How much a finding matters to the result, worst first. */
public enum Severity {
  /** Something was left out of the results because of it. */
  ERROR,
  /** Everything was worked out, but a reader should look before trusting it. */
  WARNING,
  /** Something was done that a reader may wish to know of. */
  NOTE;

  /** The word that people see and tables hold: {@code error}, {@code warning} or {@code note}. */
  public String label() {
    return switch (this) {
      case ERROR -> "error";
      case WARNING -> "warning";
      case NOTE -> "note";
    };
  }
}
