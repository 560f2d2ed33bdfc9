package fairboil.reports.print;

import fairboil.ingest.Study;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.sheet.Ring;
import fairboil.ingest.sheet.Settings;
import fairboil.reports.words.Display;
import fairboil.reports.words.FindingWords;
import java.util.ArrayList;
import java.util.List;

/**
 * Rings that are not drawn, because something that was given of them could not be read: a guess on
 * paper ends up as holes in a can.
 *
 * @param study the study
 * @param rings the rows that could not be read; unmodifiable
 */
record Undrawn(Study study, List<Ring> rings) {

  /** Copies the rows. */
  Undrawn {
    rings = List.copyOf(rings);
  }

  /** Those of some rows that could not be read. */
  static Undrawn of(Study study, List<Ring> rows) {
    return new Undrawn(study, rows.stream().filter(ring -> !ring.isLegible()).toList());
  }

  boolean isEmpty() {
    return rings.isEmpty();
  }

  /**
   * Whether a ring of that name is not drawn. Rows of one name on a base number their holes on, so
   * that none of them can be drawn without the others.
   */
  boolean has(String name) {
    return rings.stream().anyMatch(ring -> ring.name().equals(name));
  }

  /** {@code ring upper and ring lower}. */
  String names() {
    return RingWords.listed(rings.stream().map(ring -> "ring " + ring.name()).distinct().toList());
  }

  /** What a terminal says besides which cells could not be read. */
  List<Finding> findings() {
    return rings.stream().map(Undrawn::finding).toList();
  }

  private static Finding finding(Ring ring) {
    return Finding.error(
        ring.row().illegible().get(0).finding().place(),
        PrintSays.NOT_DRAWN.with(Argument.name(ring.name())),
        PrintSays.PRINT_AGAIN.with());
  }

  /**
   * What the paper says.
   *
   * @param owners for which builds the rings are, in words
   */
  List<String> sentences(String owners) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "Not drawn: "
            + names()
            + " for "
            + owners
            + ". What the sheet says of it could not be read, and nothing was guessed. Mend the"
            + " cell and print again; do not mark holes until then.");
    List<Finding> cells =
        rings.stream()
            .flatMap(ring -> ring.row().illegible().stream())
            .map(it -> it.finding())
            .toList();
    FindingWords words = new FindingWords(Display.in(study.settings().get(Settings.SHOW_UNITS)));
    study.told(cells).forEach(finding -> sentences.add(words.line(finding)));
    return sentences;
  }

  /** The file in place of a strip or a disc. */
  byte[] file(FormHead head, String owners, Typefaces typefaces) {
    return Booklet.of(
        head,
        typefaces,
        booklet -> {
          Flow flow =
              new Flow(booklet, head, head.paper().label(), "Nothing to cut out or to mark.");
          sentences(owners).forEach(text -> flow.paragraph(text, Type.BODY));
        });
  }
}
