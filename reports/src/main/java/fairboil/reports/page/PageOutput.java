package fairboil.reports.page;

import gg.jte.TemplateOutput;
import gg.jte.output.Utf8ByteOutput;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/**
 * Takes a page as UTF-8, with a replacement character in place of each control character, which
 * HTML does not allow. What a template vouches for (pictures, most of a page) is not looked at.
 */
final class PageOutput implements TemplateOutput {

  private static final char REPLACEMENT = '\ufffd';

  private final Utf8ByteOutput page = new Utf8ByteOutput();

  @Override
  public void writeContent(String text) {
    writeContent(text, 0, text.length());
  }

  @Override
  public void writeContent(String text, int from, int end) {
    int start = from;
    for (int i = from; i < end; i++) {
      if (!isLegal(text.charAt(i))) {
        page.writeContent(text, start, i);
        page.writeUserContent(REPLACEMENT);
        start = i + 1;
      }
    }
    page.writeContent(text, start, end);
  }

  @Override
  public void writeUnsafeContent(String text) {
    page.writeBinaryContent(text.getBytes(StandardCharsets.UTF_8));
  }

  private static boolean isLegal(char character) {
    return character >= ' '
        ? character < '\u007f' || character > '\u009f'
        : character == '\n' || character == '\t';
  }

  /** Writes the page. */
  void writeTo(OutputStream out) throws IOException {
    page.writeTo(out);
  }
}
