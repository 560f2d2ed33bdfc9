package fairboil.ingest;

import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;

/** What is said of files and tabs that are not read, or not as they might be. */
final class FileSays {

  static final Message OPEN_ELSEWHERE =
      Template.of("a spreadsheet program has the workbook open").with();
  static final Message SAVE_THERE = Template.of("save it there before it is read here").with();
  static final Template OTHER_WORKBOOK =
      Template.of("of workbooks only {name} is read, so this file was left out");
  static final Template NAME_WORKBOOK =
      Template.of("name it {name} if its tabs are the sheets of this study");
  static final Template WORKBOOK_NOT_READ =
      Template.of("workbooks of this kind are not read, so this file was left out");
  static final Template SAVE_WORKBOOK =
      Template.of(
          "save it as an Excel workbook named {name}, or each of its sheets as CSV, named as"
              + " runs.csv and so on");
  static final Message NO_SHEET = Template.of("I don't know this sheet, so it was left out").with();
  static final Message NOT_NAMED =
      Template.of("no sheet and no run names this file, so it was left out").with();
  static final Template NAME_IF_LOG =
      Template.of("name it in the column log of {sheet} if it is a log");
  static final Template UNREAD_LOG =
      Template.of("no run names this log, so it was left out{clause}");
  static final Template MORE_FILES = Template.of(" ({count|more file} in it)");
  static final Template NAME_LOG = Template.of("name it in the column log of {sheet}");

  static final Message READ_FROM_TABS =
      Template.of("the sheets were read from the tabs of this workbook").with();
  static final Message SAME_TAB =
      Template.of("another tab has this name already, so it was left out").with();
  static final Message KEEP_ONE = Template.of("keep one of them").with();
  static final Message HIDDEN = Template.of("this tab is hidden, but was read").with();
  static final Message DELETE = Template.of("delete it if it is not meant").with();
  static final Message NO_SHEET_TAB =
      Template.of("I don't know a sheet of this name, so the tab was left out").with();
  static final Template SHEETS = Template.of("sheets are {list}");
  static final Template FILE_INSTEAD =
      Template.of(
          "there is a file {name} beside the workbook, which was read, so this tab was left out");
  static final Message FILE_OR_TAB = Template.of("keep one of the two, the file or the tab").with();
  static final Template READ_AS = Template.of("this was read as {name}");
  static final Message CAPITALS =
      Template.of("rename it, because on other computers capital letters may count").with();
  static final Message NOT_TO_ITS_END =
      Template.of("this sheet could not be read to its end").with();
  static final Message COPY_AGAIN = Template.of("copy it again").with();

  private FileSays() {}
}
