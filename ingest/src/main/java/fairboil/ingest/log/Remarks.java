package fairboil.ingest.log;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Fix;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Severity;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

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

  void error(Place place, Message problem, Message remedy) {
    findings.add(Finding.error(place, problem, remedy));
  }

  void error(Place place, Message problem, Message remedy, Optional<Fix> mend) {
    add(Severity.ERROR, place, problem, remedy, mend);
  }

  void warning(Place place, Message problem, Message remedy) {
    findings.add(Finding.warning(place, problem, remedy));
  }

  void warning(Place place, Message problem, Message remedy, Optional<Fix> mend) {
    add(Severity.WARNING, place, problem, remedy, mend);
  }

  void note(Place place, Message problem) {
    note(place, problem, Message.NONE);
  }

  void note(Place place, Message problem, Message remedy) {
    findings.add(Finding.note(place, problem, remedy));
  }

  void note(Place place, Message problem, Message remedy, Optional<Fix> mend) {
    add(Severity.NOTE, place, problem, remedy, mend);
  }

  private void add(
      Severity severity, Place place, Message problem, Message remedy, Optional<Fix> mend) {
    findings.add(new Finding(severity, place, problem, remedy, mend));
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
