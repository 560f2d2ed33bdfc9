package fairboil.reports.table;

import static fairboil.reports.table.TableColumn.count;
import static fairboil.reports.table.TableColumn.text;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.reports.words.Display;
import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;

/** {@code findings.csv}: what a reader should know of the data. */
final class FindingTable {

  /** A finding, and the units that it is told in. */
  record Row(Finding finding, Display display) {

    private Place place() {
      return finding.place();
    }
  }

  static final TableSchema<Row> SCHEMA =
      new TableSchema<>(
          "findings.csv",
          "a finding",
          List.of(
              text("severity", "error, warning or note", row -> row.finding().severity().label()),
              text("file", "file of the study", row -> row.place().file()),
              count("line", "line of the file", row -> line(row.place().line())),
              text("column", "column of the file", row -> row.place().column().orElse("")),
              text("what", "what is wrong", row -> row.display().say(row.finding().problem())),
              text(
                  "remedy",
                  "what to do about it",
                  row -> row.display().say(row.finding().remedy()))));

  private FindingTable() {}

  static List<Row> rows(List<Finding> findings, Display display) {
    return findings.stream().map(finding -> new Row(finding, display)).toList();
  }

  private static OptionalLong line(OptionalInt line) {
    return line.isPresent() ? OptionalLong.of(line.getAsInt()) : OptionalLong.empty();
  }
}
