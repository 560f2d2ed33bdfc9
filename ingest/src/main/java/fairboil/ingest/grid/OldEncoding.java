package fairboil.ingest.grid;

import java.nio.ByteBuffer;
import java.nio.charset.Charset;

/** Windows-1252, with its five unused bytes kept as control characters so that none is lost. */
final class OldEncoding {

  private static final char UNUSED = '\uFFFD';

  private static final char[] CHARACTERS = characters();

  private OldEncoding() {}

  static char character(byte b) {
    return CHARACTERS[b & 0xFF];
  }

  private static char[] characters() {
    byte[] all = new byte[256];
    for (int i = 0; i < all.length; i++) {
      all[i] = (byte) i;
    }
    char[] characters = Charset.forName("windows-1252").decode(ByteBuffer.wrap(all)).array();
    for (int i = 0; i < characters.length; i++) {
      characters[i] = characters[i] == UNUSED ? (char) i : characters[i];
    }
    return characters;
  }
}
