package fairboil.reports.quote;

import fairboil.reports.words.Names;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Texts with marks as CommonMark has them, and tables. What people wrote stays plain text. */
final class Markdown {

  // What begins or ends emphasis, code, links, tags, entities, cells, formulas.
  private static final Pattern SPECIAL = Pattern.compile("[\\\\`*_{}\\[\\]<>#|~&$]");
  // What makes a list, a heading or a rule of a line that it begins.
  private static final Pattern AT_START = Pattern.compile("^(\\s*)([-+=])");
  private static final Pattern NUMBER_AT_START = Pattern.compile("^(\\s*\\d{1,9})([.)])(?=\\s|$)");

  private final StringBuilder text = new StringBuilder();

  /** A text on one line, so that none of its characters is a mark. */
  static String plain(String text) {
    String line = Names.inSentence(text).replaceAll("[\u2028\u2029\\s]+", " ").strip();
    String escaped = SPECIAL.matcher(line).replaceAll("\\\\$0");
    escaped = AT_START.matcher(escaped).replaceFirst("$1\\\\$2");
    return NUMBER_AT_START.matcher(escaped).replaceFirst("$1\\\\$2");
  }

  Markdown title(String title) {
    return block("# " + plain(title));
  }

  Markdown heading(String heading) {
    return block("## " + plain(heading));
  }

  Markdown paragraph(String sentence) {
    return block(plain(sentence));
  }

  /** Somebody's own words. */
  Markdown quotation(String words) {
    return block("> " + plain(words));
  }

  Markdown list(List<String> sentences) {
    return sentences.isEmpty()
        ? this
        : block(
            sentences.stream().map(each -> "- " + plain(each)).collect(Collectors.joining("\n")));
  }

  /** Lines as they are: a command, for instance. */
  Markdown code(String lines) {
    return block("    " + lines.replace("\n", "\n    "));
  }

  Markdown table(List<String> columns, List<List<String>> rows) {
    String rule = "|" + String.join("|", Collections.nCopies(columns.size(), " --- ")) + "|";
    return block(
        row(columns)
            + "\n"
            + rule
            + rows.stream().map(row -> "\n" + row(row)).collect(Collectors.joining()));
  }

  private static String row(List<String> cells) {
    return cells.stream().map(Markdown::plain).collect(Collectors.joining(" | ", "| ", " |"));
  }

  private Markdown block(String block) {
    text.append(text.isEmpty() ? "" : "\n").append(block).append('\n');
    return this;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
