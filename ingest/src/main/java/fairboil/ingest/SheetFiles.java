package fairboil.ingest;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.grid.FileKind;
import fairboil.ingest.grid.Grid;
import fairboil.ingest.grid.SourceFile;
import fairboil.ingest.grid.SourceText;
import fairboil.ingest.grid.StudyFolder;
import fairboil.ingest.grid.UnreadableException;
import fairboil.ingest.grid.csv.CsvGrid;
import fairboil.ingest.sheet.SheetSchema;
import java.io.Closeable;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the sheets of a study in its folder. The only place that knows that a sheet is a CSV file
 * or a tab of {@code study.xlsx}; where it is both, the file is read and the tab is an error.
 */
final class SheetFiles implements Closeable {

  private final StudyFolder folder;
  private final List<String> names;
  private final List<SourceFile> sources = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final Optional<WorkbookTabs> workbook;
  private Optional<Finding> unreadWorkbook = Optional.empty();

  SheetFiles(StudyFolder folder) {
    this.folder = folder;
    this.names = folder.names("");
    this.workbook = named(WorkbookTabs.FILE).flatMap(this::workbook);
  }

  private Optional<WorkbookTabs> workbook(String name) {
    try {
      WorkbookTabs tabs = WorkbookTabs.open(folder, name, StudyReader.SHEETS);
      sources.add(tabs.source());
      return Optional.of(tabs);
    } catch (UnreadableException e) {
      unreadWorkbook = Optional.of(e.finding());
      findings.add(e.finding());
      return Optional.empty();
    }
  }

  /** The names of the files directly in the folder. */
  List<String> names() {
    return names;
  }

  /** The tabs of the workbook, if there is one that can be read. */
  Optional<WorkbookTabs> workbook() {
    return workbook;
  }

  /** Why the workbook cannot be read, if there is one that cannot. */
  Optional<Finding> unreadWorkbook() {
    return unreadWorkbook;
  }

  // The name of a file as it is on disk, capital letters aside.
  private Optional<String> named(String file) {
    return Optional.of(file)
        .filter(names::contains)
        .or(() -> names.stream().filter(file::equalsIgnoreCase).findFirst());
  }

  /** A sheet, or empty if it is not there or cannot be read; a finding says the latter. */
  Optional<Grid> grid(SheetSchema schema) {
    try {
      return read(schema);
    } catch (UnreadableException e) {
      findings.add(e.finding());
      return Optional.empty();
    }
  }

  /**
   * A sheet, or empty if it is not there.
   *
   * @throws UnreadableException if it cannot be read
   */
  Optional<Grid> read(SheetSchema schema) throws UnreadableException {
    Optional<String> name = named(schema.file());
    if (name.isEmpty()) {
      return workbook.flatMap(tabs -> tabs.grid(schema));
    }
    workbook.flatMap(tabs -> tabs.insteadOf(schema, name.get())).ifPresent(findings::add);
    if (!name.get().equals(schema.file())) {
      findings.add(
          Finding.note(
              Place.of(name.get()),
              FileSays.READ_AS.with(Argument.name(schema.file())),
              FileSays.CAPITALS));
    }
    return Optional.of(read(name.get()));
  }

  private Grid read(String name) throws UnreadableException {
    try (SourceText text = folder.open(name, FileKind.SHEET)) {
      Grid grid = CsvGrid.read(text);
      sources.add(text.source());
      return grid;
    } catch (UnreadableException e) {
      throw e;
    } catch (IOException e) {
      throw new UnreadableException(Place.of(name), FileSays.NOT_TO_ITS_END, FileSays.COPY_AGAIN);
    }
  }

  List<SourceFile> sources() {
    return sources;
  }

  /** What a reader should know of the files; complete once every sheet was asked for. */
  List<Finding> findings() {
    List<Finding> all = new ArrayList<>(findings);
    workbook.ifPresent(tabs -> all.addAll(tabs.findings()));
    return all;
  }

  @Override
  public void close() {
    workbook.ifPresent(WorkbookTabs::close);
  }
}
