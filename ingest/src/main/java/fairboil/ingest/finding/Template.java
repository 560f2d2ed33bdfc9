package fairboil.ingest.finding;

import java.util.ArrayList;
import java.util.List;

/**
 * The wording of a message, with a place for each of its arguments. Templates are constants beside
 * the logic that knows what is to be said, so that messages can be compared, grouped and counted
 * without reading prose.
 *
 * <p>An argument's place is its kind in braces: {@code {name}}, {@code {cell}}, {@code {value}};
 * see {@link ArgumentKind}. A count may carry its noun, {@code {count|row}} or {@code
 * {count|batch|batches}}; where no plural is given it adds an s.
 */
public final class Template {

  /** A piece of a wording. */
  sealed interface Part {

    /** Words that stand as they are. */
    record Text(String text) implements Part {}

    /**
     * A place for an argument.
     *
     * @param kind what may stand here
     * @param one the noun of a count of 1; empty where a count has none
     * @param many the noun of other counts
     */
    record Slot(ArgumentKind kind, String one, String many) implements Part {

      /** The noun that follows a count, with a blank before it; empty for all else. */
      String noun(Argument argument) {
        boolean isOne = argument instanceof Argument.Count count && count.high() == 1;
        String noun = isOne ? one : many;
        return noun.isEmpty() ? "" : " " + noun;
      }
    }
  }

  private final String pattern;
  private final List<Part> parts;

  private Template(String pattern, List<Part> parts) {
    this.pattern = pattern;
    this.parts = parts;
  }

  /**
   * The template of a wording.
   *
   * @param pattern a clause without a full stop at its end
   * @throws IllegalArgumentException if a brace is left open or names no kind
   */
  public static Template of(String pattern) {
    List<Part> parts = new ArrayList<>();
    int from = 0;
    for (int open = pattern.indexOf('{'); open >= 0; open = pattern.indexOf('{', from)) {
      int close = pattern.indexOf('}', open);
      if (close < 0) {
        throw new IllegalArgumentException("an open brace: " + pattern);
      }
      if (open > from) {
        parts.add(new Part.Text(pattern.substring(from, open)));
      }
      parts.add(slot(pattern.substring(open + 1, close)));
      from = close + 1;
    }
    if (from < pattern.length()) {
      parts.add(new Part.Text(pattern.substring(from)));
    }
    return new Template(pattern, List.copyOf(parts));
  }

  private static Part slot(String inside) {
    int bar = inside.indexOf('|');
    if (bar < 0) {
      return new Part.Slot(ArgumentKind.named(inside), "", "");
    }
    String nouns = inside.substring(bar + 1);
    int second = nouns.indexOf('|');
    String one = second < 0 ? nouns : nouns.substring(0, second);
    String many = second < 0 ? one + "s" : nouns.substring(second + 1);
    return new Part.Slot(ArgumentKind.named(inside.substring(0, bar)), one, many);
  }

  /**
   * The message of this wording.
   *
   * @throws IllegalArgumentException if the arguments are not those that the wording has places for
   */
  public Message with(Argument... arguments) {
    return new Message(this, List.of(arguments));
  }

  /** The wording, its places in braces. */
  public String pattern() {
    return pattern;
  }

  /** The kinds of the arguments that it takes, in order. */
  public List<ArgumentKind> kinds() {
    List<ArgumentKind> kinds = new ArrayList<>();
    for (Part part : parts) {
      if (part instanceof Part.Slot slot) {
        kinds.add(slot.kind());
      }
    }
    return kinds;
  }

  /** The wording taken apart. */
  List<Part> parts() {
    return parts;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Template template && template.pattern.equals(pattern);
  }

  @Override
  public int hashCode() {
    return pattern.hashCode();
  }

  @Override
  public String toString() {
    return pattern;
  }
}
