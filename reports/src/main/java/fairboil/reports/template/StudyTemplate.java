package fairboil.reports.template;

import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.BuildsSheet;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.HolesSheet;
import fairboil.ingest.sheet.PotsSheet;
import fairboil.ingest.sheet.ProtocolSheet;
import fairboil.ingest.sheet.RingsSheet;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.SensorsSheet;
import fairboil.ingest.sheet.Settings;
import fairboil.ingest.sheet.SheetSchema;
import fairboil.ingest.sheet.StopwatchSheet;
import fairboil.reports.words.Cautions;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * An empty study to fill in, made from the descriptions of the sheets: each sheet with its header
 * and one example row behind a {@code #}, and a guide that says what every column means.
 */
public final class StudyTemplate {

  /** The name of the guide. */
  public static final String GUIDE = "GUIDE.txt";

  /** Tells spreadsheet programs that the sheet is UTF-8, so that ° and µ come out right. */
  static final String BYTE_ORDER_MARK = "\uFEFF";

  private static final List<SheetSchema> SHEETS =
      List.of(
          RunsSheet.SCHEMA,
          BuildsSheet.SCHEMA,
          RingsSheet.SCHEMA,
          HolesSheet.SCHEMA,
          PotsSheet.SCHEMA,
          StopwatchSheet.SCHEMA,
          SensorsSheet.SCHEMA,
          ClaimsSheet.SCHEMA,
          ProtocolSheet.SCHEMA);

  private StudyTemplate() {}

  /** The files of an empty study: name to text, in the order in which to read them. */
  public static Map<String, String> files() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put(GUIDE, guide());
    files.put(Settings.SCHEMA.file(), settings());
    SHEETS.forEach(sheet -> files.put(sheet.file(), sheet(sheet)));
    return Collections.unmodifiableMap(files);
  }

  private static String settings() {
    StringBuilder text = new StringBuilder(BYTE_ORDER_MARK).append("setting,value\n");
    for (Column<?> setting : Settings.SCHEMA.columns()) {
      text.append("# ").append(setting.name()).append(": ").append(setting.meaning());
      text.append("; example: ").append(setting.example()).append('\n');
      text.append(setting.name()).append(",\n");
    }
    return text.toString();
  }

  private static String sheet(SheetSchema sheet) {
    return sheet(sheet, Map.of());
  }

  /** An empty sheet; some cells of its example are given. */
  static String sheet(SheetSchema sheet, Map<Column<?>, String> given) {
    String header =
        sheet.columns().stream().map(StudyTemplate::header).collect(Collectors.joining(","));
    String example =
        sheet.columns().stream()
            .map(column -> given.containsKey(column) ? quoted(given.get(column)) : example(column))
            .collect(Collectors.joining(","));
    return BYTE_ORDER_MARK + header + "\n# " + example + "\n";
  }

  static String header(Column<?> column) {
    Example example = Example.of(column);
    return quoted(
        example.unit().isEmpty() ? column.name() : column.name() + " (" + example.unit() + ")");
  }

  private static String example(Column<?> column) {
    return quoted(Example.of(column).number());
  }

  static String quoted(String cell) {
    boolean special = cell.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n');
    return special ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
  }

  private static String guide() {
    StringBuilder text = new StringBuilder(Guide.START);
    text.append("\nSETTINGS (").append(Settings.SCHEMA.file()).append(", one a row)\n\n");
    Settings.SCHEMA.columns().forEach(column -> describe(column, text));
    for (SheetSchema sheet : SHEETS) {
      text.append('\n').append(sheet.file()).append(": one row is ").append(sheet.oneRowIs());
      text.append("\n\n");
      sheet.columns().forEach(column -> describe(column, text));
    }
    text.append("\nCAUTIONS\n\n");
    Cautions.POINTS.forEach(point -> text.append("- ").append(point.text()).append('\n'));
    text.append('\n').append(Cautions.RULE).append('\n');
    return text.toString();
  }

  private static void describe(Column<?> column, StringBuilder text) {
    text.append("  ").append(column.name());
    if (column.need() == Column.Need.REQUIRED) {
      text.append(" (needed)");
    }
    text.append(": ").append(column.meaning()).append("; example: ").append(column.example());
    text.append('\n');
  }

  /** An example split into number and unit, so that the unit can stand in the header. */
  private record Example(String number, String unit) {

    static Example of(Column<?> column) {
      String text = column.example();
      int blank = text.indexOf(' ');
      if (column.dimensions().isEmpty() || blank < 0 || !isUnit(text.substring(blank + 1))) {
        return new Example(text, "");
      }
      return new Example(text.substring(0, blank), text.substring(blank + 1));
    }

    private static boolean isUnit(String symbol) {
      for (Unit unit : Unit.values()) {
        if (unit.symbol().equals(symbol)) {
          return true;
        }
      }
      return false;
    }
  }
}
