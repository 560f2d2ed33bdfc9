package fairboil.reports.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.util.Matrix;

/**
 * A page to draw on. All lengths are millimetres on the paper; x counts from the left edge, y
 * downwards from the top edge.
 */
final class Canvas {

  private static final double POINTS_PER_MM = 72 / 25.4;

  /** Control points that make four cubic curves a circle to within 0.03 % of its radius. */
  private static final double ROUND = 4.0 / 3 * (Math.sqrt(2) - 1);

  /** How text lies against the point that it is placed at. */
  enum Side {
    /** It starts there. */
    LEFT,
    /** Its middle is there. */
    MIDDLE,
    /** It ends there. */
    RIGHT
  }

  private final PDPageContentStream out;
  private final Lettering lettering;
  private final double width;
  private final double height;

  Canvas(PDPageContentStream out, Lettering lettering, double width, double height) {
    this.out = out;
    this.lettering = lettering;
    this.width = width;
    this.height = height;
  }

  /** Something that writes into the page. */
  @FunctionalInterface
  private interface Step {
    void run() throws IOException;
  }

  /** Width of the page. */
  double width() {
    return width;
  }

  /** Height of the page. */
  double height() {
    return height;
  }

  /** The lettering that widths are measured with. */
  Lettering lettering() {
    return lettering;
  }

  void line(double x1, double y1, double x2, double y2, Pen pen) {
    stroke(
        pen,
        () -> {
          out.moveTo(x(x1), y(y1));
          out.lineTo(x(x2), y(y2));
        });
  }

  void box(double x, double y, double w, double h, Pen pen) {
    stroke(pen, () -> out.addRect(x(x), y(y + h), length(w), length(h)));
  }

  void fill(double x, double y, double w, double h, Ink ink) {
    run(
        () -> {
          out.setNonStrokingColor(ink.red, ink.green, ink.blue);
          out.addRect(x(x), y(y + h), length(w), length(h));
          out.fill();
        });
  }

  void circle(double x, double y, double radius, Pen pen) {
    double c = ROUND * radius;
    stroke(
        pen,
        () -> {
          out.moveTo(x(x + radius), y(y));
          curve(x + radius, y + c, x + c, y + radius, x, y + radius);
          curve(x - c, y + radius, x - radius, y + c, x - radius, y);
          curve(x - radius, y - c, x - c, y - radius, x, y - radius);
          curve(x + c, y - radius, x + radius, y - c, x + radius, y);
          out.closePath();
        });
  }

  private void curve(double x1, double y1, double x2, double y2, double x3, double y3)
      throws IOException {
    out.curveTo(x(x1), y(y1), x(x2), y(y2), x(x3), y(y3));
  }

  /** A filled triangle. */
  void triangle(double x1, double y1, double x2, double y2, double x3, double y3) {
    run(
        () -> {
          out.setNonStrokingColor(Ink.BLACK.red, Ink.BLACK.green, Ink.BLACK.blue);
          out.moveTo(x(x1), y(y1));
          out.lineTo(x(x2), y(y2));
          out.lineTo(x(x3), y(y3));
          out.closePath();
          out.fill();
        });
  }

  /** Draws only within a box what the given steps draw. */
  void within(double x, double y, double w, double h, Runnable steps) {
    run(
        () -> {
          out.saveGraphicsState();
          out.addRect(x(x), y(y + h), length(w), length(h));
          out.clip();
        });
    steps.run();
    run(out::restoreGraphicsState);
  }

  /** One line of text whose letters stand on y. */
  void text(String text, double x, double y, Type type, Side side) {
    write(text, x, y, 0, type, side);
  }

  /** One line of text that reads upwards, whose letters stand on x. */
  void textUp(String text, double x, double y, Type type, Side side) {
    write(text, x, y, Math.PI / 2, type, side);
  }

  private void write(String text, double x, double y, double angle, Type type, Side side) {
    String shown = lettering.drawable(text);
    double back =
        switch (side) {
          case LEFT -> 0;
          case MIDDLE -> lettering.width(text, type) / 2;
          case RIGHT -> lettering.width(text, type);
        };
    double left = x - back * Math.cos(angle);
    double base = y + back * Math.sin(angle);
    PDType0Font font = lettering.font(type);
    run(
        () -> {
          out.beginText();
          out.setNonStrokingColor(type.ink.red, type.ink.green, type.ink.blue);
          out.setFont(font, (float) type.points);
          out.setTextMatrix(Matrix.getRotateInstance(angle, x(left), y(base)));
          out.showText(shown);
          out.endText();
        });
  }

  private void stroke(Pen pen, Step path) {
    run(
        () -> {
          out.setStrokingColor(pen.ink().red, pen.ink().green, pen.ink().blue);
          out.setLineWidth(length(pen.width()));
          float[] dashes = pen.dash() > 0 ? new float[] {length(pen.dash())} : new float[0];
          out.setLineDashPattern(dashes, 0);
          path.run();
          out.stroke();
        });
  }

  private static void run(Step step) {
    try {
      step.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  void close() {
    run(out::close);
  }

  private static float length(double mm) {
    return (float) (mm * POINTS_PER_MM);
  }

  private static float x(double mm) {
    return length(mm);
  }

  private float y(double mm) {
    return length(height - mm);
  }
}
