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
  BLACK(0x1B1F24),
  /** Blue. */
  BLUE(0x0072B2),
  /** Vermilion. */
  VERMILION(0xD55E00),
  /** Bluish green. */
  GREEN(0x009E73),
  /** Reddish purple. */
  PURPLE(0xCC79A7),
  /** Orange. */
  ORANGE(0xE69F00),
  /** Sky blue. */
  SKY(0x56B4E9),
  /** Lesser text and guide lines. */
  GREY(0x5B6670),
  /** The fill of bands. */
  PALE(0xDDE3E8);

  private final int rgb;

  Hue(int rgb) {
    this.rgb = rgb;
  }

  /** Red, green and blue, eight bits each. */
  public int rgb() {
    return rgb;
  }
}
