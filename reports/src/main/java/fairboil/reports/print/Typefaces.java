package fairboil.reports.print;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Bidi;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The faces, read once for all files of a job. They come from our own resources and are embedded,
 * so that no font of the machine is looked for.
 */
final class Typefaces implements AutoCloseable {

  private static final String FOLDER = "fairboil/reports/chart/xchart/";

  /** What stands in the place of a character that the face lacks. */
  private static final int MISSING = '\u25a1';

  private final Map<Type.Face, TrueTypeFont> faces = new EnumMap<>(Type.Face.class);
  private final CmapLookup characters;

  private Typefaces() throws IOException {
    for (Type.Face face : Type.Face.values()) {
      faces.put(face, read(face.file));
    }
    characters = Objects.requireNonNull(faces.get(Type.Face.PLAIN)).getUnicodeCmapLookup();
  }

  static Typefaces open() {
    try {
      return new Typefaces();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static TrueTypeFont read(String file) throws IOException {
    try (InputStream in = Typefaces.class.getClassLoader().getResourceAsStream(FOLDER + file)) {
      if (in == null) {
        throw new IOException("the program lacks its own font " + file);
      }
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
      // Widths are those of single letters, so letters must not melt together.
      font.setEnableGsub(false);
      return font;
    }
  }

  TrueTypeFont get(Type.Face face) {
    return Objects.requireNonNull(faces.get(face));
  }

  /**
   * Text as it can be drawn on one line: control characters become blanks, characters that the face
   * lacks an empty box, and what reads from right to left is put in the order in which it is seen.
   */
  String drawable(String text) {
    StringBuilder known = new StringBuilder(text.length());
    text.codePoints().map(this::known).forEach(known::appendCodePoint);
    return inVisualOrder(known.toString());
  }

  private int known(int character) {
    if (Character.isISOControl(character)) {
      return ' ';
    }
    return characters.getGlyphId(character) == 0 ? MISSING : character;
  }

  private static String inVisualOrder(String text) {
    char[] letters = text.toCharArray();
    if (!Bidi.requiresBidi(letters, 0, letters.length)) {
      return text;
    }
    Bidi bidi = new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
    int runs = bidi.getRunCount();
    byte[] levels = new byte[runs];
    String[] parts = new String[runs];
    for (int run = 0; run < runs; run++) {
      levels[run] = (byte) bidi.getRunLevel(run);
      String part = text.substring(bidi.getRunStart(run), bidi.getRunLimit(run));
      parts[run] = levels[run] % 2 == 0 ? part : new StringBuilder(part).reverse().toString();
    }
    Bidi.reorderVisually(levels, 0, parts, 0, runs);
    return String.join("", parts);
  }

  @Override
  public void close() {
    try {
      for (TrueTypeFont font : faces.values()) {
        font.close();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
