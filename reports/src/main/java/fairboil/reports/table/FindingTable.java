package fairboil.reports.table;

import static fairboil.reports.table.TableColumn.count;
import static fairboil.reports.table.TableColumn.text;

import fairboil.ingest.finding.Finding;
import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;

/** {@code findings.csv}: what a reader should know of the data. */
final class FindingTable {

  static final TableSchema<Finding> SCHEMA =
      new TableSchema<>(
          "findings.csv",
          "a finding",
          List.of(
              text("severity", "error, warning or note", finding -> finding.severity().label()),
              text("file", "file of the study", finding -> finding.place().file()),
              count("line", "line of the file", finding -> line(finding.place().line())),
              text("column", "column of the file", finding -> finding.place().column().orElse("")),
              text("what", "what is wrong", Finding::problem),
              text("remedy", "what to do about it", Finding::remedy)));

  private FindingTable() {}

  private static OptionalLong line(OptionalInt line) {
    return line.isPresent() ? OptionalLong.of(line.getAsInt()) : OptionalLong.empty();
  }
}
