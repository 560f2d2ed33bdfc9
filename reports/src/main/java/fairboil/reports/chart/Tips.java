package fairboil.reports.chart;

import fairboil.analysis.Results;
import fairboil.analysis.effect.BuildPoint;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.figure.Measured;
import fairboil.analysis.group.BuildResult;
import fairboil.analysis.measure.Measure;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.sheet.Key;
import fairboil.reports.chart.ChartMark.Weight;
import fairboil.reports.words.Display;
import fairboil.reports.words.Names;
import fairboil.reports.words.Plural;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What the points of a chart tell: of a burn its run, of a mean its build. */
final class Tips {

  /** A chart of more points is a cloud, in which nobody looks for one. */
  private static final int MOST = 500;

  private static final double BURN = 8;
  private static final double MEAN = 13;
  private static final double OF_A_HOLE = 1.5e-4;

  private final Results results;
  private final Display display;

  Tips(Results results, Display display) {
    this.results = results;
    this.display = display;
  }

  /** A burn that counts for a measure. */
  private record Burn(String run, double value, double uncertainty, Dimension dimension) {

    Burn at(double drawn) {
      return new Burn(run, drawn, uncertainty, dimension);
    }
  }

  /** The sheet of a hole effect, with tips. */
  Sheet on(Sheet sheet, HoleEffect effect) {
    Shown across = new Shown(display, Dimension.LENGTH);
    Shown up = new Shown(display, effect.response().dimension());
    List<ChartMark> tips = new ArrayList<>();
    for (BuildPoint point : effect.points()) {
      double x = across.of(point.holeError());
      String build = "build " + Names.inSentence(point.build().name());
      String at =
          " at "
              + display.value(point.holeError(), OF_A_HOLE, Dimension.LENGTH)
              + " RMS hole error";
      tips.add(
          new ChartMark.Tip(
              new ChartPoint(x, up.of(point.mean())),
              MEAN,
              Plural.sentence(build)
                  + ": mean "
                  + display.value(point.mean(), 3, effect.response().dimension())
                  + " of "
                  + Plural.of(point.burns().length, "burn")
                  + at));
      for (Burn burn : asDrawn(burns(effect.response(), point.build()), point.burns())) {
        tips.add(
            new ChartMark.Tip(
                new ChartPoint(x, up.of(burn.value())), BURN, said(burn) + ", " + build + at));
      }
    }
    return with(sheet, tips);
  }

  /** The sheet of builds side by side, with tips on the rows that bear their names. */
  Sheet on(Sheet sheet, Measure measure, List<BuildResult> builds) {
    Shown along = new Shown(display, measure.dimension());
    List<ChartMark> tips = new ArrayList<>();
    for (BuildResult build : builds) {
      row(sheet, build.build().key()).ifPresent(y -> addRow(tips, build, measure, along, y));
    }
    return with(sheet, tips);
  }

  private void addRow(
      List<ChartMark> tips, BuildResult build, Measure measure, Shown along, double y) {
    String name = "build " + Names.inSentence(build.build().key().name());
    Optional.ofNullable(build.summaries().get(measure))
        .ifPresent(
            summary ->
                tips.add(
                    new ChartMark.Tip(
                        new ChartPoint(along.of(summary.mean()), y),
                        MEAN,
                        Plural.sentence(name)
                            + ": mean "
                            + display.value(
                                summary.mean(),
                                summary.interval().map(Display::uncertainty).orElse(1.0),
                                measure.dimension())
                            + " of "
                            + Plural.of(summary.n(), "burn"))));
    for (Burn burn : burns(measure, build.build().key())) {
      tips.add(
          new ChartMark.Tip(
              new ChartPoint(along.of(burn.value()), y), BURN, said(burn) + ", " + name));
    }
  }

  private static Optional<Double> row(Sheet sheet, Key build) {
    return sheet.panels().get(0).marks().stream()
        .filter(ChartMark.Row.class::isInstance)
        .map(ChartMark.Row.class::cast)
        .filter(row -> row.weight() == Weight.PLAIN && row.left().equals(build.name()))
        .map(ChartMark.Row::y)
        .findFirst();
  }

  private List<Burn> burns(Measure measure, Key build) {
    return results.runs().stream()
        .filter(run -> run.build().key().equals(build))
        .flatMap(
            run ->
                measure.counted(run).stream()
                    .map(known -> burn(run.run().key().name(), known.measured())))
        .toList();
  }

  private static Burn burn(String run, Measured measured) {
    return new Burn(run, measured.value(), measured.standardUncertainty(), measured.dimension());
  }

  /** The burns where they are drawn, in the same order: an effect may have allowed for the air. */
  private static List<Burn> asDrawn(List<Burn> burns, double[] drawn) {
    if (burns.size() != drawn.length) {
      return List.of();
    }
    return IntStream.range(0, drawn.length).mapToObj(i -> burns.get(i).at(drawn[i])).toList();
  }

  private String said(Burn burn) {
    return "Run "
        + Names.inSentence(burn.run())
        + ": "
        + display.value(burn.value(), burn.uncertainty(), burn.dimension());
  }

  private static Sheet with(Sheet sheet, List<ChartMark> tips) {
    if (tips.size() > MOST) {
      return sheet;
    }
    Panel panel = sheet.panels().get(0);
    List<ChartMark> marks = new ArrayList<>(panel.marks());
    marks.addAll(tips);
    return sheet.withFirst(panel.with(marks));
  }
}
