package fairboil.reports.print;

/** Draws everything that there is to print for a study. */
public final class Prints {

  private Prints() {}
}
