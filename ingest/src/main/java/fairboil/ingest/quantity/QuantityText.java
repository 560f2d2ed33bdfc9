package fairboil.ingest.quantity;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads quantities as people write them: {@code 24 fl oz}, {@code 1½ cups}, {@code 13 3/16"},
 * {@code 1 lb 4 oz}, {@code 20,5 °C}, {@code 5m43s}, {@code ~500 ml}. What has no unit, or could
 * mean two things, is refused with what to type instead; nothing is guessed.
 */
public final class QuantityText {

  private static final List<Dimension> ANY =
      Arrays.stream(Dimension.values())
          .filter(dimension -> dimension != Dimension.TEMPERATURE_DIFFERENCE)
          .toList();

  private static final List<Dimension> NEVER_NEGATIVE =
      List.of(Dimension.MASS, Dimension.VOLUME, Dimension.PRESSURE, Dimension.SPEED);

  private static final Map<Unit, String> US_MEASURES =
      Map.of(
          Unit.US_GALLON, "gallons",
          Unit.US_QUART, "quarts",
          Unit.US_PINT, "pints",
          Unit.US_CUP, "cups",
          Unit.US_FLUID_OUNCE, "fluid ounces");

  private static final double ABSOLUTE_ZERO = -273.15;

  private QuantityText() {}

  /**
   * Reads a quantity of one of the wanted dimensions.
   *
   * @param text what a person wrote
   * @param wanted the dimensions that it may have, at least one
   * @param unit the unit of a bare number, from the header; the text's own unit wins
   * @param mark what the file says of decimal marks
   */
  public static Reading<Quantity> read(
      String text, List<Dimension> wanted, Optional<Unit> unit, DecimalMark mark) {
    String tidy = Tidy.text(text);
    return parts(tidy, mark).then(parts -> quantity(tidy, parts, wanted, unit));
  }

  /**
   * Reads a number with or without a unit, whose dimension only its user knows.
   *
   * @param text what a person wrote
   * @param unit the unit of a bare number, from the header; the text's own unit wins
   * @param mark what the file says of decimal marks
   */
  public static Reading<Amount> amount(String text, Optional<Unit> unit, DecimalMark mark) {
    String tidy = Tidy.text(text);
    return parts(tidy, mark)
        .then(
            read -> {
              QuantityParts parts = read.value();
              if (parts.isBare()) {
                Amount bare = parts.bare();
                Amount amount = unit.map(bare::orIn).orElse(bare);
                return new Reading.Read<>(amount, amount.unit(), read.remark());
              }
              return parts
                  .in(ANY, tidy)
                  .then(sum -> new Reading.Read<>(sum.value(), sum.unit(), read.remark()));
            });
  }

  private static Reading<QuantityParts> parts(String tidy, DecimalMark mark) {
    return Tidy.<QuantityParts>tooLong(tidy).orElseGet(() -> shortParts(tidy, mark));
  }

  private static Reading<QuantityParts> shortParts(String tidy, DecimalMark mark) {
    if (WrittenNumber.endOfSimple(tidy, mark) > 0) {
      return QuantityParts.of(tidy, mark);
    }
    if (Tidy.isNothing(tidy)) {
      return new Reading.Missing<>();
    }
    if (DateText.looksMadeBySpreadsheet(tidy)) {
      return new Reading.Refused<>(
          ReadingSays.MADE_A_DATE.with(Argument.cell(tidy)), ReadingSays.TYPE_AS_TEXT);
    }
    return QuantityParts.of(tidy, mark);
  }

  private static Reading<Quantity> quantity(
      String tidy,
      Reading.Read<QuantityParts> read,
      List<Dimension> wanted,
      Optional<Unit> headerUnit) {
    QuantityParts parts = read.value();
    Reading<Amount> amount =
        parts.isBare() ? bare(tidy, parts.bare(), wanted, headerUnit) : parts.in(wanted, tidy);
    return amount.then(
        sum -> {
          Quantity quantity = in(wanted, sum.value());
          Optional<Unit> unit = sum.value().unit();
          Optional<Template> limit = beyondLimits(quantity);
          return limit.isPresent()
              ? new Reading.Refused<>(
                  limit.get().with(Argument.cell(tidy)), ReadingSays.CHECK_VALUE)
              : new Reading.Read<>(quantity, unit, read.remark().or(() -> usMeasure(unit)));
        });
  }

  private static Optional<Message> usMeasure(Optional<Unit> unit) {
    return unit.flatMap(measure -> Optional.ofNullable(US_MEASURES.get(measure)))
        .map(name -> ReadingSays.US_MEASURE.with(Argument.word(name)));
  }

  private static Quantity in(List<Dimension> wanted, Amount amount) {
    if (amount.unit().isEmpty()) {
      return new Quantity(amount.number(), amount.resolution(), wanted.get(0)); // a bare zero
    }
    return wanted.stream()
        .flatMap(dimension -> amount.as(dimension).stream())
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("a unit that measures none of " + wanted));
  }

  // Nothing is nothing in every unit, but not on a scale of temperature.
  private static Reading<Amount> bare(
      String tidy, Amount amount, List<Dimension> wanted, Optional<Unit> headerUnit) {
    if (headerUnit.isPresent()) {
      return Reading.Read.of(amount.orIn(headerUnit.get()));
    }
    if (amount.number() == 0 && !wanted.contains(Dimension.TEMPERATURE)) {
      return Reading.Read.of(new Amount(0, 0, Optional.empty()));
    }
    return new Reading.Refused<>(
        ReadingSays.NO_UNIT.with(Argument.cell(tidy)), Suggestions.forBare(tidy, wanted));
  }

  private static Optional<Template> beyondLimits(Quantity quantity) {
    if (quantity.value() < 0 && NEVER_NEGATIVE.contains(quantity.dimension())) {
      return Optional.of(ReadingSays.BELOW_ZERO);
    }
    return quantity.dimension() == Dimension.TEMPERATURE && quantity.value() < ABSOLUTE_ZERO
        ? Optional.of(ReadingSays.BELOW_ABSOLUTE_ZERO)
        : Optional.empty();
  }
}
