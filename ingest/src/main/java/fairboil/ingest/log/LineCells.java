package fairboil.ingest.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The cells of one line, as trimmed spans of its characters: nothing is copied. Filled anew for
 * every line; for one thread.
 */
final class LineCells {

  private char[] text = new char[0];
  private int[] starts = new int[16];
  private int[] ends = new int[16];
  private int count;
  private boolean quoted;

  /** Starts anew on the characters of a line. */
  void reset(char[] characters) {
    text = characters;
    count = 0;
    quoted = false;
  }

  /** Starts anew with the given cells. */
  void set(List<String> cells) {
    reset(String.join("", cells).toCharArray());
    int from = 0;
    for (String cell : cells) {
      add(from, from + cell.length());
      from += cell.length();
    }
  }

  /** Adds a cell, without the blanks around it. */
  void add(int from, int to) {
    int start = from;
    int end = to;
    while (start < end && isBlank(text[start])) {
      start++;
    }
    while (end > start && isBlank(text[end - 1])) {
      end--;
    }
    if (count == starts.length) {
      starts = Arrays.copyOf(starts, count * 2);
      ends = Arrays.copyOf(ends, count * 2);
    }
    starts[count] = start;
    ends[count++] = end;
  }

  /** Remembers that some cell of this line stood in quotation marks. */
  void markQuoted() {
    quoted = true;
  }

  boolean isQuoted() {
    return quoted;
  }

  /** Blanks, tabs, non-breaking and thin blanks, and a stray mark of UTF-8 at a start. */
  static boolean isBlank(char c) {
    return c <= ' ' ? c != 0 : c == '\u00A0' || (c >= '\u2000' && isWideBlank(c));
  }

  private static boolean isWideBlank(char c) {
    return c <= '\u200B' || c == '\u202F' || c == '\u205F' || c == '\uFEFF';
  }

  char[] text() {
    return text;
  }

  int start(int cell) {
    return starts[cell];
  }

  int end(int cell) {
    return ends[cell];
  }

  /** How many cells there are, empty ones at the end included. */
  int count() {
    return count;
  }

  boolean isEmpty(int cell) {
    return cell >= count || starts[cell] == ends[cell];
  }

  /** How many cells there are up to the last that is not empty. */
  int width() {
    int width = count;
    while (width > 0 && isEmpty(width - 1)) {
      width--;
    }
    return width;
  }

  /** The text of a cell; empty where the line ends before it. */
  String string(int cell) {
    return cell >= count ? "" : new String(text, starts[cell], ends[cell] - starts[cell]);
  }

  /** The longest cell's length. */
  int longest() {
    int longest = 0;
    for (int i = 0; i < count; i++) {
      longest = Math.max(longest, ends[i] - starts[i]);
    }
    return longest;
  }

  /** The texts of all cells. */
  List<String> strings() {
    List<String> strings = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      strings.add(string(i));
    }
    return strings;
  }
}
