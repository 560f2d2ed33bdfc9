package fairboil.reports.chart;

import fairboil.ingest.sheet.Build;
import fairboil.reports.chart.ChartMark.Fill;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The colour and marker of each design, the same in every chart of a report: by the order in which
 * the study names designs. From the eighth on they come round again, hollow.
 */
final class DesignStyles {

  private static final List<Style> STYLES =
      List.of(
          new Style(Hue.BLUE, Glyph.CIRCLE, Fill.FULL),
          new Style(Hue.VERMILION, Glyph.TRIANGLE, Fill.FULL),
          new Style(Hue.GREEN, Glyph.SQUARE, Fill.FULL),
          new Style(Hue.PURPLE, Glyph.DIAMOND, Fill.FULL),
          new Style(Hue.ORANGE, Glyph.TRIANGLE_DOWN, Fill.FULL),
          new Style(Hue.SKY, Glyph.CROSS, Fill.FULL),
          new Style(Hue.BLACK, Glyph.SQUARE, Fill.FULL));

  private final List<Optional<String>> designs;

  private DesignStyles(List<Optional<String>> designs) {
    this.designs = designs;
  }

  /** How a design looks. */
  record Style(Hue hue, Glyph glyph, Fill fill) {

    KeyEntry key(String text) {
      return new KeyEntry.Symbol(glyph, hue, fill, 11, text);
    }
  }

  static DesignStyles of(List<Build> builds) {
    return new DesignStyles(builds.stream().map(Build::design).distinct().toList());
  }

  Style of(Optional<String> design) {
    int index = Math.max(0, designs.indexOf(design));
    Style style = STYLES.get(index % STYLES.size());
    return index < STYLES.size() ? style : new Style(style.hue(), style.glyph(), Fill.HOLLOW);
  }

  /** Those of the given designs, in the order of the study. */
  List<Optional<String>> inOrder(List<Optional<String>> some) {
    return designs.stream().filter(some::contains).toList();
  }

  /** An entry of the key for each of the given designs. */
  List<KeyEntry> key(List<Optional<String>> some) {
    List<KeyEntry> key = new ArrayList<>();
    for (Optional<String> design : inOrder(some)) {
      key.add(of(design).key(name(design)));
    }
    return key;
  }

  static String name(Optional<String> design) {
    return design.orElse("design not told");
  }
}
