package fairboil.ingest.sheet;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.quantity.UnitText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A header taken apart into a name and a unit: {@code water (g)}, {@code water [g]}, {@code water,
 * g}, {@code water_g}, {@code water g}. Where the last words could be a unit or part of the name
 * there are several ways to take it apart, the longest name first.
 *
 * @param name the name
 * @param unit the text of the unit; empty if there is none
 */
record HeaderName(String name, String unit) {

  private static final Pattern BRACKETED =
      Pattern.compile("(.*?)[\\s_]*[\\[({]([^\\[\\](){}]*)[\\])}]");
  private static final Pattern AFTER_MARK = Pattern.compile("(.*\\S)\\s*(?:,|/| in )\\s*(\\S+)");
  private static final Pattern WORD_END = Pattern.compile("[\\s_]+");

  /** The longest header that may name a column, unit and all. */
  private static final int LONGEST = 200;

  /** The most words of a unit. */
  private static final int UNIT_WORDS = 3;

  /** The ways to take a header apart; one that is very long has only one. */
  static List<HeaderName> of(String header) {
    if (header.length() > LONGEST) {
      return List.of(new HeaderName(header, ""));
    }
    String plain = withoutEndingMarks(header);
    Matcher bracketed = BRACKETED.matcher(plain);
    if (bracketed.matches() && !bracketed.group(1).isBlank()) {
      return List.of(new HeaderName(bracketed.group(1).strip(), bracketed.group(2).strip()));
    }
    List<HeaderName> ways = new ArrayList<>();
    ways.add(new HeaderName(plain, ""));
    Matcher marked = AFTER_MARK.matcher(plain);
    if (marked.matches() && !UnitText.meanings(marked.group(2)).isEmpty()) {
      ways.add(new HeaderName(marked.group(1), marked.group(2)));
    }
    ways.addAll(withLastWordsAsUnit(plain));
    return ways;
  }

  // Lid? and Test # are lid and test.
  private static String withoutEndingMarks(String header) {
    int end = header.length();
    while (end > 1 && "*:?.# \u00A0".indexOf(header.charAt(end - 1)) >= 0) {
      end--;
    }
    return header.substring(0, end).strip();
  }

  private static List<HeaderName> withLastWordsAsUnit(String plain) {
    List<HeaderName> ways = new ArrayList<>();
    Matcher gap = WORD_END.matcher(plain);
    List<int[]> gaps = new ArrayList<>();
    while (gap.find()) {
      gaps.add(new int[] {gap.start(), gap.end()});
    }
    for (int i = gaps.size() - 1; i >= Math.max(0, gaps.size() - UNIT_WORDS); i--) {
      String unit = plain.substring(gaps.get(i)[1]).replace('_', ' ');
      if (gaps.get(i)[0] > 0 && !UnitText.meanings(unit).isEmpty()) {
        ways.add(new HeaderName(plain.substring(0, gaps.get(i)[0]), unit));
      }
    }
    return ways;
  }

  String key() {
    return Words.key(name);
  }

  boolean hasUnit() {
    return !unit.isEmpty();
  }

  Optional<Unit> unitOf(List<Dimension> dimensions) {
    return UnitText.find(unit, dimensions);
  }
}
