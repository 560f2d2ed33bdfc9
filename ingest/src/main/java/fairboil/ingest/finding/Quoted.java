package fairboil.ingest.finding;

/** Text as it was written, in quotation marks. */
public final class Quoted {

  private static final int LONGEST = 60;

  private Quoted() {}

  /** The text in quotation marks, on one line, cut where it is long. */
  public static String text(String written) {
    String shown = written.length() > LONGEST ? written.substring(0, LONGEST - 3) + "..." : written;
    return "\u201c" + shown.replaceAll("[\\r\\n]+", " ") + "\u201d";
  }
}
