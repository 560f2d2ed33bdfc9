package fairboil.ingest.choice;

/** One of a fixed set of answers that a cell may hold. */
public interface Choice {

  /** The answer as people write it in a sheet and read it on the page. */
  String label();
}
