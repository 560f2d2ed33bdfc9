package fairboil.ingest;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.SheetRow;
import fairboil.ingest.grid.StudyFolder;
import fairboil.ingest.sheet.Nearest;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Tells of files in a study that look as if they were meant to be read but were not. */
final class UnreadFiles {

  private static final int SHOWN = 10;

  private final Set<String> read = new HashSet<>();
  private final List<Finding> findings = new ArrayList<>();

  private UnreadFiles() {}

  /**
   * Looks through a study folder.
   *
   * @param sheets the file names of all sheets that there may be
   */
  static List<Finding> find(StudyFolder folder, List<String> sheets, List<Run> runs) {
    UnreadFiles files = new UnreadFiles();
    List<String> logs = folder.names("logs");
    Set<String> there = logs.stream().map(UnreadFiles::lower).collect(Collectors.toSet());
    runs.forEach(run -> files.reads(run, there));
    folder.names("").forEach(name -> files.inStudy(name, sheets));
    files.inLogs(logs, runs);
    return files.findings;
  }

  private void reads(Run run, Set<String> logs) {
    String name =
        run.row().value(RunsSheet.LOG).orElseGet(() -> "logs/" + usual(run.key().name(), logs));
    read.add(lower(name.replace('\\', '/').replaceFirst("^(?:\\./)+", "")));
  }

  private static String usual(String run, Set<String> logs) {
    return logs.contains(lower(run) + ".csv") ? run + ".csv" : run + ".xlsx";
  }

  private static String lower(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  private void inStudy(String name, List<String> sheets) {
    String lower = lower(name);
    boolean isRead =
        sheets.contains(lower) || lower.equals(WorkbookTabs.FILE) || read.contains(lower);
    if (isRead || lower.startsWith(".")) {
      return;
    }
    if (lower.startsWith("~$")) {
      findings.add(
          Finding.note(
              Place.of(name),
              "a spreadsheet program has the workbook open",
              "save it there before it is read here"));
    } else if (lower.matches(".*\\.(?:xlsx|xlsm)")) {
      findings.add(
          Finding.warning(
              Place.of(name),
              "of workbooks only " + WorkbookTabs.FILE + " is read, so this file was left out",
              "name it " + WorkbookTabs.FILE + " if its tabs are the sheets of this study"));
    } else if (lower.matches(".*\\.(?:xls|xlsb|ods|numbers)")) {
      findings.add(
          Finding.warning(
              Place.of(name),
              "workbooks of this kind are not read, so this file was left out",
              "save it as an Excel workbook named "
                  + WorkbookTabs.FILE
                  + ", or each of its sheets as CSV, named as runs.csv and so on"));
    } else if (lower.matches(".*\\.(?:csv|tsv|txt)") && !lower.matches("(?:readme|guide).*")) {
      findings.add(stray(name, sheets));
    }
  }

  private static Finding stray(String name, List<String> sheets) {
    return Nearest.to(name, sheets)
        .map(
            likely ->
                Finding.warning(
                    Place.of(name),
                    "this is not a sheet that is known here, so it was left out",
                    "did you mean " + likely + "?"))
        .orElseGet(
            () ->
                Finding.note(
                    Place.of(name),
                    "no sheet and no run names this file, so it was left out",
                    "name it in the column log of runs.csv if it is a log"));
  }

  private void inLogs(List<String> logs, List<Run> runs) {
    List<String> unread =
        logs.stream()
            .filter(name -> !name.startsWith(".") && !read.contains(lower("logs/" + name)))
            .toList();
    unread.stream().limit(SHOWN).forEach(name -> findings.add(unreadLog(name, runs)));
    if (unread.size() > SHOWN) {
      int more = unread.size() - SHOWN;
      findings.add(unreadLog("logs", " (" + more + " more files in it)"));
    }
  }

  /**
   * The row of the run that it looks to be of is given too: 1 of build tin one for tin_one 1.csv.
   */
  private static Finding unreadLog(String name, List<Run> runs) {
    Finding finding = unreadLog("logs/" + name, "");
    String called = plain(name.replaceFirst("\\.[A-Za-z]+$", ""));
    return runs.stream()
        .filter(run -> names(run).contains(called))
        .findFirst()
        .map(run -> finding.mendedBy(row(run, "logs/" + name)))
        .orElse(finding);
  }

  private static Set<String> names(Run run) {
    String name = run.row().get(RunsSheet.RUN);
    String build = run.build().name();
    return Set.copyOf(
        List.of(plain(name), plain(build + name), plain(name + build), plain(run.key().name())));
  }

  private static String plain(String name) {
    return lower(name).replaceAll("[^\\p{L}\\p{N}]+", "");
  }

  private static SheetRow row(Run run, String log) {
    Map<String, String> cells = new LinkedHashMap<>();
    cells.put(RunsSheet.RUN.name(), run.row().get(RunsSheet.RUN));
    cells.put(RunsSheet.BUILD.name(), run.build().name());
    cells.put(RunsSheet.LOG.name(), log);
    return SheetRow.of(RunsSheet.SCHEMA.file(), cells);
  }

  private static Finding unreadLog(String name, String which) {
    return Finding.note(
        Place.of(name),
        "no run names this log, so it was left out" + which,
        "name it in the column log of runs.csv");
  }
}
