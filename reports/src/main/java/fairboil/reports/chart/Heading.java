package fairboil.reports.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Title and subtitle of a sheet, broken into lines by the number of their letters: where panels
 * start must be known before anything is drawn.
 *
 * @param title lines of the title; none for a sheet without
 * @param subtitle lines of the subtitle
 */
public record Heading(List<String> title, List<String> subtitle) {

  /** Height of a line of the title. */
  public static final int TITLE_LINE = 21;

  /** Height of a line of the subtitle. */
  public static final int SUBTITLE_LINE = 18;

  /** A unit stays with its number. */
  private static final Pattern BETWEEN_WORDS = Pattern.compile("(?<![0-9]) ");

  private static final int ABOVE = 5;
  private static final int BELOW = 13;
  private static final int EDGES = 28;
  private static final double TITLE_LETTER = 9.9;
  private static final double SUBTITLE_LETTER = 7.5;

  /** Copies the lines. */
  public Heading {
    title = List.copyOf(title);
    subtitle = List.copyOf(subtitle);
  }

  static Heading of(String title, String subtitle, int width) {
    return new Heading(
        lines(title, (int) ((width - EDGES) / TITLE_LETTER)),
        lines(subtitle, (int) ((width - EDGES) / SUBTITLE_LETTER)));
  }

  /** Where what stands below them may start; 0 if there are none. */
  public int below() {
    return title.isEmpty() && subtitle.isEmpty()
        ? 0
        : ABOVE + title.size() * TITLE_LINE + subtitle.size() * SUBTITLE_LINE + BELOW;
  }

  /** Words in lines of at most so many letters; a longer word has its own. */
  private static List<String> lines(String text, int most) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.isBlank() ? new String[0] : BETWEEN_WORDS.split(text)) {
      if (line.length() > 0 && line.length() + 1 + word.length() > most) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(word);
    }
    if (line.length() > 0) {
      lines.add(line.toString());
    }
    return lines;
  }
}
