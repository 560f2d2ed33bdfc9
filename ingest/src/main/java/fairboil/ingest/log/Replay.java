package fairboil.ingest.log;

import java.io.IOException;
import java.io.Reader;
import java.util.Arrays;

/**
 * Reads ahead of a text, then gives all of it from its first character. For one thread; closing it
 * closes nothing.
 */
final class Replay extends Reader {

  private static final int AHEAD = 1 << 20;
  private static final int CHUNK = 1 << 14;

  private final Reader rest;
  private char[] ahead = new char[CHUNK];
  private int length;
  private int position;

  Replay(Reader text) throws IOException {
    this.rest = text;
    int read = 0;
    while (read >= 0 && length < AHEAD) {
      if (length == ahead.length) {
        ahead = Arrays.copyOf(ahead, Math.min(AHEAD, length * 4));
      }
      read = text.read(ahead, length, ahead.length - length);
      length += Math.max(0, read);
    }
  }

  /** The characters read ahead; not to be changed. */
  char[] ahead() {
    return ahead;
  }

  /** Whether all of the text was read ahead. */
  boolean isWhole() {
    return length < AHEAD;
  }

  /** How many characters were read ahead. */
  int length() {
    return length;
  }

  @Override
  public int read(char[] target, int offset, int count) throws IOException {
    if (position == length) {
      return rest.read(target, offset, count);
    }
    int taken = Math.min(count, length - position);
    System.arraycopy(ahead, position, target, offset, taken);
    position += taken;
    return taken;
  }

  @Override
  public void close() {
    // whoever opened the text closes it
  }
}
