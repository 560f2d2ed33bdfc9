package fairboil.ingest.log;

import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Sensor;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How a column of readings is read.
 *
 * @param column the column
 * @param role what it holds; empty where that is to be asked: then only its range is kept
 * @param sensor the row of {@code sensors.csv} about it
 * @param unit its unit; empty where that is to be asked: then only its range is kept
 * @param scale what its numbers are to be multiplied with before the unit holds
 * @param unitColumn the column, from 0, that repeats its unit in every row
 */
record ChannelPlan(
    LogColumn column,
    Optional<Role> role,
    Optional<Sensor> sensor,
    Optional<Unit> unit,
    double scale,
    OptionalInt unitColumn) {

  /** Whether its readings become a channel. */
  boolean isKept() {
    return role.isPresent() && unit.isPresent();
  }

  /** Point or voltage: the dimension of its readings. */
  Dimension dimension() {
    return unit.map(Unit::dimension).orElse(Dimension.TEMPERATURE);
  }

  /** A number as written in the unit in which readings are held: °C or V. */
  double held(double written) {
    return unit.orElseThrow().toHeld(written * scale, dimension());
  }

  /** The number, as written, that is held as {@code held}: the inverse of {@link #held}. */
  double written(double held) {
    return unit.orElseThrow().fromHeld(held, dimension()) / scale;
  }
}
