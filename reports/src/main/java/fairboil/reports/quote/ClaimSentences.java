package fairboil.reports.quote;

import fairboil.analysis.Results;
import fairboil.analysis.claim.ClaimResult;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.reports.words.ClaimWords;

/** The claims of a study with their verdicts, to be quoted. */
final class ClaimSentences {

  private ClaimSentences() {}

  static String of(Results results, String citation) {
    ClaimWords words = ClaimWords.of(results);
    Markdown text = new Markdown().title("Claims");
    if (results.claims().isEmpty()) {
      return text.paragraph("The study makes no claims.").toString();
    }
    text.paragraph(
        "Quote a claim with its verdict. A claim is supported if the whole interval lies within"
            + " what it says, contradicted if the whole interval lies outside, and not settled"
            + " otherwise: not settled is not the same as false.");
    for (ClaimResult claim : results.claims()) {
      text.heading(claim.claim().key().name());
      claim.claim().row().value(ClaimsSheet.TEXT).ifPresent(text::quotation);
      text.paragraph(words.wording(claim));
      text.paragraph(words.written(claim));
    }
    return text.paragraph("Source: " + citation).toString();
  }
}
