package fairboil.reports.words;

import fairboil.ingest.finding.CellFix;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Fix;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What a reader should know of the data, in words.
 *
 * @param display the units shown
 */
public record FindingWords(Display display) {

  /** {@code error: what is wrong. What to do.} */
  public String sentences(FindingGroup group) {
    Place place = group.places().get(0);
    return display.sentences(
        new Finding(group.severity(), place, group.problem(), group.remedy(), group.mend()));
  }

  /** {@code runs.csv, line 7, column water: error: what is wrong. What to do.} */
  public String line(Finding finding) {
    return finding.place() + ": " + display.sentences(finding);
  }

  /** A message as a sentence with its full stop; empty if it says nothing. */
  public String sentence(Message message) {
    return message.isEmpty() ? "" : display.sentence(message) + ".";
  }

  /** Where to type what: an instruction, and below it what is to be typed. */
  public List<String> fix(Fix fix) {
    if (fix instanceof CellFix cells) {
      return List.of(
          "To fix it: in "
              + (fix.sheet().contains("!") ? "row " : "line ")
              + cells.row().line().orElseThrow()
              + " of "
              + fix.sheet()
              + ", type "
              + typed(display.texts(fix)));
    }
    List<String> lines = new ArrayList<>();
    lines.add("To fix it: add this row to " + fix.sheet() + ":");
    lines.add(csv(List.copyOf(fix.cells().keySet())));
    lines.add(csv(List.copyOf(display.texts(fix).values())));
    return lines;
  }

  private String typed(Map<String, String> cells) {
    return Plural.list(
        cells.entrySet().stream()
            .map(entry -> entry.getValue() + " in the column " + entry.getKey())
            .toList());
  }

  private static String csv(List<String> cells) {
    return cells.stream().map(FindingWords::quoted).collect(Collectors.joining(","));
  }

  private static String quoted(String cell) {
    return cell.matches("(?s).*[\",\r\n].*") ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
  }
}
