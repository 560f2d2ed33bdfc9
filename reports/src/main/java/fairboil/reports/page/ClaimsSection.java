package fairboil.reports.page;

import fairboil.analysis.claim.ClaimResult;
import fairboil.analysis.claim.ClaimResult.Verdict;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.reports.page.view.CellView;
import fairboil.reports.page.view.ClaimView;
import fairboil.reports.page.view.Tone;
import fairboil.reports.words.ClaimWords;
import java.util.List;

/** The claims and their verdicts. */
final class ClaimsSection {

  private ClaimsSection() {}

  static List<ClaimView> of(Materials from) {
    ClaimWords words = ClaimWords.of(from.results());
    return from.results().claims().stream().map(claim -> view(claim, words)).toList();
  }

  private static ClaimView view(ClaimResult claim, ClaimWords words) {
    return new ClaimView(
        claim.claim().key().name(),
        claim.claim().row().value(ClaimsSheet.TEXT).orElse(""),
        CellView.badge(claim.verdict().label(), tone(claim.verdict())),
        words.wording(claim),
        ClaimWords.written(claim));
  }

  private static Tone tone(Verdict verdict) {
    return switch (verdict) {
      case SUPPORTED -> Tone.GOOD;
      case CONTRADICTED -> Tone.BAD;
      case NOT_SETTLED -> Tone.OPEN;
      case NOT_TESTABLE -> Tone.QUIET;
    };
  }
}
