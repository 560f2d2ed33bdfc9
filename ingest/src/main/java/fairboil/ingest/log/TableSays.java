package fairboil.ingest.log;

import fairboil.ingest.finding.Template;

/** Why there is no table in a log. */
final class TableSays {

  static final Template EMPTY = Template.of("the file is empty");
  static final Template HEADER_ONLY = Template.of("the file has a header but no data rows");
  static final Template COPY_AGAIN = Template.of("copy the log again from the logger");

  static final Template PAIRS =
      Template.of(
          "each line is a list of names and values, such as T1=23.5, not the row of a table");
  static final Template NAMES_ONCE =
      Template.of(
          "have the logger write the names once, in a first line, and only the values below it,"
              + " with commas between them");

  static final Template NO_TABLE =
      Template.of(
          "no table of times and temperatures was found: no separator gives several lines the same"
              + " number of cells with numbers in them");
  static final Template EXPORT_CSV =
      Template.of("export the log as CSV, one row for each reading, with a time column");

  private TableSays() {}
}
