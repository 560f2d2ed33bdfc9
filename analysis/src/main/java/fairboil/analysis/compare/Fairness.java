package fairboil.analysis.compare;

import fairboil.analysis.group.BoilCount;
import fairboil.ingest.dimension.Dimension;
import java.time.LocalDate;
import java.util.List;

/**
 * Whether a comparison is a fair one: under what conditions each thing was burnt, and what cannot
 * be told apart.
 *
 * @param groups one for each thing that is compared, by level; unmodifiable
 * @param inseparable pairs of things that differ in something else in every run; unmodifiable
 * @param tied conditions in which no two of several things had anything in common; unmodifiable
 */
public record Fairness(List<Group> groups, List<Inseparable> inseparable, List<Tied> tied) {

  /** Nothing to compare. */
  public static final Fairness NONE = new Fairness(List.of(), List.of(), List.of());

  /** Copies the lists. */
  public Fairness {
    groups = List.copyOf(groups);
    inseparable = List.copyOf(inseparable);
    tied = List.copyOf(tied);
  }

  /**
   * One thing that is compared.
   *
   * @param level {@code build}, {@code design} or the name of a column
   * @param name the thing
   * @param runs how many runs of it count
   * @param boils in how many of them the water boiled, did not, or was not seen
   * @param conditions the conditions of its runs, as far as they were noted; unmodifiable
   */
  public record Group(
      String level, String name, int runs, BoilCount boils, List<Condition> conditions) {

    /** Copies the list. */
    public Group {
      conditions = List.copyOf(conditions);
    }
  }

  /** The values of one condition over the runs of a group. */
  public sealed interface Condition {

    /** The name of the condition, as its column is called. */
    String column();

    /** Of how many runs it is known. */
    int known();

    /** Whether no value of this one is a value of the other. */
    boolean isApartFrom(Condition other);

    /**
     * A quantity or a number.
     *
     * @param column its name
     * @param known of how many runs it is known
     * @param dimension what it is a quantity of; a ratio for bare numbers
     * @param low the least
     * @param high the most
     */
    record Range(String column, int known, Dimension dimension, double low, double high)
        implements Condition {

      @Override
      public boolean isApartFrom(Condition other) {
        return other instanceof Range range && (high < range.low || range.high < low);
      }
    }

    /**
     * Days.
     *
     * @param column its name
     * @param known of how many runs it is known
     * @param first the first day
     * @param last the last day
     */
    record Days(String column, int known, LocalDate first, LocalDate last) implements Condition {

      @Override
      public boolean isApartFrom(Condition other) {
        return other instanceof Days days
            && (last.isBefore(days.first) || days.last.isBefore(first));
      }
    }

    /**
     * Things in words.
     *
     * @param column its name
     * @param known of how many runs it is known
     * @param kinds what was noted, each once, in alphabetical order; unmodifiable
     */
    record Kinds(String column, int known, List<String> kinds) implements Condition {

      /** Copies the list. */
      public Kinds {
        kinds = List.copyOf(kinds);
      }

      @Override
      public boolean isApartFrom(Condition other) {
        return other instanceof Kinds more && kinds.stream().noneMatch(more.kinds::contains);
      }
    }
  }

  /**
   * Two things that cannot be told from a difference in a condition: every run of the one was burnt
   * otherwise than every run of the other.
   *
   * @param level what is compared
   * @param a the first
   * @param b the second
   * @param ofA the condition of the first
   * @param ofB the condition of the second
   */
  public record Inseparable(String level, String a, String b, Condition ofA, Condition ofB) {}

  /**
   * A condition that changed wherever the thing compared did: no two of more than two things had a
   * value of it in common.
   *
   * @param level what is compared
   * @param column the name of the condition
   */
  public record Tied(String level, String column) {}
}
