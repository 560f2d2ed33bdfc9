package fairboil.reports.print;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Objects;

/** One file to print: a PDF at true scale. Immutable: the bytes are copied in and out. */
public final class Printed {

  private final String name;
  private final String title;
  private final byte[] pdf;

  Printed(String name, String title, byte[] pdf) {
    this.name = Objects.requireNonNull(name, "name");
    this.title = Objects.requireNonNull(title, "title");
    this.pdf = pdf.clone();
  }

  Printed named(String better) {
    return new Printed(better, title, pdf);
  }

  /** The file's name, a safe slug with its ending, unique within its job ignoring case. */
  public String name() {
    return name;
  }

  /** What it is, for people. */
  public String title() {
    return title;
  }

  /** The PDF; a copy. */
  public byte[] pdf() {
    return pdf.clone();
  }

  /** Writes the PDF, and nothing else. The stream stays open. */
  public void writeTo(OutputStream out) throws IOException {
    out.write(pdf);
  }

  @Override
  public String toString() {
    return name;
  }
}
