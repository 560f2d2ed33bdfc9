package fairboil.reports.page;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.finding.SheetRow;
import fairboil.reports.page.view.FindingView;
import fairboil.reports.page.view.Tone;
import fairboil.reports.words.FindingGroup;
import fairboil.reports.words.Plural;
import java.util.List;

/** Findings as the page shows them: alike ones once, with a count. */
final class FindingViews {

  /** As many places of alike findings stand in the open; the rest folds away. */
  private static final int PLACES_IN_THE_OPEN = 3;

  private FindingViews() {}

  static List<FindingView> of(List<Finding> findings) {
    return FindingGroup.of(findings).stream().map(FindingViews::view).toList();
  }

  private static FindingView view(FindingGroup group) {
    List<String> places = group.places().stream().map(Place::toString).toList();
    int open = Math.min(PLACES_IN_THE_OPEN, places.size());
    return new FindingView(
        group.severity().label(),
        tone(group.severity()),
        places.size(),
        sentence(group.problem()),
        sentence(group.remedy()),
        places.subList(0, open),
        places.subList(open, places.size()),
        group.mend().map(FindingViews::lines).orElse(List.of()));
  }

  private static Tone tone(Severity severity) {
    return switch (severity) {
      case ERROR -> Tone.BAD;
      case WARNING -> Tone.LOOK;
      case NOTE -> Tone.QUIET;
    };
  }

  private static String sentence(String clause) {
    return clause.isEmpty() ? "" : Plural.sentence(clause) + ".";
  }

  private static List<String> lines(SheetRow row) {
    return List.of(row.sheet() + ":", row.header(), row.line());
  }
}
