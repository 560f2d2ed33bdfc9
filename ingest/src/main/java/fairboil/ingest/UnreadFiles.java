package fairboil.ingest;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.CellFix;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.grid.StudyFolder;
import fairboil.ingest.sheet.Nearest;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Tells of files in a study that look as if they were meant to be read but were not. */
final class UnreadFiles {

  private static final int SHOWN = 10;

  private static final Argument WORKBOOK = Argument.name(WorkbookTabs.FILE);
  private static final Argument RUNS = Argument.sheet(RunsSheet.SCHEMA.file());

  private final StudyFolder folder;
  private final Set<String> read = new HashSet<>();
  private final List<Finding> findings = new ArrayList<>();

  private UnreadFiles(StudyFolder folder) {
    this.folder = folder;
  }

  /**
   * Looks through a study folder.
   *
   * @param sheets the file names of all sheets that there may be
   */
  static List<Finding> find(StudyFolder folder, List<String> sheets, List<Run> runs) {
    UnreadFiles files = new UnreadFiles(folder);
    List<String> logs = folder.names("logs");
    Set<String> there = logs.stream().map(UnreadFiles::lower).collect(Collectors.toSet());
    runs.forEach(run -> files.reads(run, there));
    folder.names("").forEach(name -> files.inStudy(name, sheets));
    files.inLogs(logs, runs);
    return files.findings;
  }

  private void reads(Run run, Set<String> logs) {
    String name = log(run, logs);
    read.add(lower(name.replace('\\', '/').replaceFirst("^(?:\\./)+", "")));
  }

  private static String log(Run run, Set<String> logs) {
    return run.row().value(RunsSheet.LOG).orElseGet(() -> "logs/" + usual(run.key().name(), logs));
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
      findings.add(Finding.note(Place.of(name), FileSays.OPEN_ELSEWHERE, FileSays.SAVE_THERE));
    } else if (lower.matches(".*\\.(?:xlsx|xlsm)")) {
      findings.add(
          Finding.warning(
              Place.of(name),
              FileSays.OTHER_WORKBOOK.with(WORKBOOK),
              FileSays.NAME_WORKBOOK.with(WORKBOOK)));
    } else if (lower.matches(".*\\.(?:xls|xlsb|ods|numbers)")) {
      findings.add(
          Finding.warning(
              Place.of(name),
              FileSays.WORKBOOK_NOT_READ.with(),
              FileSays.SAVE_WORKBOOK.with(WORKBOOK)));
    } else if (lower.matches(".*\\.(?:csv|tsv|txt)") && !lower.matches("(?:readme|guide).*")) {
      findings.add(stray(name, sheets));
    }
  }

  private static Finding stray(String name, List<String> sheets) {
    return Nearest.to(name, sheets)
        .map(
            likely ->
                Finding.warning(Place.of(name), FileSays.NO_SHEET, Nearest.didYouMean(likely)))
        .orElseGet(
            () ->
                Finding.note(Place.of(name), FileSays.NOT_NAMED, FileSays.NAME_IF_LOG.with(RUNS)));
  }

  private void inLogs(List<String> logs, List<Run> runs) {
    List<String> unread =
        logs.stream()
            .filter(name -> !name.startsWith(".") && !read.contains(lower("logs/" + name)))
            .toList();
    unread.stream().limit(SHOWN).forEach(name -> findings.add(unreadLog(name, runs)));
    if (unread.size() > SHOWN) {
      int more = unread.size() - SHOWN;
      findings.add(unreadLog("logs", FileSays.MORE_FILES.with(Argument.count(more))));
    }
  }

  /**
   * The row of the run that it looks to be of is given too, 1 of build tin one for tin_one 1.csv,
   * unless that run has a log.
   */
  private Finding unreadLog(String name, List<Run> runs) {
    Finding finding = unreadLog("logs/" + name, Message.NONE);
    String called = plain(name.replaceFirst("\\.[A-Za-z]+$", ""));
    return runs.stream()
        .filter(run -> names(run).contains(called))
        .filter(run -> folder.find(log(run, Set.of())).isEmpty())
        .findFirst()
        .map(run -> finding.mendedBy(log(run, "logs/" + name)))
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

  private static CellFix log(Run run, String log) {
    return new CellFix(run.row().place(), Map.of(RunsSheet.LOG.name(), Argument.name(log)));
  }

  private static Finding unreadLog(String name, Message which) {
    return Finding.note(
        Place.of(name),
        FileSays.UNREAD_LOG.with(Argument.clause(which)),
        FileSays.NAME_LOG.with(RUNS));
  }
}
