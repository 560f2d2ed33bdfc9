package fairboil.reports.quote;

import java.util.List;

/** What is in the kit, for those who open it. */
final class About {

  static final String TEXT =
      new Markdown()
          .title("For those who write about this study")
          .list(
              List.of(
                  "charts: every chart of the study for print, 175 mm wide (a page) and, where it"
                      + " can be drawn so narrow, 85 mm wide (a column). PNG at 300 dots an inch;"
                      + " PDF as lines and curves, to be enlarged at will; PNG in greys, a grey for"
                      + " each colour, as a proof of how it prints without colours.",
                  "charts, files ending in .txt: the caption of each chart. Print at least what it"
                      + " shows, the number of builds and burns, and the confidence of intervals.",
                  "claims.md: the claims of the study with their verdicts.",
                  "critic.md: what a critic may ask, answered: what was left out and whether it"
                      + " matters, what failed, whether like was compared with like, when each"
                      + " claim was written down.",
                  "citation.txt: the line by which others can tell which data are meant. Put your"
                      + " own names before it.",
                  "data.zip: the data as they were read, and the command that makes the report"
                      + " anew."))
          .paragraph(
              "Burn stoves outdoors only. Nothing here measures carbon monoxide or smoke, and no"
                  + " result says that a stove is safe: say so where you quote it.")
          .toString();

  private About() {}
}
