package fairboil.reports.page;

import fairboil.analysis.group.BuildResult;
import fairboil.analysis.group.Summary;
import fairboil.analysis.measure.Measure;
import fairboil.reports.chart.Picture;
import fairboil.reports.page.view.BuildsView;
import fairboil.reports.page.view.CellView;
import fairboil.reports.page.view.ColumnView;
import fairboil.reports.page.view.FigureView;
import fairboil.reports.page.view.TableView;
import fairboil.reports.words.BoilWords;
import fairboil.reports.words.PrecisionWords;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Designs and builds side by side. */
final class BuildsSection {

  private static final List<Measure> HEADLINES =
      List.of(Measure.NORMALISED_BOIL_TIME, Measure.NORMALISED_PEAK);

  private BuildsSection() {}

  static BuildsView of(Materials from) {
    String shown = AnswerSection.chart(from).map(Charts::id).orElse("");
    List<FigureView> figures =
        StudyCharts.all(from, Picture.Kind.BUILDS).stream()
            .filter(figure -> !figure.id().equals(shown))
            .toList();
    return new BuildsView(
        figures,
        table(from),
        ComparisonViews.sentences(from),
        StudyCharts.all(from, Picture.Kind.FOREST),
        ComparisonViews.differences(from),
        ComparisonViews.againstReference(from),
        ComparisonViews.pairs(from),
        ComparisonViews.scatter(from),
        PrecisionWords.of(from.results()).sentences(),
        PrecisionViews.rounds(from));
  }

  private static TableView table(Materials from) {
    List<Measure> measures =
        Stream.concat(HEADLINES.stream(), Arrays.stream(Measure.values()))
            .distinct()
            .filter(
                measure ->
                    from.results().builds().stream()
                        .anyMatch(build -> build.summaries().containsKey(measure)))
            .toList();
    List<ColumnView> columns = new ArrayList<>();
    columns.add(ColumnView.words("build"));
    columns.add(ColumnView.words("design"));
    columns.add(ColumnView.numbers("boiled"));
    for (Measure measure : measures) {
      columns.add(from.cells().column(measure.label(), measure.dimension()));
    }
    return TableView.list(
        "builds-table",
        "Mean of each build over the runs that count, with its interval",
        columns,
        from.results().builds().stream().map(build -> row(from, build, measures)).toList());
  }

  private static List<CellView> row(Materials from, BuildResult build, List<Measure> measures) {
    List<CellView> row = new ArrayList<>();
    row.add(CellView.of(build.build().key().name()));
    row.add(CellView.of(build.build().design().orElse("")));
    row.add(
        CellView.number(
            BoilWords.of(build.boils()),
            build.boils().judged() == 0
                ? 0
                : (double) build.boils().boiled() / build.boils().judged()));
    for (Measure measure : measures) {
      Summary summary = build.summaries().get(measure);
      row.add(summary == null ? CellView.of("") : from.cells().cell(summary, measure.dimension()));
    }
    return row;
  }
}
