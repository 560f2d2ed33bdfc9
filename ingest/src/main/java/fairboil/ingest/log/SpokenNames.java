package fairboil.ingest.log;

import java.util.List;
import java.util.Set;

/**
 * Names of several words in a header that is split at blanks: {@code time (s) flame temp} gives
 * four cells and may by chance fit rows of four.
 */
final class SpokenNames {

  private static final Set<String> TEMPERATURES =
      Set.of("temp", "temps", "temperature", "temperatur");

  private SpokenNames() {}

  /** Whether some cells of a header, split at blanks, seem to be parts of one name, or marks. */
  static boolean areTorn(List<String> cells) {
    if (cells.stream().anyMatch(cell -> cell.matches("[;,|]"))) {
      return true;
    }
    for (int i = 1; i < cells.size(); i++) {
      if (goesOn(cells.get(i - 1), cells.get(i))) {
        return true;
      }
    }
    return false;
  }

  private static boolean goesOn(String before, String cell) {
    if ("([{".indexOf(cell.isEmpty() ? ' ' : cell.charAt(0)) >= 0 || before.endsWith(",")) {
      return true;
    }
    List<String> words = HeaderName.words(before);
    boolean temperature = UnitWords.ofTemperature(cell).isPresent() || startsWithTemperature(cell);
    boolean time = TimeWord.of(cell).filter(word -> cell.length() <= 3).isPresent();
    return (RoleWords.of(words).isPresent() && temperature) || (TimeWords.someOf(words) && time);
  }

  private static boolean startsWithTemperature(String cell) {
    return HeaderName.words(cell).stream().limit(1).anyMatch(TEMPERATURES::contains);
  }
}
