package fairboil.ingest.log;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.SheetRow;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Collects the findings on one log. For one thread. */
final class Remarks {

  private static final Comparator<Finding> BY_PLACE =
      Comparator.comparing(Finding::place).thenComparing(Comparator.naturalOrder());

  private final Place file;
  private final List<Finding> findings = new ArrayList<>();

  Remarks(Place file) {
    this.file = file;
  }

  Place file() {
    return file;
  }

  Place line(int line) {
    return line < 1 ? file : Place.of(file.file(), line);
  }

  Place cell(int line, String column) {
    return line(line).column(column);
  }

  void error(Place place, String problem, String remedy) {
    findings.add(Finding.error(place, problem, remedy));
  }

  void error(Place place, String problem, String remedy, SheetRow mend) {
    findings.add(Finding.error(place, problem, remedy).mendedBy(mend));
  }

  void warning(Place place, String problem, String remedy) {
    findings.add(Finding.warning(place, problem, remedy));
  }

  void warning(Place place, String problem, String remedy, SheetRow mend) {
    findings.add(Finding.warning(place, problem, remedy).mendedBy(mend));
  }

  void note(Place place, String problem, String remedy) {
    findings.add(Finding.note(place, problem, remedy));
  }

  void note(Place place, String problem, String remedy, SheetRow mend) {
    findings.add(Finding.note(place, problem, remedy).mendedBy(mend));
  }

  void add(Finding finding) {
    findings.add(finding);
  }

  void addAll(Collection<Finding> more) {
    findings.addAll(more);
  }

  /** The findings in order of place, each once. */
  List<Finding> sorted() {
    return findings.size() < 2
        ? List.copyOf(findings)
        : findings.stream().distinct().sorted(BY_PLACE).toList();
  }
}
