package fairboil.ingest;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.grid.Grid;
import fairboil.ingest.grid.SourceFile;
import fairboil.ingest.grid.StudyFolder;
import fairboil.ingest.grid.UnreadableException;
import fairboil.ingest.grid.workbook.Tab;
import fairboil.ingest.grid.workbook.Workbook;
import fairboil.ingest.sheet.Nearest;
import fairboil.ingest.sheet.SheetSchema;
import java.io.Closeable;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The tabs of {@code study.xlsx}: which of them is which sheet, and what is to be said of them. */
final class WorkbookTabs implements Closeable {

  /** The one workbook that is read. */
  static final String FILE = "study.xlsx";

  private static final String ENDING = ".csv";

  private final Workbook workbook;
  private final Map<String, Tab> tabs = new HashMap<>();
  private final List<Finding> findings = new ArrayList<>();

  private WorkbookTabs(Workbook workbook) {
    this.workbook = workbook;
  }

  /**
   * Opens the workbook.
   *
   * @param name its name as it is on disk
   * @param sheets every sheet that there may be
   * @throws UnreadableException if it cannot be read
   */
  static WorkbookTabs open(StudyFolder folder, String name, List<SheetSchema> sheets)
      throws UnreadableException {
    WorkbookTabs tabs = new WorkbookTabs(Workbook.open(folder, name));
    List<String> known = sheets.stream().map(schema -> key(schema.file())).toList();
    tabs.workbook.tabs().forEach(tab -> tabs.add(tab, known));
    tabs.findings.add(
        Finding.note(Place.of(tabs.source().name()), FileSays.READ_FROM_TABS, Message.NONE));
    return tabs;
  }

  private static String key(String name) {
    String lower = name.strip().toLowerCase(Locale.ROOT);
    return lower.endsWith(ENDING) ? lower.substring(0, lower.length() - ENDING.length()) : lower;
  }

  private void add(Tab tab, List<String> known) {
    Place place = workbook.placeOf(tab);
    if (!known.contains(key(tab.name()))) {
      if (!workbook.isEmpty(tab)) {
        findings.add(stray(tab, place, known));
      }
    } else if (tabs.putIfAbsent(key(tab.name()), tab) != null) {
      findings.add(Finding.error(place, FileSays.SAME_TAB, FileSays.KEEP_ONE));
    } else if (tab.isHidden()) {
      findings.add(Finding.note(place, FileSays.HIDDEN, FileSays.DELETE));
    }
  }

  private static Finding stray(Tab tab, Place place, List<String> known) {
    return Nearest.to(key(tab.name()), known)
        .map(likely -> Finding.warning(place, FileSays.NO_SHEET_TAB, Nearest.didYouMean(likely)))
        .orElseGet(
            () ->
                Finding.note(
                    place,
                    FileSays.NO_SHEET_TAB,
                    FileSays.SHEETS.with(
                        Argument.list(known.stream().map(Argument::word).toList()))));
  }

  /** The tab of a sheet as a grid, if there is one. */
  Optional<Grid> grid(SheetSchema schema) {
    return tab(schema).map(workbook::grid);
  }

  /** Says that a file is read instead of the tab, if there is one. */
  Optional<Finding> insteadOf(SheetSchema schema, String file) {
    return tab(schema)
        .map(
            tab ->
                Finding.error(
                    workbook.placeOf(tab),
                    FileSays.FILE_INSTEAD.with(Argument.name(file)),
                    FileSays.FILE_OR_TAB));
  }

  private Optional<Tab> tab(SheetSchema schema) {
    return Optional.ofNullable(tabs.get(key(schema.file())));
  }

  /** The names of all tabs, in order. */
  List<String> names() {
    return workbook.tabs().stream().map(Tab::name).toList();
  }

  SourceFile source() {
    return workbook.source();
  }

  List<Finding> findings() {
    return findings;
  }

  @Override
  public void close() {
    try {
      workbook.close();
    } catch (IOException e) {
      // it lies in memory: there is nothing to give back
    }
  }
}
