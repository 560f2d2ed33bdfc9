package fairboil.reports.words;

import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.quantity.Unit;

/**
 * The scale on which values of one dimension are shown: {@code shown = held × factor + offset}.
 *
 * @param symbol the symbol of the unit shown
 * @param factor shown units per held unit
 * @param offset added to a point on the scale, never to a difference
 * @param isClock whether values are read as minutes and seconds
 */
public record Scale(String symbol, double factor, double offset, boolean isClock) {

  private static final double SIXTEENTH_OF_AN_INCH = 0.0254 / 16;

  static Scale of(Dimension dimension, DisplayUnits units) {
    return units == DisplayUnits.US ? us(dimension) : metric(dimension);
  }

  /** A held value on this scale. */
  public double shown(double held) {
    return held * factor + offset;
  }

  /** A held difference on this scale. */
  public double shownDifference(double held) {
    return held * factor;
  }

  private static Scale metric(Dimension dimension) {
    return switch (dimension) {
      case TEMPERATURE, TEMPERATURE_DIFFERENCE -> factor("°C", 1);
      case MASS -> factor("g", 1e3);
      case VOLUME -> in(Unit.LITRE);
      case LENGTH -> in(Unit.MILLIMETRE);
      case AREA -> in(Unit.SQUARE_MILLIMETRE);
      case SPEED -> in(Unit.METRE_PER_SECOND);
      case PRESSURE -> in(Unit.KILOPASCAL);
      case MASS_RATE -> in(Unit.GRAM_PER_MINUTE);
      case TEMPERATURE_DIFFERENCE_PER_LENGTH -> factor("°C per mm", 1e-3);
      case DURATION_PER_LENGTH -> factor("s per mm", 1e-3);
      default -> either(dimension);
    };
  }

  private static Scale us(Dimension dimension) {
    return switch (dimension) {
      case TEMPERATURE -> new Scale("°F", 1.8, 32, false);
      case TEMPERATURE_DIFFERENCE -> factor("°F", 1.8);
      case MASS -> in(Unit.OUNCE);
      case VOLUME -> in(Unit.US_FLUID_OUNCE);
      case LENGTH -> in(Unit.INCH);
      case AREA -> in(Unit.SQUARE_INCH);
      case SPEED -> in(Unit.MILE_PER_HOUR);
      case PRESSURE -> in(Unit.INCH_OF_MERCURY);
      case MASS_RATE -> in(Unit.OUNCE_PER_MINUTE);
      case TEMPERATURE_DIFFERENCE_PER_LENGTH ->
          factor("°F per 1/16 in", 1.8 * SIXTEENTH_OF_AN_INCH);
      case DURATION_PER_LENGTH -> factor("s per 1/16 in", SIXTEENTH_OF_AN_INCH);
      default -> either(dimension);
    };
  }

  private static Scale either(Dimension dimension) {
    return switch (dimension) {
      case DURATION -> new Scale("min:s", 1, 0, true);
      case ANGLE -> in(Unit.DEGREE);
      case SPECIFIC_ENERGY -> in(Unit.MEGAJOULE_PER_KILOGRAM);
      case VOLTAGE -> in(Unit.MILLIVOLT);
      case RATIO -> in(Unit.PERCENT);
      case RATE -> factor("% per min", 6000);
      default -> factor(dimension.heldIn(), 1);
    };
  }

  private static Scale in(Unit unit) {
    return factor(unit.symbol(), unit.fromHeld(1, unit.dimension()));
  }

  private static Scale factor(String symbol, double factor) {
    return new Scale(symbol, factor, 0, false);
  }
}
