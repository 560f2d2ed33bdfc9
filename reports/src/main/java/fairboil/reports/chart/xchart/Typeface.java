package fairboil.reports.chart.xchart;

import fairboil.reports.chart.ChartException;
import fairboil.reports.chart.ChartMark.Weight;
import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;

/** The bundled font, DejaVu Sans: read from the program itself, never from the machine. */
final class Typeface {

  static final String SENTENCE =
      "Charts cannot be drawn because Java finds no usable fonts here; install fontconfig and a"
          + " font (on Debian: apt-get install fontconfig fonts-dejavu-core) and try again.";

  private final Font plain;
  private final Font bold;

  private Typeface(Font plain, Font bold) {
    this.plain = plain;
    this.bold = bold;
  }

  /**
   * Loads the font.
   *
   * @throws ChartException if this Java cannot use fonts at all
   */
  static Typeface load() throws ChartException {
    try {
      return new Typeface(read("DejaVuSans.ttf"), read("DejaVuSans-Bold.ttf"));
    } catch (IOException | FontFormatException | RuntimeException | LinkageError e) {
      throw new ChartException(SENTENCE, e);
    } catch (InternalError e) {
      // What Java says, depending on its version, where fontconfig finds no font.
      throw new ChartException(SENTENCE, e);
    }
  }

  private static Font read(String name) throws IOException, FontFormatException {
    try (InputStream in = Typeface.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IOException(name + " is missing from the program");
      }
      return Font.createFont(Font.TRUETYPE_FONT, in);
    }
  }

  Font of(Weight weight, float size) {
    return (weight == Weight.BOLD ? bold : plain).deriveFont(size);
  }
}
