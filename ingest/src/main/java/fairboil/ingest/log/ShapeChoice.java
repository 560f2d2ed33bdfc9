package fairboil.ingest.log;

import fairboil.ingest.finding.Place;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Chooses what parts the cells of a log. Of marks, it is the one that gives most rows the same
 * number of cells, with numbers and times in them. Where blanks part cells too, stamps and texts
 * fall apart and rows seem to hold more data: that may win only if the header falls apart with
 * them.
 */
final class ShapeChoice {

  // A way that is as good but for this share is not better than one tried before it.
  private static final double CLEARLY = 1.02;

  // Whose header agrees wins over one that seems to hold more data, while it has this share of it.
  private static final double ENOUGH = 0.6;

  // Where marks part rows well, a header that fits only what blanks make of them is chance.
  private static final double WELL = 0.8;

  private record Candidate(TableShape shape, double score, HeaderFit fit) {

    boolean agrees() {
      return fit == HeaderFit.AGREES;
    }

    boolean clearlyBeats(Candidate other) {
      return score > other.score * CLEARLY;
    }
  }

  private ShapeChoice() {}

  /** The table in the head of a log, or empty if there is none. */
  static Optional<TableShape> find(Place file, Head head) throws IOException {
    List<Candidate> marks = new ArrayList<>();
    List<Candidate> blanks = new ArrayList<>();
    for (Separator separator : Separator.values()) {
      if (head.contains(separator.mark()) || separator.collapses()) {
        ShapeFinder finder = ShapeFinder.of(file, head, separator);
        Optional<Candidate> candidate = candidate(finder);
        candidate.ifPresent(separator.collapses() ? blanks::add : marks::add);
        if (finder.isSure() && candidate.filter(Candidate::agrees).isPresent()) {
          break;
        }
      }
    }
    return best(best(marks), best(blanks)).map(Candidate::shape);
  }

  private static Optional<Candidate> candidate(ShapeFinder finder) {
    return finder.score() > 0
        ? finder.shape().map(shape -> new Candidate(shape, finder.score(), HeaderFit.of(shape)))
        : Optional.empty();
  }

  private static Optional<Candidate> best(List<Candidate> candidates) {
    Optional<Candidate> best = Optional.empty();
    for (Candidate candidate : candidates) {
      if (best.isEmpty() || isBetter(candidate, best.get())) {
        best = Optional.of(candidate);
      }
    }
    return best;
  }

  private static boolean isBetter(Candidate candidate, Candidate best) {
    if (isPartOf(candidate, best)) {
      return false;
    }
    boolean part = isPartOf(best, candidate);
    if (part || candidate.agrees() == best.agrees()) {
      return part || candidate.clearlyBeats(best);
    }
    return candidate.agrees()
        ? candidate.score > best.score * ENOUGH
        : candidate.score * ENOUGH > best.score;
  }

  // Of two marks, the one that makes fewer cells stands within the cells of the other: commas in
  // names and numbers.
  private static boolean isPartOf(Candidate fewer, Candidate more) {
    return more.fit != HeaderFit.NONE
        && !fewer.shape.separator().collapses()
        && fewer.shape.width() < more.shape.width()
        && more.score > fewer.score * ENOUGH;
  }

  private static Optional<Candidate> best(Optional<Candidate> marks, Optional<Candidate> blanks) {
    boolean mixed =
        marks.isEmpty() || (blanks.isPresent() && mayFallApart(marks.get(), blanks.get()));
    return mixed ? blanks : marks;
  }

  // Blanks that part fewer cells than marks do are blanks within names and texts.
  private static boolean mayFallApart(Candidate marks, Candidate blanks) {
    boolean more = blanks.shape.width() > marks.shape.width();
    return switch (marks.fit) {
      case AGREES ->
          more
              && blanks.clearlyBeats(marks)
              && (blanks.agrees() || marks.score < blanks.score * ENOUGH);
      case NONE -> blanks.agrees() ? marks.score <= blanks.score : blanks.clearlyBeats(marks);
      case DISAGREES -> more && blanks.agrees() && marks.score <= blanks.score * WELL;
    };
  }
}
