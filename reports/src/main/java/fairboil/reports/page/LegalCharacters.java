package fairboil.reports.page;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;

/** Puts a replacement character in place of control characters, which HTML does not allow. */
final class LegalCharacters extends FilterWriter {

  private static final char REPLACEMENT = '\ufffd';

  LegalCharacters(Writer out) {
    super(out);
  }

  @Override
  public void write(int character) throws IOException {
    out.write(isLegal((char) character) ? character : REPLACEMENT);
  }

  @Override
  public void write(char[] text, int from, int length) throws IOException {
    write(new String(text, from, length), 0, length);
  }

  @Override
  public void write(String text, int from, int length) throws IOException {
    int end = from + length;
    int start = from;
    for (int i = from; i < end; i++) {
      if (!isLegal(text.charAt(i))) {
        out.write(text, start, i - start);
        out.write(REPLACEMENT);
        start = i + 1;
      }
    }
    out.write(text, start, end - start);
  }

  private static boolean isLegal(char character) {
    return character >= ' '
        ? character < '\u007f' || character > '\u009f'
        : character == '\n' || character == '\t';
  }
}
