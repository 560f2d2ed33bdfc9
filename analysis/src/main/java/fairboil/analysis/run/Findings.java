package fairboil.analysis.run;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.SheetRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Collects the findings of one run. */
final class Findings {

  private final List<Finding> all = new ArrayList<>();

  void addAll(List<Finding> findings) {
    all.addAll(findings);
  }

  void error(Place place, String problem, String remedy) {
    all.add(Finding.error(place, problem, remedy));
  }

  void error(Place place, String problem, String remedy, SheetRow row) {
    all.add(Finding.error(place, problem, remedy).mendedBy(row));
  }

  void warning(Place place, String problem, String remedy) {
    all.add(Finding.warning(place, problem, remedy));
  }

  void note(Place place, String problem, String remedy) {
    all.add(Finding.note(place, problem, remedy));
  }

  List<Finding> sorted() {
    return all.stream().sorted().distinct().toList();
  }

  /** Words with numbers in them, the same whatever the locale. */
  static String words(String format, Object... numbers) {
    return String.format(Locale.ROOT, format, numbers);
  }
}
