package fairboil.reports.template;

import fairboil.ingest.Study;
import fairboil.ingest.choice.YesNo;
import fairboil.ingest.quantity.Amount;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.BuildsSheet;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.PotsSheet;
import fairboil.ingest.sheet.ProtocolSheet;
import fairboil.ingest.sheet.RingsSheet;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import fairboil.ingest.sheet.SheetSchema;
import fairboil.ingest.sheet.Unread;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * An empty study for a group that repeats the burns of another: the same settings, stoves (marked
 * as shared), rings, pots, protocol and claims; no runs, marks, sensors and holes.
 */
public final class GroupTemplate {

  private static final Pattern BARE_NUMBER = Pattern.compile("[-+−]?[\\d.,\\s]+");

  /** The sheets that are copied. */
  public static final List<SheetSchema> SHEETS =
      List.of(
          Settings.SCHEMA,
          BuildsSheet.SCHEMA,
          RingsSheet.SCHEMA,
          PotsSheet.SCHEMA,
          ClaimsSheet.SCHEMA,
          ProtocolSheet.SCHEMA);

  private GroupTemplate() {}

  /**
   * The files of the group's study: name to text, in the order in which to read them.
   *
   * @param from the study to repeat
   * @param site the group's site
   */
  public static Map<String, String> files(Study from, String site) {
    Map<String, String> files = new LinkedHashMap<>(StudyTemplate.files());
    files.put(Settings.SCHEMA.file(), settings(from.settings()));
    put(
        files,
        BuildsSheet.SCHEMA,
        from.builds().stream().map(it -> shared(it.key().name(), it.row())).toList());
    put(files, RingsSheet.SCHEMA, from.rings().stream().map(ring -> ring.row()).toList());
    put(files, PotsSheet.SCHEMA, from.pots().stream().map(pot -> pot.row()).toList());
    put(files, ClaimsSheet.SCHEMA, from.claims().stream().map(claim -> claim.row()).toList());
    put(files, ProtocolSheet.SCHEMA, from.protocol());
    files.put(
        RunsSheet.SCHEMA.file(),
        StudyTemplate.sheet(RunsSheet.SCHEMA, Map.of(RunsSheet.SITE, site)));
    return Collections.unmodifiableMap(files);
  }

  private static Row shared(String name, Row row) {
    return row.copy()
        .put(BuildsSheet.BUILD, Given.of(name, name, row.place()))
        .put(BuildsSheet.SHARED, Given.of(YesNo.YES, YesNo.YES.label(), row.place()))
        .build();
  }

  /** Settings that the study made; the place and its instruments are the group's own to tell. */
  private static String settings(Row settings) {
    List<Column<?>> own =
        List.of(
            Settings.ALTITUDE,
            Settings.LOSS_COEFFICIENT,
            Settings.SCALE_UNCERTAINTY,
            Settings.STOPWATCH_UNCERTAINTY,
            Settings.HOLE_READING_UNCERTAINTY);
    StringBuilder text = new StringBuilder(StudyTemplate.BYTE_ORDER_MARK).append("setting,value\n");
    for (Column<?> column : Settings.SCHEMA.columns()) {
      boolean told = !own.contains(column);
      text.append("# ").append(column.name()).append(": ").append(column.meaning()).append('\n');
      text.append(column.name()).append(',');
      text.append(told ? StudyTemplate.quoted(cell(settings, column)) : "").append('\n');
    }
    return text.toString();
  }

  private static void put(Map<String, String> files, SheetSchema sheet, List<Row> rows) {
    if (rows.isEmpty()) {
      return;
    }
    StringBuilder text = new StringBuilder(StudyTemplate.BYTE_ORDER_MARK);
    text.append(line(sheet.columns().stream().map(Column::name).toList()));
    for (Row row : rows) {
      text.append(line(sheet.columns().stream().map(column -> cell(row, column)).toList()));
    }
    files.put(sheet.file(), text.toString());
  }

  private static String line(List<String> cells) {
    return String.join(",", cells.stream().map(StudyTemplate::quoted).toList()) + "\n";
  }

  /**
   * A cell as written, with the unit that stood in its header; one that could not be read is not
   * left out, for an empty cell would say something else.
   */
  private static String cell(Row row, Column<?> column) {
    Optional<? extends Given<?>> cell = row.cell(column);
    return cell.map(GroupTemplate::written)
        .or(() -> row.unread(column).map(Unread::written))
        .orElse("");
  }

  private static String written(Given<?> given) {
    Optional<Unit> unit = given.value() instanceof Amount amount ? amount.unit() : given.unit();
    return unit.filter(known -> BARE_NUMBER.matcher(given.written()).matches())
        .map(known -> given.written() + " " + known.symbol())
        .orElse(given.written());
  }
}
