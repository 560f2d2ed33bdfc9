package fairboil.ingest.log;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import fairboil.ingest.quantity.Unit;
import java.util.List;
import java.util.Optional;

/** Whole numbers of tenths, hundredths or thousandths of a degree: asked about, never assumed. */
final class Scales {

  private static final Template LOOKS_LIKE = Template.of("it looks like {list}");
  private static final Template PARTS = Template.of("{word} of a degree ({clause})");

  // 1800 °C is 3272 °F.
  private static final double HOTTEST_IN_ANY_UNIT = 3500;

  private static final List<Double> SCALES = List.of(0.1, 0.01, 0.001);

  private final Unit unit;
  private final ValueRange range;

  private Scales(Unit unit, ValueRange range) {
    this.unit = unit;
    this.range = range;
  }

  /** Of a column of temperatures; one whose unit is not said is looked at as if in °C. */
  static Scales of(ChannelPlan plan, ValueRange range) {
    return new Scales(plan.unit().orElse(Unit.CELSIUS), range);
  }

  /** Whether a scale may be what is lacking: the column is not scaled, and too hot as it is. */
  static boolean mayBeLacking(ChannelPlan plan, ValueRange range) {
    boolean tooHot =
        plan.unit().isEmpty()
            ? range.highest() > HOTTEST_IN_ANY_UNIT
            : plan.dimension() == Dimension.TEMPERATURE
                && plan.held(range.highest()) > FaultCodes.HOTTEST;
    boolean changes = range.lowest() < range.highest();
    return tooHot && changes && plan.scale() == 1 && !of(plan, range).possible().isEmpty();
  }

  /** The only scale at which the log would be of a fire or of water and begin out of the cold. */
  Optional<Double> likely() {
    List<Double> possible = possible();
    List<Double> fromCold =
        possible.stream().filter(scale -> isBetween(range.lowest() * scale, -30, 45)).toList();
    List<Double> left = fromCold.isEmpty() ? possible : fromCold;
    return left.size() == 1 ? Optional.of(left.get(0)) : Optional.empty();
  }

  private List<Double> possible() {
    return SCALES.stream()
        .filter(scale -> isBetween(range.highest() * scale, 20, 1200))
        .filter(scale -> isBetween(range.lowest() * scale, -50, 1200))
        .toList();
  }

  private boolean isBetween(double written, double low, double high) {
    double celsius = unit.toHeld(written, Dimension.TEMPERATURE);
    return celsius >= low && celsius <= high;
  }

  /** {@code it looks like thousandths of a degree, 19.1 to 99.3}: every scale that may be meant. */
  Message words() {
    List<Double> shown = likely().map(List::of).orElseGet(this::possible);
    return LOOKS_LIKE.with(Argument.anyOf(shown.stream().map(this::meaning).toList()));
  }

  private Argument meaning(double scale) {
    return Argument.clause(
        PARTS.with(Argument.word(name(scale)), Argument.clause(range.times(scale).guess())));
  }

  /** The range as scaled; without any number where the scale is not known. */
  ValueRange scaled() {
    return likely().map(range::times).orElseGet(() -> new ValueRange(Optional.empty()));
  }

  private static String name(double scale) {
    return scale == 0.1 ? "tenths" : scale == 0.01 ? "hundredths" : "thousandths";
  }

  /** The scale that is likely, to type; the cell is left to fill in if none is. */
  Argument cell() {
    return likely().<Argument>map(Argument::number).orElse(Argument.word(""));
  }
}
