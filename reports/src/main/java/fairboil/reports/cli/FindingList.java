package fairboil.reports.cli;

import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Severity;
import fairboil.reports.words.Display;
import fairboil.reports.words.FindingGroup;
import fairboil.reports.words.FindingWords;
import fairboil.reports.words.Plural;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/** Findings as a terminal shows them: alike ones taken together, the worst first. */
final class FindingList {

  /** So many of the places of alike findings are named; the others are counted. */
  private static final int PLACES_BY_NAME = 3;

  private final List<Finding> findings;
  private final FindingWords words;

  FindingList(List<Finding> findings, DisplayUnits units) {
    this(findings, new FindingWords(Display.in(units)));
  }

  private FindingList(List<Finding> findings, FindingWords words) {
    this.findings = List.copyOf(findings);
    this.words = words;
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
    new FindingList(worst, words).printAll(out);
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
  private void print(FindingGroup alike, PrintWriter out) {
    out.println(Terminal.oneLine(places(alike.places()) + ": " + words.sentences(alike)));
    alike.mend().ifPresent(fix -> print(words.fix(fix), out));
  }

  // What to do, then what is to be typed.
  private static void print(List<String> fix, PrintWriter out) {
    String indent = "  ";
    for (String line : fix) {
      out.println(indent + Terminal.oneLine(line));
      indent = "    ";
    }
  }

  private static String places(List<Place> places) {
    List<String> named = new ArrayList<>();
    places.stream().limit(PLACES_BY_NAME).forEach(place -> named.add(place.toString()));
    int more = places.size() - named.size();
    return String.join("; ", named)
        + (more > 0 ? " and " + Plural.of(more, "more place", "more places") : "");
  }
}
