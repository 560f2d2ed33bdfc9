package fairboil.ingest;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.grid.StudyFolder;
import fairboil.ingest.sheet.Nearest;
import fairboil.ingest.sheet.RunsSheet;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Says in one sentence that a study has no sheet of runs, and what may be meant for it. */
final class NoRuns {

  private static final int SHOWN = 20;

  private static final Pattern WORKBOOK =
      Pattern.compile("[^~.].*\\.(?:xlsx?|xlsm|xlsb|ods|numbers)", Pattern.CASE_INSENSITIVE);

  private static final Pattern NEW_WORKBOOK =
      Pattern.compile(".*\\.xls[xm]", Pattern.CASE_INSENSITIVE);

  private static final Pattern RUN = Pattern.compile("(?i)\\b(?:runs?|burns?|tests?)\\b");

  private NoRuns() {}

  static StudyException in(StudyFolder folder, SheetFiles files) {
    Optional<Finding> unread = files.unreadWorkbook();
    if (unread.isPresent()) {
      return new StudyException(unread.get().toString());
    }
    String file = RunsSheet.SCHEMA.file();
    return new StudyException(
        files
                .workbook()
                .map(tabs -> "There is neither " + file + " nor a tab runs " + inside(folder, tabs))
                .orElseGet(
                    () ->
                        "There is no "
                            + file
                            + " in "
                            + folder.name()
                            + " ("
                            + holds(files)
                            + "): ")
            + remedy(files)
            + ".");
  }

  private static String inside(StudyFolder folder, WorkbookTabs tabs) {
    return "in "
        + WorkbookTabs.FILE
        + " of "
        + folder.name()
        + " (its tabs are "
        + shown(tabs.names())
        + "): ";
  }

  private static String holds(SheetFiles files) {
    return files.names().isEmpty() ? "it holds no files" : "it holds " + shown(files.names());
  }

  private static String shown(List<String> names) {
    return String.join(", ", names.subList(0, Math.min(SHOWN, names.size())))
        + (names.size() > SHOWN ? " and others" : "");
  }

  private static String remedy(SheetFiles files) {
    return files
        .workbook()
        .map(tabs -> "rename " + likelyTab(tabs.names()) + " to runs")
        .or(() -> workbook(files.names()))
        .or(
            () ->
                Nearest.to(RunsSheet.SCHEMA.file(), files.names())
                    .map(
                        likely -> "rename " + likely + " to runs.csv if that is the sheet of runs"))
        .orElse("make one with the columns run and build, or give the right folder");
  }

  private static String likelyTab(List<String> names) {
    return Nearest.to("runs", names)
        .or(() -> names.stream().filter(name -> RUN.matcher(name).find()).findFirst())
        .orElse(names.size() == 1 ? names.get(0) : "the tab with the runs");
  }

  private static Optional<String> workbook(List<String> names) {
    return names.stream()
        .filter(name -> WORKBOOK.matcher(name).matches())
        .findFirst()
        .map(name -> renaming(name) + " and its sheet of runs to runs, or save that as runs.csv");
  }

  private static String renaming(String name) {
    return NEW_WORKBOOK.matcher(name).matches()
        ? "rename " + name + " to " + WorkbookTabs.FILE
        : "save " + name + " as an Excel workbook, rename it to " + WorkbookTabs.FILE;
  }
}
