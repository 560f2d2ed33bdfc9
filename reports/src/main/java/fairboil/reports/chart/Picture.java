package fairboil.reports.chart;

import java.util.List;
import java.util.Objects;

/**
 * A finished chart as a PNG. Immutable: the bytes are copied in and out.
 *
 * <p>What is drawn says what the picture is of, so that the page can put it in its place.
 */
public final class Picture {

  private final ChartKey key;
  private final String name;
  private final byte[] png;
  private final int width;
  private final int height;
  private final String alternative;
  private final String caption;
  private final List<Painted.Tip> tips;

  /**
   * A finished chart whose points tell nothing.
   *
   * @param key what it is of
   * @param name the file's name without its ending: a safe slug, unique in a report ignoring case
   * @param png the PNG
   * @param width width in CSS pixels at which the page shows it
   * @param height height in CSS pixels
   * @param alternative text that says what the chart says, for those who cannot see it
   * @param caption what to see, with n
   */
  public Picture(
      ChartKey key,
      String name,
      byte[] png,
      int width,
      int height,
      String alternative,
      String caption) {
    this(key, name, new Painted(png, List.of()), width, height, alternative, caption);
  }

  /** A finished chart as it was painted; the rest as above. */
  public Picture(
      ChartKey key,
      String name,
      Painted painted,
      int width,
      int height,
      String alternative,
      String caption) {
    this.key = Objects.requireNonNull(key, "key");
    this.name = Objects.requireNonNull(name, "name");
    this.png = painted.png();
    this.tips = painted.tips();
    this.width = width;
    this.height = height;
    this.alternative = Objects.requireNonNull(alternative, "alternative");
    this.caption = Objects.requireNonNull(caption, "caption");
  }

  /**
   * A chart at which the program failed: it keeps its place, in which a sentence stands.
   *
   * @param key what it was to be of
   * @param name as of a finished chart
   */
  public static Picture lost(ChartKey key, String name) {
    String sentence =
        "This chart is missing: the program failed at it. The numbers stand in the tables.";
    return new Picture(key, name, new byte[0], 0, 0, sentence, sentence);
  }

  /** Whether there is a picture, rather than a sentence in its place. */
  public boolean isDrawn() {
    return png.length > 0;
  }

  /** What a chart shows. */
  public enum Kind {
    /** A response against hole error. */
    HOLE_EFFECT,
    /** Builds side by side in one measure. */
    BUILDS,
    /** Maps of one ring, build by build. */
    RING_MAPS,
    /** How far builds and burns lie from the line of a response against hole error. */
    RESIDUALS,
    /** Differences in one measure. */
    FOREST,
    /** Boil times as measured and normalised. */
    NORMALISING,
    /** The heat balance of one run over its data. */
    HEAT_BALANCE,
    /** How far all runs lie from their heat balances, small. */
    BALANCES,
    /** What makes the results of one run uncertain. */
    BUDGET,
    /** How often a wish of a plan comes true. */
    POWER,
    /** Small traces of many runs. */
    TRACES,
    /** The trace of one run. */
    RUN
  }

  /** What it is of. */
  public ChartKey key() {
    return key;
  }

  /** What it shows. */
  public Kind kind() {
    return key.kind();
  }

  /** The file's name without its ending. */
  public String name() {
    return name;
  }

  /** The PNG; a copy. */
  public byte[] png() {
    return png.clone();
  }

  /** Width in CSS pixels. */
  public int width() {
    return width;
  }

  /** Height in CSS pixels. */
  public int height() {
    return height;
  }

  /** Text that says what the chart says. */
  public String alternative() {
    return alternative;
  }

  /** What to see, with n. */
  public String caption() {
    return caption;
  }

  /** The places on it that tell something; unmodifiable. */
  public List<Painted.Tip> tips() {
    return tips;
  }
}
