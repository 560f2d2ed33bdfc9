package fairboil.reports.page;

import fairboil.analysis.effect.BuildPoint;
import fairboil.analysis.effect.HoleEffect;
import fairboil.ingest.dimension.Dimension;
import fairboil.reports.chart.ChartKey;
import fairboil.reports.chart.Picture;
import fairboil.reports.page.view.CellView;
import fairboil.reports.page.view.ColumnView;
import fairboil.reports.page.view.FigureView;
import fairboil.reports.page.view.TableView;
import fairboil.reports.words.EffectResiduals;
import fairboil.reports.words.EffectWords;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Charts of hole effects, with the points behind them. */
final class EffectCharts {

  private EffectCharts() {}

  /** The chart of an effect, if it was drawn. */
  static Optional<Picture> of(Materials from, HoleEffect effect) {
    return from.chart(key(effect));
  }

  static ChartKey key(HoleEffect effect) {
    return ChartKey.of(Picture.Kind.HOLE_EFFECT, effect);
  }

  /** How far builds and burns lie from the line of an effect, if it has one. */
  static Optional<FigureView> residuals(Materials from, HoleEffect effect) {
    return from.chart(ChartKey.of(Picture.Kind.RESIDUALS, effect))
        .map(picture -> Charts.figure(picture, Optional.of(residuals(from, effect, picture))));
  }

  private static TableView residuals(Materials from, HoleEffect effect, Picture picture) {
    EffectResiduals residuals = EffectResiduals.of(effect);
    Dimension dimension = effect.response().dimension().ofDifference();
    return TableView.list(
        Charts.id(picture) + "-data",
        "How far each build lies above the line",
        List.of(
            ColumnView.words("build"),
            from.cells().column("RMS hole error", Dimension.LENGTH),
            from.cells().column("mean above the line", dimension),
            from.cells().column("each burn", dimension)),
        effect.points().stream()
            .map(
                point ->
                    List.of(
                        CellView.of(point.build().name()),
                        from.cells()
                            .cell(point.holeError(), FigureCells.OF_A_HOLE, Dimension.LENGTH),
                        from.cells().cell(residuals.ofMean(point), 1, dimension),
                        CellView.of(
                            residuals
                                .ofBurns(point)
                                .mapToObj(burn -> from.cells().cell(burn, 1, dimension).text())
                                .collect(Collectors.joining(", ")))))
            .toList());
  }

  static FigureView figure(Materials from, HoleEffect effect, Picture picture) {
    return Charts.figure(picture, Optional.of(points(from, effect, Charts.id(picture) + "-data")));
  }

  private static TableView points(Materials from, HoleEffect effect, String id) {
    Dimension dimension = effect.response().dimension();
    String response = effect.response().label();
    return TableView.list(
        id,
        "Hole error in ring "
            + effect.ring()
            + " and "
            + response
            + " of each build"
            + (EffectWords.isMovedByAir(effect) ? ", moved to the reference air temperature" : ""),
        List.of(
            ColumnView.words("build"),
            ColumnView.words("design"),
            from.cells().column("RMS hole error", Dimension.LENGTH),
            from.cells().column("mean " + response, dimension),
            ColumnView.numbers("burns"),
            from.cells().column("each burn", dimension)),
        effect.points().stream().map(point -> row(from, point, dimension)).toList());
  }

  private static List<CellView> row(Materials from, BuildPoint point, Dimension dimension) {
    double[] burns = point.burns();
    return List.of(
        CellView.of(point.build().name()),
        CellView.of(point.design().orElse("")),
        from.cells().cell(point.holeError(), FigureCells.OF_A_HOLE, Dimension.LENGTH),
        from.cells().cell(point.mean(), 1, dimension),
        FigureCells.count(burns.length),
        CellView.of(
            Arrays.stream(burns)
                .mapToObj(burn -> from.cells().cell(burn, 1, dimension).text())
                .collect(Collectors.joining(", "))));
  }
}
