package fairboil.reports.chart;

import fairboil.reports.words.Caption;
import java.util.Objects;

/** A finished chart for print, in one width. Immutable: the bytes are copied in and out. */
public final class Print {

  private final ChartKey key;
  private final String name;
  private final Format format;
  private final Caption caption;
  private final byte[] png;
  private final byte[] grey;
  private final byte[] pdf;

  Print(
      ChartKey key,
      String name,
      Format format,
      Caption caption,
      byte[] png,
      byte[] grey,
      byte[] pdf) {
    this.key = Objects.requireNonNull(key, "key");
    this.name = Objects.requireNonNull(name, "name");
    this.format = Objects.requireNonNull(format, "format");
    this.caption = Objects.requireNonNull(caption, "caption");
    this.png = png.clone();
    this.grey = grey.clone();
    this.pdf = pdf.clone();
  }

  /** What it shows. */
  public Picture.Kind kind() {
    return key.kind();
  }

  /** What it is of. */
  public ChartKey key() {
    return key;
  }

  /** The name of the chart: that of its picture for screens, the same for all widths. */
  public String name() {
    return name;
  }

  /** What it is laid out for. */
  public Format format() {
    return format;
  }

  /** What is said of it. */
  public Caption caption() {
    return caption;
  }

  /** In colours, as a PNG; a copy. */
  public byte[] png() {
    return png.clone();
  }

  /** In greys, as a PNG; a copy. */
  public byte[] grey() {
    return grey.clone();
  }

  /** In colours, as a PDF; a copy. */
  public byte[] pdf() {
    return pdf.clone();
  }
}
