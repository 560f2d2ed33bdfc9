package fairboil.reports.words;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.CellFix;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Fix;
import fairboil.ingest.finding.Message;
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
    return group.severity().label()
        + ": "
        + display.say(group.problem())
        + "."
        + after(display.sentence(group.remedy()));
  }

  /** {@code runs.csv, line 7, column water: error: what is wrong. What to do.} */
  public String line(Finding finding) {
    return finding.place() + ": " + sentences(FindingGroup.of(List.of(finding)).get(0));
  }

  private static String after(String sentence) {
    if (sentence.isEmpty()) {
      return "";
    }
    return " " + sentence + (sentence.endsWith("?") ? "" : ".");
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
              + typed(fix.cells()));
    }
    List<String> lines = new ArrayList<>();
    lines.add("To fix it: add this row to " + fix.sheet() + ":");
    lines.add(csv(List.copyOf(fix.cells().keySet())));
    lines.add(csv(fix.cells().values().stream().map(display::cell).toList()));
    return lines;
  }

  private String typed(Map<String, Argument> cells) {
    return Plural.list(
        cells.entrySet().stream()
            .map(entry -> display.cell(entry.getValue()) + " in the column " + entry.getKey())
            .toList());
  }

  private static String csv(List<String> cells) {
    return cells.stream().map(FindingWords::quoted).collect(Collectors.joining(","));
  }

  private static String quoted(String cell) {
    return cell.matches("(?s).*[\",\r\n].*") ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
  }
}
