package fairboil.reports.cli;

/** Keeps what came out of a file from steering the terminal that shows it. */
final class Terminal {

  private Terminal() {}

  /** The text on one line, without control characters and marks that turn the direction round. */
  static String oneLine(String text) {
    StringBuilder safe = new StringBuilder(text.length());
    text.codePoints().map(Terminal::harmless).forEach(safe::appendCodePoint);
    return safe.toString();
  }

  private static int harmless(int point) {
    int type = Character.getType(point);
    return switch (type) {
      case Character.CONTROL -> ' ';
      case Character.FORMAT, Character.SURROGATE -> '\uFFFD';
      case Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> ' ';
      default -> point;
    };
  }
}
