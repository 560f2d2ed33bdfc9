package fairboil.reports.cli;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.finding.SheetRow;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Findings as a terminal shows them: alike ones taken together, the worst first. */
final class FindingList {

  /** So many findings that differ only in their line are shown as one with a count. */
  private static final int ALIKE = 4;

  private final List<Finding> findings;

  FindingList(List<Finding> findings) {
    this.findings = List.copyOf(findings);
  }

  /** Everything, with the rows that would mend it. */
  void printAll(PrintWriter out) {
    for (List<Finding> alike : grouped(findings)) {
      print(alike, out);
    }
    out.flush();
  }

  /** Errors and warnings only. */
  void printWorst(PrintWriter out) {
    List<Finding> worst =
        findings.stream().filter(finding -> finding.severity() != Severity.NOTE).toList();
    new FindingList(worst).printAll(out);
  }

  /** One sentence with the counts. */
  String summary() {
    if (findings.isEmpty()) {
      return "Nothing to find fault with.";
    }
    return counted(Severity.ERROR)
        + ", "
        + counted(Severity.WARNING)
        + ", "
        + counted(Severity.NOTE)
        + ".";
  }

  ExitStatus status() {
    return count(Severity.ERROR) > 0 ? ExitStatus.LEFT_OUT : ExitStatus.DONE;
  }

  private long count(Severity severity) {
    return findings.stream().filter(finding -> finding.severity() == severity).count();
  }

  private String counted(Severity severity) {
    long n = count(severity);
    return n + " " + severity.label() + (n == 1 ? "" : "s");
  }

  private static List<List<Finding>> grouped(List<Finding> findings) {
    Map<List<String>, List<Finding>> groups = new LinkedHashMap<>();
    for (Finding finding : findings) {
      groups.computeIfAbsent(kind(finding), kind -> new ArrayList<>()).add(finding);
    }
    return List.copyOf(groups.values());
  }

  /** What two findings share that differ only in their line. */
  private static List<String> kind(Finding finding) {
    return List.of(
        finding.severity().label(),
        finding.place().file(),
        finding.place().column().orElse(""),
        finding.problem(),
        finding.remedy());
  }

  private static void print(List<Finding> alike, PrintWriter out) {
    if (alike.size() < ALIKE) {
      alike.forEach(finding -> print(finding, out));
      return;
    }
    Finding first = alike.get(0);
    print(first, out);
    out.println("  … and " + (alike.size() - 1) + " more like it in " + first.place().file());
  }

  private static void print(Finding finding, PrintWriter out) {
    out.println(Terminal.oneLine(finding.toString()));
    finding.mend().ifPresent(row -> out.println("  mend: " + Terminal.oneLine(pasteable(row))));
  }

  /** The row as it would stand in the sheet, with its header so that it is clear what is what. */
  private static String pasteable(SheetRow row) {
    return row.sheet()
        + ": "
        + row.cells().entrySet().stream()
            .map(cell -> cell.getKey() + "=" + cell.getValue())
            .collect(Collectors.joining(", "));
  }
}
