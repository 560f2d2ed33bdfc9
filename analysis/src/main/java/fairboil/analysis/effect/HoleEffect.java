package fairboil.analysis.effect;

import fairboil.analysis.figure.Interval;
import fairboil.analysis.measure.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How a response changes with the RMS hole error of one ring, the build being the unit.
 *
 * @param response the measure that responds
 * @param ring the name of the ring
 * @param points each build with a hole error and a response, in the order of the study;
 *     unmodifiable
 * @param rows the terms of each model that could be estimated; unmodifiable, empty if none could
 * @param headline the row that the answer stands on, if there is one
 * @param verdict what the headline's interval says
 * @param band the fitted line with its interval over the range of hole errors; unmodifiable
 */
public record HoleEffect(
    Measure response,
    String ring,
    List<BuildPoint> points,
    List<EffectRow> rows,
    Optional<EffectRow> headline,
    EffectVerdict verdict,
    List<BandPoint> band) {

  private static final Set<String> NOT_COVARIATES =
      Set.of(EffectRow.HOLE_ERROR, EffectRow.INTERCEPT, EffectRow.AMBIENT);

  /** Copies the lists. */
  public HoleEffect {
    points = List.copyOf(points);
    rows = List.copyOf(rows);
    band = List.copyOf(band);
  }

  /** The same effect with one more row. */
  HoleEffect and(EffectRow row) {
    List<EffectRow> more = new ArrayList<>(rows);
    more.add(row);
    return new HoleEffect(response, ring, points, more, headline, verdict, band);
  }

  /** Whether a row is the one that the answer stands on. */
  public boolean isHeadline(EffectRow row) {
    return headline.stream()
        .anyMatch(line -> line.model() == row.model() && line.term().equals(row.term()));
  }

  /**
   * What the headline allows for beside hole error and air: {@code design} where there are several,
   * and covariates by name; unmodifiable.
   */
  public List<String> allowedFor() {
    return headline.stream()
        .flatMap(answer -> rows.stream().filter(row -> row.model() == answer.model()))
        .map(EffectRow::term)
        .filter(term -> !NOT_COVARIATES.contains(term))
        .map(term -> term.startsWith(EffectRow.DESIGN) ? EffectRow.DESIGN.strip() : term)
        .distinct()
        .toList();
  }

  /**
   * The fitted line at one hole error.
   *
   * @param holeError RMS hole error, m
   * @param fitted the line there
   * @param interval the interval of the line there, at the study's confidence
   */
  public record BandPoint(double holeError, double fitted, Interval interval) {}

  /** What the interval of the slope says. */
  public enum EffectVerdict {
    /** The response falls with hole error: the interval lies below 0. */
    FALLS("falls"),
    /** The response rises with hole error: the interval lies above 0. */
    RISES("rises"),
    /** The interval holds 0. */
    NOT_SETTLED("not settled"),
    /** Fewer than three builds with both: no line through them can be tested. */
    TOO_FEW_BUILDS("too few builds"),
    /** All builds have the same hole error. */
    NO_SPREAD("no spread in hole error"),
    /** All burns have the same response: they have no scatter to judge a line by. */
    NO_SCATTER("no scatter"),
    /** The means lie on one line exactly: they have no scatter about it to judge it by. */
    NO_SCATTER_ABOUT_LINE("no scatter about the line");

    private final String label;

    EffectVerdict(String label) {
      this.label = label;
    }

    /** The words that tables hold. */
    public String label() {
      return label;
    }
  }
}
