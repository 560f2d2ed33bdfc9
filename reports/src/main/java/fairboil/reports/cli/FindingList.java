package fairboil.reports.cli;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.finding.SheetRow;
import fairboil.reports.words.FindingGroup;
import fairboil.reports.words.Plural;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/** Findings as a terminal shows them: alike ones taken together, the worst first. */
final class FindingList {

  /** So many of the places of alike findings are named; the others are counted. */
  private static final int PLACES_BY_NAME = 3;

  private final List<Finding> findings;

  FindingList(List<Finding> findings) {
    this.findings = List.copyOf(findings);
  }

  /** Everything, with the rows that would mend it. */
  void printAll(PrintWriter out) {
    FindingGroup.of(findings).forEach(alike -> print(alike, out));
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

  /** Alike findings as one line: the first places by name, the others as a count. */
  private static void print(FindingGroup alike, PrintWriter out) {
    Place first = alike.places().get(0);
    Finding finding =
        new Finding(alike.severity(), first, alike.problem(), alike.remedy(), alike.mend());
    String said = finding.toString().substring(first.toString().length());
    out.println(Terminal.oneLine(places(alike.places()) + said));
    alike.mend().ifPresent(row -> print(row, out));
  }

  private static String places(List<Place> places) {
    List<String> named = new ArrayList<>();
    places.stream().limit(PLACES_BY_NAME).forEach(place -> named.add(place.toString()));
    int more = places.size() - named.size();
    return String.join("; ", named)
        + (more > 0 ? " and " + Plural.of(more, "more place", "more places") : "");
  }

  /** The row as it would stand in the sheet, with its header so that it is clear what is what. */
  private static void print(SheetRow row, PrintWriter out) {
    out.println("  a row for " + Terminal.oneLine(row.sheet()) + " that mends it:");
    out.println("    " + Terminal.oneLine(row.header()));
    out.println("    " + Terminal.oneLine(row.line()));
  }
}
