package fairboil.reports.chart;

/**
 * The colours of charts: those of Okabe and Ito, chosen for colour-blind readers, and greys. A
 * colour never speaks alone: a marker, a dash or a label says the same.
 *
 * <p>Values: M. Okabe and K. Ito, "Color Universal Design", 2008. Their yellow is left out: it is
 * too pale on white.
 */
public enum Hue {
  /** Text, fitted lines. */
  BLACK(0x1B1F24, 0x1B),
  /** Blue. */
  BLUE(0x0072B2, 0x34),
  /** Vermilion. */
  VERMILION(0xD55E00, 0xA4),
  /** Bluish green. */
  GREEN(0x009E73, 0x69),
  /** Reddish purple. */
  PURPLE(0xCC79A7, 0x86),
  /** Orange. */
  ORANGE(0xE69F00, 0xC4),
  /** Sky blue. */
  SKY(0x56B4E9, 0x4E),
  /** Lesser text and guide lines. */
  GREY(0x5B6670, 0x65),
  /** The fill of bands. */
  PALE(0xDDE3E8, 0xE4);

  private final int rgb;
  private final int grey;

  Hue(int rgb, int grey) {
    this.rgb = rgb;
    this.grey = grey;
  }

  /** Red, green and blue, eight bits each. */
  public int rgb() {
    return rgb;
  }

  /**
   * How light its grey is, from 0 to 255. The greys of the seven that designs have are equally far
   * apart in lightness (CIE L* from 10 to 79), those of the first two designs farthest.
   */
  public int grey() {
    return grey;
  }
}
