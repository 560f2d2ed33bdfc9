package fairboil.reports.page;

import fairboil.analysis.run.RunResult;
import fairboil.reports.chart.Picture;
import fairboil.reports.page.view.CellView;
import fairboil.reports.page.view.ColumnView;
import fairboil.reports.page.view.FairnessView;
import fairboil.reports.page.view.FigureView;
import fairboil.reports.page.view.TableView;
import fairboil.reports.words.ExcludedWords;
import fairboil.reports.words.FairnessTable;
import fairboil.reports.words.ProtocolWords;
import fairboil.reports.words.RunWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Whether like was compared with like: the conditions of each thing compared. */
final class FairnessSection {

  /** With more groups than this, groups stand in rows and conditions in columns. */
  private static final int MOST_COLUMNS = 6;

  private FairnessSection() {}

  static FairnessView of(Materials from) {
    List<TableView> tables = new ArrayList<>();
    FairnessTable.of(from.results()).forEach(table -> tables.add(view(table, tables.size() + 1)));
    List<FigureView> normalising = StudyCharts.all(from, Picture.Kind.NORMALISING);
    return new FairnessView(
        tables,
        FairnessTable.remarks(from.results()),
        leftOut(from),
        ExcludedWords.sentences(from.results()),
        ProtocolWords.of(from.results()).sentences(),
        PrecisionViews.notWithin(from),
        normalising);
  }

  private static TableView view(FairnessTable table, int number) {
    String caption = "The runs that count, " + table.level() + " by " + table.level();
    String id = "conditions-" + number;
    List<String> names = table.names();
    Map<String, List<String>> rows = table.conditions();
    return names.size() <= MOST_COLUMNS
        ? table(id, caption, "condition", names, rows)
        : table(id, caption, table.level(), List.copyOf(rows.keySet()), turned(names, rows));
  }

  private static TableView table(
      String id,
      String caption,
      String corner,
      List<String> columns,
      Map<String, List<String>> rows) {
    List<ColumnView> heads =
        Stream.concat(Stream.of(corner), columns.stream()).map(ColumnView::words).toList();
    List<List<CellView>> body = new ArrayList<>();
    rows.forEach(
        (name, cells) ->
            body.add(Stream.concat(Stream.of(name), cells.stream()).map(CellView::of).toList()));
    return TableView.grid(id, caption, heads, body);
  }

  private static Map<String, List<String>> turned(
      List<String> names, Map<String, List<String>> rows) {
    Map<String, List<String>> turned = new LinkedHashMap<>();
    for (int i = 0; i < names.size(); i++) {
      int group = i;
      turned.put(names.get(i), rows.values().stream().map(row -> row.get(group)).toList());
    }
    return turned;
  }

  private static TableView leftOut(Materials from) {
    List<List<CellView>> rows = new ArrayList<>();
    for (RunResult run : from.results().runs()) {
      RunWords.exclusion(run.inclusion(), from.display())
          .ifPresent(
              reason ->
                  rows.add(
                      List.of(
                          CellView.of(run.run().key().name()),
                          CellView.of(run.build().key().name()),
                          CellView.of(RunWords.counts(run.inclusion())),
                          CellView.of(reason))));
    }
    return TableView.list(
        "left-out",
        "Left out for a fault of the test, as the sheet says"
            + (RunWords.anyLost(from.results().runs()) ? ", or because the program failed" : ""),
        List.of(
            ColumnView.words("run"),
            ColumnView.words("build"),
            ColumnView.words("what"),
            ColumnView.words("reason")),
        rows);
  }
}
