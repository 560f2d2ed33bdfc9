package fairboil.reports.page;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Severity;
import fairboil.reports.page.view.FindingView;
import fairboil.reports.page.view.Tone;
import fairboil.reports.words.Display;
import fairboil.reports.words.FindingGroup;
import fairboil.reports.words.FindingWords;
import java.util.List;

/** Findings as the page shows them: alike ones once, with a count. */
final class FindingViews {

  /** As many places of alike findings stand in the open; the rest folds away. */
  private static final int PLACES_IN_THE_OPEN = 3;

  private final FindingWords words;

  private FindingViews(FindingWords words) {
    this.words = words;
  }

  static List<FindingView> of(List<Finding> findings, Display display) {
    FindingViews views = new FindingViews(new FindingWords(display));
    return FindingGroup.of(findings).stream().map(views::view).toList();
  }

  private FindingView view(FindingGroup group) {
    List<String> places = group.places().stream().map(Place::toString).toList();
    int open = Math.min(PLACES_IN_THE_OPEN, places.size());
    return new FindingView(
        group.severity().label(),
        tone(group.severity()),
        places.size(),
        words.sentence(group.problem()),
        words.sentence(group.remedy()),
        places.subList(0, open),
        places.subList(open, places.size()),
        group.mend().map(words::fix).orElse(List.of()));
  }

  private static Tone tone(Severity severity) {
    return switch (severity) {
      case ERROR -> Tone.BAD;
      case WARNING -> Tone.LOOK;
      case NOTE -> Tone.QUIET;
    };
  }
}
