package fairboil.reports.chart;

import java.util.List;

/** A sheet as it came out: its picture, and the places on it that tell something. Immutable. */
public final class Painted {

  private final byte[] png;
  private final List<Tip> tips;

  /**
   * A sheet as it came out.
   *
   * @param png the picture; copied
   * @param tips the places; copied
   */
  public Painted(byte[] png, List<Tip> tips) {
    this.png = png.clone();
    this.tips = List.copyOf(tips);
  }

  /**
   * A place on a picture and what it tells.
   *
   * @param x how far from the left edge, in CSS pixels
   * @param y how far from the upper edge, in CSS pixels
   * @param size how wide it is, in CSS pixels
   * @param text what it tells
   */
  public record Tip(double x, double y, double size, String text) {}

  /** The picture as a PNG; a copy. */
  public byte[] png() {
    return png.clone();
  }

  /** The places that tell something; unmodifiable. */
  public List<Tip> tips() {
    return tips;
  }
}
