package fairboil.reports.words;

import fairboil.analysis.Results;
import fairboil.analysis.compare.Comparison;
import fairboil.analysis.compare.Fairness;
import fairboil.analysis.compare.Fairness.Condition;
import fairboil.analysis.compare.Fairness.Group;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.RunsSheet;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The conditions of things that are compared, side by side.
 *
 * @param level what kind of thing is compared
 * @param names the things
 * @param conditions for each condition its values, one a thing; unmodifiable, in order
 */
public record FairnessTable(
    String level, List<String> names, Map<String, List<String>> conditions) {

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

  /** Copies the lists. */
  public FairnessTable {
    names = List.copyOf(names);
    conditions = Collections.unmodifiableMap(new LinkedHashMap<>(conditions));
  }

  /** A table for each kind of thing of which there are several; builds only for want of others. */
  public static List<FairnessTable> of(Results results) {
    FairnessWords words = FairnessWords.of(results);
    List<FairnessTable> tables = new ArrayList<>();
    levels(results.fairness()).forEach((level, groups) -> tables.add(table(level, groups, words)));
    return List.copyOf(tables);
  }

  private static Map<String, List<Group>> levels(Fairness fairness) {
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

  private static FairnessTable table(String level, List<Group> groups, FairnessWords words) {
    Map<String, List<String>> rows = new LinkedHashMap<>();
    rows.put("runs that count", each(groups, group -> "" + group.runs()));
    rows.put("boiled", each(groups, group -> BoilWords.of(group.boils())));
    groups.stream()
        .flatMap(group -> group.conditions().stream())
        .map(Condition::column)
        .distinct()
        .forEach(
            column ->
                rows.put(
                    FairnessWords.label(column),
                    each(groups, group -> condition(group, column, words))));
    return new FairnessTable(level, each(groups, Group::name), rows);
  }

  private static List<String> each(List<Group> groups, Function<Group, String> get) {
    return groups.stream().map(get).toList();
  }

  private static String condition(Group group, String column, FairnessWords words) {
    return group.conditions().stream()
        .filter(condition -> condition.column().equals(column))
        .findFirst()
        .map(condition -> words.values(condition, group.runs()))
        .orElse("");
  }

  /** What cannot be told apart, and what was not recorded, in sentences. */
  public static List<String> remarks(Results results) {
    Fairness fairness = results.fairness();
    FairnessWords words = FairnessWords.of(results);
    List<String> remarks = new ArrayList<>();
    fairness.inseparable().forEach(pair -> remarks.add(words.sentence(pair)));
    fairness.tied().forEach(tied -> remarks.add(FairnessWords.sentence(tied)));
    if (remarks.isEmpty() && !levels(fairness).isEmpty()) {
      remarks.add(
          "Nothing recorded sets them wholly apart: in every condition above their runs overlap.");
    }
    List<String> missing = missing(fairness);
    if (!missing.isEmpty()) {
      remarks.add(
          "Not recorded in any run, and so not to be compared: " + Plural.list(missing) + ".");
    }
    return remarks;
  }

  private static List<String> missing(Fairness fairness) {
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
}
