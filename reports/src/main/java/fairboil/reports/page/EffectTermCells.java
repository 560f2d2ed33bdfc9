package fairboil.reports.page;

import fairboil.analysis.effect.EffectRow;
import fairboil.analysis.effect.HoleEffect;
import fairboil.ingest.dimension.Dimension;
import fairboil.reports.words.Display;
import fairboil.reports.words.Fixed;
import fairboil.reports.words.Slopes;
import java.util.Optional;

/**
 * How a term of a hole effect is shown: in the units that people chose, but for each unit of a
 * column in that in which the column is reckoned.
 *
 * @param display shows values
 * @param effect the effect
 * @param row the term
 */
record EffectTermCells(Display display, HoleEffect effect, EffectRow row) {

  String estimate() {
    return dimension()
        .map(known -> Slopes.number(display, row, known) + unit(known))
        .orElseGet(() -> number(row.estimate()) + each());
  }

  String interval() {
    return dimension()
        .map(known -> Slopes.range(display, row, known))
        .orElseGet(() -> number(row.interval().low()) + " to " + number(row.interval().high()));
  }

  private Optional<Dimension> dimension() {
    Dimension response = effect.response().dimension();
    if (row.term().startsWith(EffectRow.DESIGN)) {
      return Optional.of(response.ofDifference());
    }
    return switch (row.term()) {
      case EffectRow.HOLE_ERROR -> Optional.of(response.perLength());
      case EffectRow.INTERCEPT -> Optional.of(response);
      default -> Optional.empty();
    };
  }

  private String unit(Dimension dimension) {
    if (dimension == Dimension.DURATION) {
      return Math.abs(row.estimate()) < 60 ? "\u00a0s" : "\u00a0min";
    }
    return "\u00a0" + display.symbol(dimension);
  }

  private String each() {
    String degree = display.symbol(Dimension.TEMPERATURE_DIFFERENCE);
    String response = effect.response().dimension() == Dimension.DURATION ? "s" : degree;
    return "\u00a0" + response + (isOfAir() ? " per " + degree : " per unit of the column");
  }

  private boolean isOfAir() {
    return row.term().equals(EffectRow.AMBIENT);
  }

  /** Shown units of the response per shown unit of the term, for each held one. */
  private double factor() {
    double degree = display.scale(Dimension.TEMPERATURE_DIFFERENCE).factor();
    double response = effect.response().dimension() == Dimension.DURATION ? 1 : degree;
    return isOfAir() ? response / degree : response;
  }

  /** To about a twelfth of the interval, as slopes are. */
  private String number(double held) {
    double value = factor() * held;
    double step = factor() * row.interval().width() / 12;
    int decimals =
        step > 0 && Double.isFinite(step)
            ? Math.max(0, Math.min(6, -(int) Math.floor(Math.log10(step))))
            : 2;
    return Fixed.of(value, decimals);
  }
}
