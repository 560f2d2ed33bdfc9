package fairboil.reports.page;

import fairboil.analysis.run.RunResult;
import fairboil.reports.page.view.CellView;
import fairboil.reports.page.view.ColumnView;
import fairboil.reports.page.view.FairnessView;
import fairboil.reports.page.view.TableView;
import fairboil.reports.words.Plural;
import fairboil.reports.words.RunWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Whether like was compared with like: the conditions of each design, or else of each build. */
final class FairnessSection {

  /** With more groups than this, groups stand in rows and conditions in columns. */
  private static final int MOST_COLUMNS = 6;

  private FairnessSection() {}

  static FairnessView of(Materials from) {
    Groups groups = Groups.of(from.results());
    List<Condition> recorded = new ArrayList<>();
    List<String> missing = new ArrayList<>();
    for (Condition condition : Conditions.all(from.display())) {
      if (groups.all().stream().anyMatch(condition::isRecorded)) {
        recorded.add(condition);
      } else if (!groups.all().isEmpty()) {
        missing.add(condition.label());
      }
    }
    return new FairnessView(
        table(groups, recorded), remarks(groups, recorded, missing), leftOut(from));
  }

  private static TableView table(Groups groups, List<Condition> conditions) {
    Map<String, List<String>> rows = new LinkedHashMap<>();
    List<List<RunResult>> members = List.copyOf(groups.runs().values());
    rows.put("runs that count", members.stream().map(runs -> "" + runs.size()).toList());
    rows.put("boiled", members.stream().map(FairnessSection::boiled).toList());
    for (Condition condition : conditions) {
      rows.put(condition.label(), members.stream().map(condition::over).toList());
    }
    String caption = "The runs that count, " + groups.kind() + " by " + groups.kind();
    List<String> names = List.copyOf(groups.runs().keySet());
    return names.size() <= MOST_COLUMNS
        ? table(caption, "condition", names, rows)
        : table(caption, groups.kind(), List.copyOf(rows.keySet()), turned(names, rows));
  }

  private static String boiled(List<RunResult> runs) {
    return runs.stream().filter(RunResult::boiled).count() + " of " + runs.size();
  }

  private static TableView table(
      String caption, String corner, List<String> columns, Map<String, List<String>> rows) {
    List<ColumnView> heads = new ArrayList<>();
    heads.add(ColumnView.words(corner));
    columns.forEach(column -> heads.add(ColumnView.words(column)));
    List<List<CellView>> body = new ArrayList<>();
    rows.forEach(
        (name, cells) -> {
          List<CellView> row = new ArrayList<>();
          row.add(CellView.of(name));
          cells.forEach(cell -> row.add(CellView.of(cell)));
          body.add(row);
        });
    return TableView.grid("conditions", caption, heads, body);
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

  private static List<String> remarks(
      Groups groups, List<Condition> recorded, List<String> missing) {
    List<String> remarks = new ArrayList<>();
    if (groups.runs().size() > 1 && groups.runs().size() <= MOST_COLUMNS) {
      recorded.forEach(condition -> condition.apart(groups).ifPresent(remarks::add));
      if (remarks.isEmpty()) {
        remarks.add(
            "Nothing recorded sets the "
                + groups.kind()
                + "s wholly apart: in every condition above their runs overlap.");
      }
    }
    if (!missing.isEmpty()) {
      remarks.add(
          "Not recorded in any run, and so not to be compared: " + Plural.list(missing) + ".");
    }
    return remarks;
  }

  private static TableView leftOut(Materials from) {
    List<List<CellView>> rows = new ArrayList<>();
    for (RunResult run : from.results().runs()) {
      RunWords.exclusion(run.inclusion())
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
        "Left out for a fault of the test, as the sheet says",
        List.of(
            ColumnView.words("run"),
            ColumnView.words("build"),
            ColumnView.words("what"),
            ColumnView.words("reason")),
        rows);
  }
}
