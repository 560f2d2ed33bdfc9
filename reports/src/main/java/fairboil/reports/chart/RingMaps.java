package fairboil.reports.chart;

import fairboil.analysis.layout.HoleError;
import fairboil.analysis.layout.IntendedRing;
import fairboil.analysis.layout.RingResult;
import fairboil.ingest.Study;
import fairboil.ingest.choice.Datum;
import fairboil.ingest.choice.Surface;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.sheet.Build;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.RingsSheet;
import fairboil.reports.chart.ChartMark.Fill;
import fairboil.reports.chart.ChartMark.Need;
import fairboil.reports.chart.ChartMark.Weight;
import fairboil.reports.chart.DesignStyles.Style;
import fairboil.reports.words.BuildCaptions;
import fairboil.reports.words.Caption;
import fairboil.reports.words.Display;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Maps of one ring, build by build: where each hole was meant to be and where it is, its deviation
 * drawn several times its size. Walls are unrolled and seen from outside, top up; bases are plans.
 */
final class RingMaps {

  private static final int[] TIMES = {100, 50, 20, 10, 5, 3, 2, 1};
  private static final int HEADING = 22;
  private static final int GAP = 20;
  private static final double MARGIN = 0.03;
  private static final int LEAST_HALF_HEIGHT = 26;
  private static final int ROOM_FOR_WORDS = 14;
  // How far a usual deviation may be drawn, as a share of the way to the next hole.
  private static final double REACH = 0.4;

  private final List<RingResult> maps;
  private final Study study;
  private final DesignStyles styles;
  private final BuildCaptions captions;
  private final Display display;
  private final int times;
  private final Layout layout;
  private final Format format;

  /** Maps of one ring, all of them on the wall or all on the base; at least one. */
  RingMaps(
      List<RingResult> maps,
      Study study,
      DesignStyles styles,
      BuildCaptions captions,
      Display display,
      Format format) {
    this.maps = maps;
    this.study = study;
    this.styles = styles;
    this.captions = captions;
    this.display = display;
    this.times = times(maps);
    this.format = format;
    this.layout = isWall() ? wall() : base();
  }

  /** The part of the ring's surface that each panel shows, in metres, and the size of a panel. */
  private record Layout(
      int columns, int width, int height, double left, double right, double bottom, double top) {

    double pixelsPerMetre() {
      return width / (right - left);
    }
  }

  int times() {
    return times;
  }

  private boolean isWall() {
    return maps.get(0).surface() == Surface.WALL;
  }

  /** The largest round factor with which most holes stay nearer to their place than to the next. */
  static int times(List<RingResult> maps) {
    double usual =
        Math.sqrt(
            holes(maps).mapToDouble(hole -> Math.pow(hole.deviation(), 2)).average().orElse(0));
    double room = maps.stream().mapToDouble(RingMaps::spacing).min().orElse(0);
    for (int factor : TIMES) {
      if (factor * usual <= REACH * room) {
        return factor;
      }
    }
    return 1;
  }

  private static Stream<HoleError> holes(List<RingResult> maps) {
    return maps.stream().flatMap(map -> map.holes().stream());
  }

  /** The smallest distance between the intended places of neighbours. */
  private static double spacing(RingResult map) {
    double smallest = map.extent();
    for (HoleError one : map.holes()) {
      for (HoleError other : map.holes()) {
        if (one.number() < other.number()) {
          smallest =
              Math.min(
                  smallest,
                  Math.hypot(
                      one.intendedAlong() - other.intendedAlong(),
                      one.intendedHeight() - other.intendedHeight()));
        }
      }
    }
    return smallest;
  }

  private Layout wall() {
    int columns = maps.size() == 1 || !format.isWide() ? 1 : 2;
    int width = (format.width() - 2 * 20 - (columns - 1) * GAP) / columns;
    double wrap = maps.stream().mapToDouble(RingResult::extent).max().orElse(1);
    double reach =
        times * holes(maps).mapToDouble(hole -> Math.abs(hole.heightError())).max().orElse(0);
    Range along =
        Range.of(holes(maps).mapToDouble(hole -> hole.intendedAlong() + times * hole.alongError()));
    along.add(0);
    along.add(wrap);
    double left = along.low() - MARGIN * wrap;
    double right = along.high() + MARGIN * wrap;
    double pixel = (right - left) / width;
    double half = Math.max(reach + ROOM_FOR_WORDS * pixel, LEAST_HALF_HEIGHT * pixel);
    int height = (int) Math.ceil(2 * half / (right - left) * width);
    return new Layout(columns, width, height, left, right, -half, half);
  }

  private Layout base() {
    int columns = Math.min(format.isWide() ? 5 : 3, Math.max(2, maps.size()));
    int width = (format.width() - 2 * 20 - (columns - 1) * GAP) / columns;
    double outermost =
        holes(maps).mapToDouble(hole -> radius(hole) + times * hole.deviation()).max().orElse(0);
    double circle = maps.stream().mapToDouble(RingResult::extent).max().orElse(0);
    double half = Math.max(1e-3, 1.12 * Math.max(outermost, circle));
    return new Layout(columns, width, width, -half, half, -half, half);
  }

  private static double radius(HoleError hole) {
    return Math.hypot(hole.intendedAlong(), hole.intendedHeight());
  }

  Sheet sheet(Caption caption) {
    List<KeyEntry> key = key();
    int top = format.top(caption, key);
    List<Panel> panels = new ArrayList<>();
    for (int i = 0; i < maps.size(); i++) {
      panels.add(panel(maps.get(i), box(i, top)));
    }
    int rows = (maps.size() + layout.columns() - 1) / layout.columns();
    int height = top + rows * (layout.height() + HEADING + GAP / 2) + 8;
    return format.sheet(caption, key, panels, height);
  }

  private Box box(int index, int top) {
    int column = index % layout.columns();
    int row = index / layout.columns();
    return new Box(
        20 + column * (layout.width() + GAP),
        top + HEADING + row * (layout.height() + HEADING + GAP / 2),
        layout.width(),
        layout.height());
  }

  private List<KeyEntry> key() {
    List<KeyEntry> key = new ArrayList<>();
    key.add(new KeyEntry.Symbol(Glyph.CIRCLE, Hue.GREY, Fill.HOLLOW, 9, "meant place"));
    key.add(bar(70, 1, Hue.BLACK, "on the " + (isWall() ? "wall" : "base")));
    key.add(bar(34, times, Hue.BLACK, "of deviation"));
    List<Optional<String>> designs =
        maps.stream().map(map -> design(map.build())).distinct().toList();
    for (Optional<String> design : styles.inOrder(designs)) {
      String of = designs.size() == 1 ? "" : ", " + DesignStyles.name(design);
      key.add(styles.of(design).key("measured" + of));
    }
    return key;
  }

  /** A bar of a round length, at most that many pixels long. */
  private KeyEntry bar(double pixels, int factor, Hue hue, String of) {
    double scale = layout.pixelsPerMetre() * factor / display.scale(Dimension.LENGTH).factor();
    double longest = pixels / scale;
    double decade = Math.pow(10, Math.floor(Math.log10(longest)));
    double length =
        longest >= 5 * decade ? 5 * decade : longest >= 2 * decade ? 2 * decade : decade;
    String text =
        BigDecimal.valueOf(length).stripTrailingZeros().toPlainString()
            + " "
            + display.symbol(Dimension.LENGTH)
            + " "
            + of;
    return new KeyEntry.Measure(length * scale, hue, text);
  }

  private Panel panel(RingResult map, Box box) {
    String note = isWall() ? captions.deviations(map) : captions.rms(map);
    return new Panel(
        box,
        map.build().name(),
        note,
        new Axis("", layout.left(), layout.right(), Axis.Ticks.NONE),
        new Axis("", layout.bottom(), layout.top(), Axis.Ticks.NONE),
        0,
        0,
        marks(map));
  }

  private List<ChartMark> marks(RingResult map) {
    List<ChartMark> marks = new ArrayList<>(guides(map));
    Style style = styles.of(design(map.build()));
    double up = up(map.build(), map.ring());
    List<ChartPoint> meant = new ArrayList<>();
    List<ChartPoint> found = new ArrayList<>();
    for (HoleError hole : map.holes()) {
      meant.add(isWall() ? new ChartPoint(hole.intendedAlong(), 0) : onBase(hole, 0));
      found.add(isWall() ? onWall(hole, up) : onBase(hole, times));
    }
    marks.add(new ChartMark.Line(joined(meant, found), style.hue(), Dash.SOLID, 1.5));
    marks.add(new ChartMark.Dots(Points.of(meant), Hue.GREY, Glyph.CIRCLE, Fill.HOLLOW, 9));
    marks.add(new ChartMark.Dots(Points.of(found), style.hue(), style.glyph(), style.fill(), 9));
    if (map.holes().size() > 1) {
      worst(map).ifPresent(index -> marks.add(name(map.holes().get(index), found.get(index))));
    }
    return marks;
  }

  /** A line from each place to the place of the same number, with a break after it. */
  private static Points joined(List<ChartPoint> from, List<ChartPoint> to) {
    List<ChartPoint> joined = new ArrayList<>();
    for (int i = 0; i < from.size(); i++) {
      joined.add(from.get(i));
      joined.add(to.get(i));
      joined.add(new ChartPoint(to.get(i).x(), Double.NaN));
    }
    return Points.of(joined);
  }

  private static Optional<Integer> worst(RingResult map) {
    return Stream.iterate(0, index -> index < map.holes().size(), index -> index + 1)
        .max(Comparator.comparingDouble(index -> map.holes().get(index).deviation()));
  }

  private static ChartMark name(HoleError hole, ChartPoint where) {
    return new ChartMark.Label(
        List.of(where), "hole " + hole.number(), Hue.BLACK, Weight.PLAIN, Need.IF_ROOM);
  }

  private ChartPoint onWall(HoleError hole, double up) {
    return new ChartPoint(
        hole.intendedAlong() + times * hole.alongError(), up * times * hole.heightError());
  }

  /** Along is tangential, height radial; at the centre, where neither is, they are x and y. */
  private static ChartPoint onBase(HoleError hole, int factor) {
    double x = hole.intendedAlong();
    double y = hole.intendedHeight();
    double radius = radius(hole);
    double along = factor * hole.alongError();
    double out = factor * hole.heightError();
    return radius == 0
        ? new ChartPoint(along, out)
        : new ChartPoint(x + (out * x - along * y) / radius, y + (out * y + along * x) / radius);
  }

  /** Heights from the top rim grow downwards. */
  private double up(Key build, String ring) {
    Optional<Build> built = study.build(build);
    return built.stream()
            .flatMap(it -> IntendedRing.rowsOf(it, study.rings()).stream())
            .filter(row -> row.name().equals(ring))
            .findFirst()
            .flatMap(row -> row.row().value(RingsSheet.DATUM))
            .filter(Datum.TOP_RIM::equals)
            .isPresent()
        ? -1
        : 1;
  }

  private List<ChartMark> guides(RingResult map) {
    if (isWall()) {
      Points line = Points.of(new ChartPoint(0, 0), new ChartPoint(map.extent(), 0));
      return List.of(new ChartMark.Line(line, Hue.PALE, Dash.SOLID, 1.5));
    }
    return map.holes().stream()
        .mapToLong(hole -> Math.round(radius(hole) * 1e6))
        .filter(micrometres -> micrometres > 0)
        .distinct()
        .mapToObj(micrometres -> circle(micrometres / 1e6))
        .toList();
  }

  private static ChartMark circle(double radius) {
    List<ChartPoint> round = new ArrayList<>();
    for (int i = 0; i <= 72; i++) {
      double angle = 2 * Math.PI * i / 72;
      round.add(new ChartPoint(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    return new ChartMark.Line(Points.of(round), Hue.PALE, Dash.SOLID, 1.5);
  }

  private Optional<String> design(Key build) {
    return study.build(build).flatMap(Build::design);
  }
}
