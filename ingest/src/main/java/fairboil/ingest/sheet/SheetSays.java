package fairboil.ingest.sheet;

import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;

/** What is said of the rows, columns and settings of sheets. */
final class SheetSays {

  static final Message EMPTY = Template.of("this sheet is empty").with();
  static final Template FILL =
      Template.of("write a header with the column {word} and rows under it, or delete the file");
  static final Template TITLES =
      Template.of("{count|row above the header was|rows above the header were} left out");
  static final Message START_WITH_HASH = Template.of("start such lines with #").with();
  static final Message SUMMARY =
      Template.of("this row looks like a summary of others, so it was left out").with();
  static final Template TOO_WIDE =
      Template.of(
          "this row has {count|cell} but the header names {count|column}, so it was set aside");
  static final Message QUOTE_OR_HEADER =
      Template.of(
              "put a cell that holds a comma into quotation marks, or give every column a header")
          .with();
  static final Message WIDER_THAN_HEADER =
      Template.of("this row has more cells than the header, so it was set aside").with();
  static final Message QUOTE_CELL =
      Template.of("put a cell that holds a comma into quotation marks").with();

  static final Template ROW_NOT_USED = Template.of("{clause}, so this row is not used");
  static final Template USUAL_VALUE = Template.of("{clause}, so the usual value was used");
  static final Template NO_CELL = Template.of("this row has no {word}, so it was set aside");
  static final Template FILL_CELL = Template.of("fill in the cell: {word}");

  static final Template NO_COLUMN =
      Template.of("there is no column {word}, so {count|row was|rows were} set aside");
  static final Template RENAME = Template.of("rename the column {name} to {word}");
  static final Template ADD_COLUMN = Template.of("add a column headed {word}: {word}");
  static final Message NO_HEADER =
      Template.of("this column has no header, so its cells were left out").with();
  static final Message WRITE_HEADER = Template.of("write a header above them").with();

  static final Template SECOND_COLUMN =
      Template.of("a second column is headed {word}, so it was left out");
  static final Message KEEP_ONE_COLUMN = Template.of("keep one of them, or rename this one").with();
  static final Template WRONG_UNIT = Template.of("{cell} is no unit of {word}");
  static final Template FITTING_UNIT =
      Template.of("write a unit that fits, as in the example {word}");
  static final Template UNKNOWN_UNIT = Template.of("I don't know the unit {cell} in the header");
  static final Message OWN_UNITS =
      Template.of("write the unit into each cell of this column").with();
  static final Template EITHER_UNIT =
      Template.of("{cell} in the header could be a weight or a volume");
  static final Message OUNCES =
      Template.of("write (oz wt) for a weight or (fl oz) for a volume").with();
  static final Message UNIT_IN_FULL = Template.of("write the unit in full in the header").with();
  static final Template SAME_HEADER =
      Template.of("another column has the same header, so this one is called {name}");
  static final Message OWN_HEADERS = Template.of("give each column its own header").with();

  static final Message NO_SETTINGS =
      Template.of(
              "there is no header with the columns setting and value, so the sheet was left out")
          .with();
  static final Message WRITE_SETTINGS =
      Template.of("write setting,value as the first line, and one setting on each line under it")
          .with();
  static final Message QUOTE_VALUE =
      Template.of("put a value that holds a comma into quotation marks").with();
  static final Message VALUE_ALONE = Template.of("this value has no setting").with();
  static final Template UNKNOWN_SETTING =
      Template.of("I don't know the setting {cell}, so it was left out");
  static final Message SEE_SETTINGS =
      Template.of("see the list of settings, or take the row out").with();
  static final Template SET_BEFORE =
      Template.of("{cell} was set before on line {number}, so this row was set aside");
  static final Message KEEP_ONE_ROW = Template.of("keep one of the two rows").with();
  static final Template OF_SETTING = Template.of("{word}: {clause}");
  static final Template USUAL_SETTING =
      Template.of("{word}: {clause}, so the usual value, {word}, was used");
  static final Template NOT_SET = Template.of("{word}: {clause}, so it counts as not set");

  private SheetSays() {}
}
