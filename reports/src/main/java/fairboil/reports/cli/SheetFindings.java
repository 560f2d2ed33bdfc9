package fairboil.reports.cli;

import fairboil.ingest.Study;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.sheet.SheetSchema;
import java.util.List;
import java.util.Locale;

/** What was found in some of the sheets of a study, for commands that use no others. */
final class SheetFindings {

  private SheetFindings() {}

  static List<Finding> of(Study study, List<SheetSchema> sheets) {
    return study.findings().stream()
        .filter(finding -> sheets.stream().anyMatch(sheet -> isIn(finding, sheet)))
        .toList();
  }

  /** A sheet is a file, or the tab of a workbook that is named like it. */
  private static boolean isIn(Finding finding, SheetSchema sheet) {
    String file = finding.place().file().toLowerCase(Locale.ROOT);
    String tab = sheet.file().substring(0, sheet.file().indexOf('.'));
    return file.equals(sheet.file()) || file.endsWith("!" + tab);
  }
}
