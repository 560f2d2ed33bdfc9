package fairboil.reports.chart;

import fairboil.analysis.run.Plateau;
import fairboil.analysis.run.RunResult;
import fairboil.analysis.run.TimedEvent;
import fairboil.analysis.trace.Curve;
import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.reports.chart.ChartMark.Fill;
import fairboil.reports.chart.ChartMark.Need;
import fairboil.reports.chart.ChartMark.Weight;
import fairboil.reports.words.Caption;
import fairboil.reports.words.Display;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** The trace of one run: the flame above, water and air below, over one time axis. */
final class RunChart {

  private static final int PANELS = 330;
  private static final int LANES = 3;
  private static final int LANE = 16;
  private static final int HEADING = 20;
  private static final int LEFT = 14;
  private static final int WIDTH = Sheet.WIDTH - LEFT - 14;
  private static final int TIME_AXIS = 44;

  private final RunResult run;
  private final Display display;
  private final Shown degrees;
  private final Axis time;
  private final List<Curve> flame;
  private final List<Curve> below;

  RunChart(RunResult run, Display display) {
    this.run = run;
    this.display = display;
    this.degrees = new Shown(display, Dimension.TEMPERATURE);
    this.flame = curves(run, Role.FLAME).toList();
    this.below = Stream.concat(curves(run, Role.WATER), curves(run, Role.AMBIENT)).toList();
    this.time = time();
  }

  /** Whether the run has a trace to draw. */
  static boolean canDraw(RunResult run) {
    return Stream.of(Role.FLAME, Role.WATER, Role.AMBIENT)
        .anyMatch(role -> curves(run, role).findAny().isPresent());
  }

  private static Stream<Curve> curves(RunResult run, Role role) {
    return run.sketch().curves().stream()
        .filter(curve -> curve.role() == role)
        .filter(curve -> Arrays.stream(curve.celsius()).anyMatch(Double::isFinite));
  }

  private Axis time() {
    DoubleStream times =
        DoubleStream.concat(
            Stream.concat(flame.stream(), below.stream())
                .flatMapToDouble(curve -> Arrays.stream(curve.seconds())),
            run.timeline().events().stream().mapToDouble(TimedEvent::seconds));
    Range range = Range.of(times.map(RunChart::minutes));
    return range.axis("minutes from the start of the log", Axis.Ticks.NUMBERS, 0.008);
  }

  private static double minutes(double seconds) {
    return seconds / 60;
  }

  Sheet sheet(Caption caption) {
    List<Panel> panels = new ArrayList<>();
    int top = Format.SCREEN.top(caption, List.of()) + LANES * LANE + HEADING;
    int height = top + PANELS;
    int space = PANELS - TIME_AXIS - 6;
    if (flame.isEmpty() || below.isEmpty()) {
      Box box = new Box(LEFT, top, WIDTH, space + TIME_AXIS);
      panels.add(flame.isEmpty() ? water(box, LANES) : flame(box, time));
    } else {
      int upper = (space - HEADING) * 3 / 5;
      int lowerTop = top + upper + HEADING;
      panels.add(flame(new Box(LEFT, top, WIDTH, upper), time.bare()));
      panels.add(water(new Box(LEFT, lowerTop, WIDTH, height - 6 - lowerTop), 0));
    }
    return new Sheet(
        caption.title(), caption.subtitle(), List.of(), panels, Sheet.WIDTH, height, 1);
  }

  private Panel flame(Box box, Axis timeAxis) {
    List<ChartMark> marks = new ArrayList<>(moments(LANES));
    addCurves(marks, flame, Hue.VERMILION, Dash.SOLID, 1.3);
    peak().ifPresent(peak -> addPeak(marks, peak));
    Axis y = temperature("flame", flame, DoubleStream.empty());
    return new Panel(box, y.title(), "", timeAxis, y, 0, LANES, marks);
  }

  private Optional<ChartPoint> peak() {
    return run.flame()
        .peak()
        .ifKnown()
        .flatMap(
            peak ->
                run.flame()
                    .peakAt()
                    .ifKnown()
                    .map(at -> new ChartPoint(minutes(at.value()), degrees.of(peak.value()))));
  }

  private void addPeak(List<ChartMark> marks, ChartPoint peak) {
    marks.add(new ChartMark.Dots(Points.of(peak), Hue.BLACK, Glyph.DIAMOND, Fill.HOLLOW, 11));
    run.flame()
        .peak()
        .ifKnown()
        .ifPresent(
            known ->
                marks.add(
                    new ChartMark.Label(
                        List.of(peak),
                        "peak "
                            + display.value(
                                known.value(), known.standardUncertainty(), known.dimension()),
                        Hue.BLACK,
                        Weight.BOLD,
                        Need.ALWAYS)));
  }

  private Panel water(Box box, int lanes) {
    List<ChartMark> marks = new ArrayList<>(moments(lanes));
    boilingPoint().ifPresent(at -> marks.add(boilingLine(at)));
    addCurves(marks, with(Role.AMBIENT), Hue.GREEN, Dash.DASHED, 1.6);
    addCurves(marks, with(Role.WATER), Hue.BLUE, Dash.SOLID, 2);
    run.sketch().plateau().ifPresent(plateau -> addPlateau(marks, plateau));
    boilingPoint().ifPresent(at -> marks.add(boilingLabel(at)));
    Axis y =
        temperature(heading(), below, boilingPoint().stream().mapToDouble(Double::doubleValue));
    return new Panel(box, y.title(), "", time, y, 0, lanes, marks);
  }

  private String heading() {
    boolean water = !with(Role.WATER).isEmpty();
    boolean air = !with(Role.AMBIENT).isEmpty();
    return water && air ? "water and air" : water ? "water" : "air";
  }

  private List<Curve> with(Role role) {
    return below.stream().filter(curve -> curve.role() == role).toList();
  }

  private Optional<Double> boilingPoint() {
    return with(Role.WATER).isEmpty()
        ? Optional.empty()
        : run.conditions().boilingPoint().ifKnown().map(point -> degrees.of(point.value()));
  }

  private ChartMark boilingLine(double at) {
    Points line = Points.of(new ChartPoint(time.from(), at), new ChartPoint(time.to(), at));
    return new ChartMark.Line(line, Hue.GREY, Dash.DOTTED, 1.2);
  }

  private ChartMark boilingLabel(double at) {
    double held = run.conditions().boilingPoint().orNaN();
    return new ChartMark.Label(
        spread(at),
        "boiling point " + display.value(held, 0.5, Dimension.TEMPERATURE),
        Hue.GREY,
        Weight.PLAIN,
        Need.IF_ROOM);
  }

  /** Places all along the time axis, those at the right first. */
  private List<ChartPoint> spread(double y) {
    List<ChartPoint> spots = new ArrayList<>();
    for (int i = 18; i >= 1; i--) {
      spots.add(new ChartPoint(time.from() + time.length() * i / 20, y));
    }
    return spots;
  }

  /** The line through the last kelvins before the boil, and the plateau that it meets. */
  private void addPlateau(List<ChartMark> marks, Plateau plateau) {
    double boil = minutes(plateau.boilAt());
    double level = degrees.of(plateau.celsius());
    ChartPoint from =
        new ChartPoint(minutes(plateau.lineFrom()), degrees.of(plateau.lineFromCelsius()));
    ChartPoint meeting = new ChartPoint(boil, level);
    ChartPoint to = new ChartPoint(minutes(plateau.plateauTo()), level);
    marks.add(new ChartMark.Line(Points.of(from, meeting, to), Hue.BLACK, Dash.SOLID, 2.2));
    marks.add(new ChartMark.Dots(Points.of(meeting), Hue.BLACK, Glyph.DIAMOND, Fill.HOLLOW, 10));
    run.boil()
        .boilTime()
        .ifKnown()
        .ifPresent(
            time ->
                marks.add(
                    new ChartMark.Label(
                        List.of(meeting),
                        "boil time "
                            + display.value(
                                time.value(), time.standardUncertainty(), time.dimension()),
                        Hue.BLACK,
                        Weight.BOLD,
                        Need.ALWAYS)));
  }

  private Axis temperature(String what, List<Curve> curves, DoubleStream others) {
    DoubleStream values =
        curves.stream().flatMapToDouble(curve -> Arrays.stream(curve.celsius())).map(degrees::of);
    return Range.of(DoubleStream.concat(values, others))
        .axis(degrees.title(what), Axis.Ticks.NUMBERS, 0.06, 0.24);
  }

  private void addCurves(
      List<ChartMark> marks, List<Curve> curves, Hue hue, Dash first, double width) {
    Dash[] dashes = {first, Dash.DOTTED, Dash.DASHED};
    for (int i = 0; i < curves.size(); i++) {
      Points points = points(curves.get(i));
      marks.add(new ChartMark.Line(points, hue, dashes[i % dashes.length], width));
      marks.add(
          new ChartMark.Label(along(points), name(curves, i), hue, Weight.BOLD, Need.IF_ROOM));
    }
  }

  private Points points(Curve curve) {
    return Points.of(
        Arrays.stream(curve.seconds()).map(RunChart::minutes).toArray(),
        Arrays.stream(curve.celsius()).map(degrees::of).toArray());
  }

  private static String name(List<Curve> curves, int index) {
    Curve curve = curves.get(index);
    String role = curve.role() == Role.AMBIENT ? "air" : curve.role().label();
    return curves.size() == 1 ? role : curve.name();
  }

  /** Places along a curve, those near its end first. */
  private static List<ChartPoint> along(Points points) {
    List<ChartPoint> spots = new ArrayList<>();
    for (int i = 18; i >= 1; i--) {
      ChartPoint spot = points.at(points.size() * i / 20);
      if (!Double.isNaN(spot.y())) {
        spots.add(spot);
      }
    }
    return spots.isEmpty() ? List.of(firstOf(points)) : spots;
  }

  private static ChartPoint firstOf(Points points) {
    for (int i = 0; i < points.size(); i++) {
      if (!Double.isNaN(points.at(i).y())) {
        return points.at(i);
      }
    }
    throw new IllegalArgumentException("a curve without a point");
  }

  private List<ChartMark> moments(int lanes) {
    return run.timeline().events().stream()
        .map(
            event ->
                (ChartMark)
                    new ChartMark.Moment(minutes(event.seconds()), lanes == 0 ? "" : event.text()))
        .toList();
  }
}
