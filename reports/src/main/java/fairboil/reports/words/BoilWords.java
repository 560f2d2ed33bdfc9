package fairboil.reports.words;

import fairboil.analysis.group.BoilCount;

/** In how many runs the water boiled, and of how many that was not seen: said alike everywhere. */
public final class BoilWords {

  private BoilWords() {}

  /**
   * Such as {@code 5 of 8}, {@code 5 of 6, 2 not seen} or {@code not seen in any of 4}.
   *
   * @param boils of some runs
   */
  public static String of(BoilCount boils) {
    if (boils.judged() == 0) {
      return boils.unseen() == 0 ? "no run" : "not seen in any of " + boils.unseen();
    }
    return boils.boiled()
        + " of "
        + boils.judged()
        + (boils.unseen() == 0 ? "" : ", " + boils.unseen() + " not seen");
  }

  /** A clause such as {@code the water boiled in 5 of 6 runs, and in 2 more it was not seen}. */
  public static String clause(BoilCount boils) {
    if (boils.judged() == 0) {
      return boils.unseen() == 0
          ? "no run counts for its boil"
          : "whether the water boiled was not seen in any run";
    }
    String boiled =
        "the water boiled in "
            + (boils.boiled() == 0 ? "none of " : boils.boiled() + " of ")
            + Plural.of(boils.judged(), "run");
    return boils.unseen() == 0
        ? boiled
        : boiled + ", and in " + boils.unseen() + " more it was not seen";
  }
}
