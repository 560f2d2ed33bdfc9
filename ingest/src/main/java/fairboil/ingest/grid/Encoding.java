package fairboil.ingest.grid;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** The encodings that are recognised, each with its mark at the start of a file, if it has one. */
enum Encoding {
  UTF_8(StandardCharsets.UTF_8, 0),
  UTF_8_MARKED(StandardCharsets.UTF_8, 3),
  UTF_16_LITTLE_MARKED(StandardCharsets.UTF_16LE, 2),
  UTF_16_BIG_MARKED(StandardCharsets.UTF_16BE, 2),
  UTF_16_LITTLE(StandardCharsets.UTF_16LE, 0),
  UTF_16_BIG(StandardCharsets.UTF_16BE, 0);

  /** Bytes needed for a judgement; fewer are all there is. */
  static final int HEAD = 4096;

  private final Charset charset;
  private final int mark;

  Encoding(Charset charset, int mark) {
    this.charset = charset;
    this.mark = mark;
  }

  Charset charset() {
    return charset;
  }

  /** How many bytes the mark takes. */
  int mark() {
    return mark;
  }

  boolean isWide() {
    return !charset.equals(StandardCharsets.UTF_8);
  }

  /** Whether nothing in the file says so: it was inferred from a pattern. */
  boolean isInferred() {
    return this == UTF_16_LITTLE || this == UTF_16_BIG;
  }

  /** The encoding that the first bytes of a text file speak for. */
  static Encoding of(byte[] head, int length) {
    if (startsWith(head, length, 0xEF, 0xBB, 0xBF)) {
      return UTF_8_MARKED;
    }
    if (startsWith(head, length, 0xFF, 0xFE)) {
      return UTF_16_LITTLE_MARKED;
    }
    if (startsWith(head, length, 0xFE, 0xFF)) {
      return UTF_16_BIG_MARKED;
    }
    return ofUnmarked(head, length);
  }

  // Text in UTF-16 that is mostly Latin has a NUL in every second byte and none in the others.
  private static Encoding ofUnmarked(byte[] head, int length) {
    int pairs = length / 2;
    int evens = zeros(head, length, 0);
    int odds = zeros(head, length, 1);
    if (pairs >= 4 && odds > pairs * 3 / 4 && evens == 0) {
      return UTF_16_LITTLE;
    }
    if (pairs >= 4 && evens > pairs * 3 / 4 && odds == 0) {
      return UTF_16_BIG;
    }
    return UTF_8;
  }

  private static int zeros(byte[] head, int length, int from) {
    int zeros = 0;
    for (int i = from; i < length; i += 2) {
      if (head[i] == 0) {
        zeros++;
      }
    }
    return zeros;
  }

  static boolean startsWith(byte[] head, int length, int... start) {
    if (length < start.length) {
      return false;
    }
    for (int i = 0; i < start.length; i++) {
      if ((head[i] & 0xFF) != start[i]) {
        return false;
      }
    }
    return true;
  }
}
