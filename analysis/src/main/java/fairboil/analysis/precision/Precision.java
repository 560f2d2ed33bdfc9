package fairboil.analysis.precision;

import java.util.List;

/**
 * Whether, and how, several sites or testers repeated the burns, and what each found.
 *
 * @param repeated who repeated them
 * @param layout which stoves they burnt
 * @param names the sites or testers, in the order of the study; unmodifiable
 * @param rounds for each measure and stove that went round, the sites side by side; unmodifiable
 */
public record Precision(Repeated repeated, Layout layout, List<String> names, List<Round> rounds) {

  /** Nobody repeated anything. */
  public static final Precision NONE =
      new Precision(Repeated.BY_NOBODY, Layout.NOT_REPEATED, List.of(), List.of());

  /** Copies the lists. */
  public Precision {
    names = List.copyOf(names);
    rounds = List.copyOf(rounds);
  }

  /** Which stoves the sites or testers burnt. */
  public enum Layout {
    /** There is but one site and tester, or not every run tells its own. */
    NOT_REPEATED,
    /** At least one stove went round: the precision of the method can be told. */
    SAME_STOVE,
    /** Each has stoves of its own, several of a design that others have too. */
    SEVERAL_OWN_STOVES,
    /** Each burnt one stove of its own: site and stove cannot be told apart. */
    ONE_OWN_STOVE_EACH,
    /** Each has designs of its own: site and design cannot be told apart. */
    OWN_DESIGNS
  }
}
