package fairboil.reports.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The faces as embedded in one file, how wide text is in them, and how it breaks into lines. */
final class Lettering {

  private static final double MM_PER_POINT = 25.4 / 72;
  private static final String CUT_OFF = "…";

  private final Typefaces typefaces;
  private final Map<Type.Face, PDType0Font> fonts = new EnumMap<>(Type.Face.class);

  Lettering(PDDocument document, Typefaces typefaces) throws IOException {
    this.typefaces = typefaces;
    for (Type.Face face : Type.Face.values()) {
      fonts.put(face, PDType0Font.load(document, typefaces.get(face), true));
    }
  }

  PDType0Font font(Type type) {
    return Objects.requireNonNull(fonts.get(type.face));
  }

  String drawable(String text) {
    return typefaces.drawable(text);
  }

  /** How wide a line of text is, mm. */
  double width(String text, Type type) {
    try {
      return font(type).getStringWidth(drawable(text)) / 1000 * type.points * MM_PER_POINT;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The text, cut off with an ellipsis where it is too wide. */
  String shortened(String text, double width, Type type) {
    if (width(text, type) <= width) {
      return text;
    }
    int end = text.length();
    while (end > 0 && width(text.substring(0, end) + CUT_OFF, type) > width) {
      end = text.offsetByCodePoints(end, -1);
    }
    return text.substring(0, end).stripTrailing() + CUT_OFF;
  }

  /** The text in lines no wider than that; a word that is wider than a line is broken. */
  List<String> lines(String text, double width, Type type) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.strip().split("[ \\n\\t]+", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (width(longer, type) <= width) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = broken(word, width, type, lines);
    }
    lines.add(line);
    return lines;
  }

  /** The text in at most so many lines; what is more is cut off with an ellipsis. */
  List<String> lines(String text, double width, Type type, int most) {
    List<String> lines = lines(text, width, type);
    if (lines.size() <= most) {
      return lines;
    }
    String last = String.join(" ", lines.subList(most - 1, lines.size()));
    List<String> kept = new ArrayList<>(lines.subList(0, most - 1));
    kept.add(shortened(last, width, type));
    return kept;
  }

  /** Adds whole lines of a word that is too wide, and gives what is left of it. */
  private String broken(String word, double width, Type type, List<String> lines) {
    String rest = word;
    while (width(rest, type) > width && rest.codePointCount(0, rest.length()) > 1) {
      int end = rest.length();
      while (end > rest.offsetByCodePoints(0, 1) && width(rest.substring(0, end), type) > width) {
        end = rest.offsetByCodePoints(end, -1);
      }
      lines.add(rest.substring(0, end));
      rest = rest.substring(end);
    }
    return rest;
  }
}
