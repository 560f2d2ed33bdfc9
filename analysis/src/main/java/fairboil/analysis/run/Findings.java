package fairboil.analysis.run;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Fix;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import java.util.ArrayList;
import java.util.List;

/** Collects the findings of one run. */
final class Findings {

  private final List<Finding> all = new ArrayList<>();

  void addAll(List<Finding> findings) {
    all.addAll(findings);
  }

  void error(Place place, Message problem, Message remedy) {
    all.add(Finding.error(place, problem, remedy));
  }

  void error(Place place, Message problem, Message remedy, Fix fix) {
    all.add(Finding.error(place, problem, remedy).mendedBy(fix));
  }

  void warning(Place place, Message problem, Message remedy) {
    all.add(Finding.warning(place, problem, remedy));
  }

  void note(Place place, Message problem, Message remedy) {
    all.add(Finding.note(place, problem, remedy));
  }

  List<Finding> sorted() {
    return all.stream().sorted().distinct().toList();
  }
}
