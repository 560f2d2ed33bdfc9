package fairboil.ingest;

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
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the sheets of a study in its folder. The only place that knows that a sheet is a CSV file:
 * a workbook would give its tabs as grids here.
 */
final class SheetFiles {

  private final StudyFolder folder;
  private final List<String> names;
  private final List<SourceFile> sources = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  SheetFiles(StudyFolder folder) {
    this.folder = folder;
    this.names = folder.names("");
  }

  /** The names of the files directly in the folder. */
  List<String> names() {
    return names;
  }

  /** The name of a sheet's file as it is on disk, capital letters aside. */
  Optional<String> file(SheetSchema schema) {
    return Optional.of(schema.file())
        .filter(names::contains)
        .or(() -> names.stream().filter(schema.file()::equalsIgnoreCase).findFirst());
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
    Optional<String> name = file(schema);
    if (name.isEmpty()) {
      return Optional.empty();
    }
    if (!name.get().equals(schema.file())) {
      findings.add(
          Finding.note(
              Place.of(name.get()),
              "this was read as " + schema.file(),
              "rename it, because on other computers capital letters may count"));
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
      throw new UnreadableException(
          Place.of(name), "this sheet could not be read to its end", "copy it again");
    }
  }

  List<SourceFile> sources() {
    return sources;
  }

  List<Finding> findings() {
    return findings;
  }
}
