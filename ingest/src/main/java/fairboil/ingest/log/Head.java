package fairboil.ingest.log;

/**
 * The first lines of what was read ahead of a log, and its last ones: enough to know its shape.
 *
 * @param first the first lines
 * @param last the last lines, empty if the first are all there are
 * @param skipped how many lines lie between
 */
record Head(String first, String last, int skipped) {

  private static final int FIRST = 200;
  private static final int LAST = 30;

  /** The head of a log; its last line is left out where reading ahead ended within it. */
  static Head of(Replay replay) {
    char[] text = replay.ahead();
    int end = replay.isWhole() ? replay.length() : lastLineEnd(text, replay.length());
    int firstEnd = 0;
    int lines = 0;
    while (firstEnd < end && lines < FIRST) {
      lines += endsLine(text, firstEnd, end) ? 1 : 0;
      firstEnd++;
    }
    int lastStart = startOfLast(text, firstEnd, end);
    int skipped = 0;
    for (int i = firstEnd; i < lastStart; i++) {
      skipped += endsLine(text, i, end) ? 1 : 0;
    }
    return new Head(
        new String(text, 0, firstEnd), new String(text, lastStart, end - lastStart), skipped);
  }

  private static int lastLineEnd(char[] text, int length) {
    int end = length;
    while (end > 0 && text[end - 1] != '\n' && text[end - 1] != '\r') {
      end--;
    }
    return end == 0 ? length : end;
  }

  private static int startOfLast(char[] text, int from, int end) {
    int start = end;
    int lines = 0;
    while (start > from) {
      lines += endsLine(text, start - 1, end) ? 1 : 0;
      if (lines > LAST) {
        break;
      }
      start--;
    }
    return start;
  }

  // The CR of a CRLF does not end its line.
  private static boolean endsLine(char[] text, int i, int end) {
    return text[i] == '\n' || (text[i] == '\r' && (i + 1 == end || text[i + 1] != '\n'));
  }

  /** Whether a character stands anywhere in it. */
  boolean contains(char c) {
    return first.indexOf(c) >= 0 || last.indexOf(c) >= 0;
  }
}
