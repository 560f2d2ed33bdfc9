package fairboil.demo;

/**
 * What the probes of a burn read, °C, before the logger writes it down.
 *
 * @param first when the first reading was taken, whole seconds since lighting
 * @param flame a bead in the flame
 * @param water the water
 * @param air the air
 */
record Readings(int first, Series flame, Series water, Series air) {

  /** How many there are. */
  int size() {
    return flame.size();
  }

  /** One reading, °C. */
  double at(Channel channel, int index) {
    return switch (channel) {
      case FLAME -> flame.at(index);
      case WATER -> water.at(index);
      case AMBIENT -> air.at(index);
    };
  }

  /** The same, but from that reading on the water probe lies in the air and cools. */
  Readings withWaterProbeInAirFrom(int index) {
    double above = water.at(index) - air.at(index);
    Series fallen =
        Series.of(
            size(),
            i -> i < index ? water.at(i) : air.at(i) + above * StrictMath.exp((index - i) / 15.0));
    return new Readings(first, flame, fallen, air);
  }
}
