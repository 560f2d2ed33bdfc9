package fairboil.reports.page;

import fairboil.analysis.compare.Comparison;
import fairboil.analysis.compare.Fairness;
import fairboil.analysis.compare.Fairness.Condition;
import fairboil.analysis.compare.Fairness.Group;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.reports.page.view.CellView;
import fairboil.reports.page.view.ColumnView;
import fairboil.reports.page.view.FairnessView;
import fairboil.reports.page.view.TableView;
import fairboil.reports.words.ExcludedWords;
import fairboil.reports.words.FairnessWords;
import fairboil.reports.words.Plural;
import fairboil.reports.words.RunWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/** Whether like was compared with like: the conditions of each thing compared. */
final class FairnessSection {

  /** With more groups than this, groups stand in rows and conditions in columns. */
  private static final int MOST_COLUMNS = 6;

  /** What a fair comparison keeps alike, and so a sheet should tell. */
  private static final List<Column<?>> WANTED =
      List.of(
          RunsSheet.AMBIENT,
          RunsSheet.WIND,
          RunsSheet.SCREEN,
          RunsSheet.WATER,
          RunsSheet.POT,
          RunsSheet.LID,
          RunsSheet.FUEL,
          RunsSheet.FUEL_BATCH,
          RunsSheet.MOISTURE_WET_BASIS,
          RunsSheet.FEED,
          RunsSheet.TESTER,
          RunsSheet.SITE,
          RunsSheet.DATE,
          RunsSheet.STOVE_START,
          RunsSheet.BURN_NUMBER);

  private final Fairness fairness;
  private final FairnessWords words;

  private FairnessSection(Materials from) {
    this.fairness = from.results().fairness();
    this.words = FairnessWords.of(from.results());
  }

  static FairnessView of(Materials from) {
    FairnessSection section = new FairnessSection(from);
    return new FairnessView(
        section.tables(),
        section.remarks(),
        leftOut(from),
        ExcludedWords.sentences(from.results()));
  }

  private List<TableView> tables() {
    List<TableView> tables = new ArrayList<>();
    levels().forEach((level, groups) -> tables.add(table(level, groups, tables.size() + 1)));
    return tables;
  }

  /** The levels of which there are several things; builds only where there are no others. */
  private Map<String, List<Group>> levels() {
    Map<String, List<Group>> levels = new LinkedHashMap<>();
    for (Group group : fairness.groups()) {
      levels.computeIfAbsent(group.level(), unseen -> new ArrayList<>()).add(group);
    }
    levels.values().removeIf(groups -> groups.size() < 2);
    if (levels.size() > 1) {
      levels.remove(Comparison.BUILD);
    }
    return levels;
  }

  private TableView table(String level, List<Group> groups, int number) {
    Map<String, List<String>> rows = new LinkedHashMap<>();
    rows.put("runs that count", each(groups, group -> "" + group.runs()));
    rows.put("boiled", each(groups, group -> group.boiled() + " of " + group.runs()));
    groups.stream()
        .flatMap(group -> group.conditions().stream())
        .map(Condition::column)
        .distinct()
        .forEach(
            column ->
                rows.put(
                    FairnessWords.label(column), each(groups, group -> condition(group, column))));
    String caption = "The runs that count, " + level + " by " + level;
    String id = "conditions-" + number;
    List<String> names = each(groups, Group::name);
    return names.size() <= MOST_COLUMNS
        ? table(id, caption, "condition", names, rows)
        : table(id, caption, level, List.copyOf(rows.keySet()), turned(names, rows));
  }

  private static List<String> each(List<Group> groups, Function<Group, String> get) {
    return groups.stream().map(get).toList();
  }

  private String condition(Group group, String column) {
    return group.conditions().stream()
        .filter(condition -> condition.column().equals(column))
        .findFirst()
        .map(condition -> words.values(condition, group.runs()))
        .orElse("");
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

  private List<String> remarks() {
    List<String> remarks = new ArrayList<>();
    fairness.inseparable().forEach(pair -> remarks.add(words.sentence(pair)));
    fairness.tied().forEach(tied -> remarks.add(FairnessWords.sentence(tied)));
    if (remarks.isEmpty() && !levels().isEmpty()) {
      remarks.add(
          "Nothing recorded sets them wholly apart: in every condition above their runs overlap.");
    }
    List<String> missing = missing();
    if (!missing.isEmpty()) {
      remarks.add(
          "Not recorded in any run, and so not to be compared: " + Plural.list(missing) + ".");
    }
    return remarks;
  }

  private List<String> missing() {
    if (fairness.groups().isEmpty()) {
      return List.of();
    }
    List<String> recorded =
        fairness.groups().stream()
            .flatMap(group -> group.conditions().stream())
            .map(Condition::column)
            .toList();
    return WANTED.stream()
        .map(Column::name)
        .filter(column -> !recorded.contains(column))
        .map(FairnessWords::label)
        .toList();
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
