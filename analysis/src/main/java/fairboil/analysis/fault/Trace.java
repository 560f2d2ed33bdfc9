package fairboil.analysis.fault;

import java.util.regex.Pattern;

/**
 * Where in the program something was thrown, as text.
 *
 * <p>It ends where the part began, so that it does not tell which thread worked on it, and holds
 * neither paths (they have names of people in them) nor addresses of memory: the same study gives
 * the same text.
 */
final class Trace {

  private static final int MOST_CAUSES = 5;
  private static final int MOST_FRAMES = 60;
  private static final int LONGEST_MESSAGE = 300;

  private static final Pattern PATH = Pattern.compile("\\S*[/\\\\]\\S*");
  private static final Pattern ADDRESS = Pattern.compile("@[0-9a-f]{4,}\\b");
  private static final Pattern CONTROL = Pattern.compile("\\p{Cntrl}+");

  private Trace() {}

  /** The trace of what was thrown, each line ended by {@code \n}. */
  static String of(Throwable thrown) {
    StringBuilder text = new StringBuilder();
    Throwable next = thrown;
    for (int i = 0; next != null && i < MOST_CAUSES; i++) {
      text.append(i == 0 ? "" : "caused by ").append(next.getClass().getName());
      text.append(message(next)).append('\n');
      frames(next.getStackTrace(), text);
      next = next.getCause();
    }
    return text.toString();
  }

  private static String message(Throwable thrown) {
    if (thrown.getCause() != null && thrown.getCause().toString().equals(thrown.getMessage())) {
      return ""; // said of the cause
    }
    return thrown.getMessage() == null ? "" : ": " + harmless(thrown.getMessage());
  }

  private static String harmless(String message) {
    String shown = PATH.matcher(message).replaceAll("…");
    shown = ADDRESS.matcher(shown).replaceAll("");
    shown = CONTROL.matcher(shown).replaceAll(" ");
    return shown.length() <= LONGEST_MESSAGE ? shown : shown.substring(0, LONGEST_MESSAGE) + "…";
  }

  private static void frames(StackTraceElement[] frames, StringBuilder text) {
    for (int i = 0; i < frames.length && i < MOST_FRAMES; i++) {
      if (frames[i].getClassName().equals(Faults.class.getName())) {
        return;
      }
      text.append("  at ").append(frames[i].getClassName()).append('.');
      text.append(frames[i].getMethodName()).append(':').append(frames[i].getLineNumber());
      text.append('\n');
    }
  }
}
