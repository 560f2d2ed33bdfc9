package fairboil.demo;

import java.util.List;
import java.util.Optional;

/** What goes wrong in a log. Times are seconds since lighting. */
sealed interface Blemish {

  /** Rows that are missing, both ends included. */
  record Gap(int from, int to) implements Blemish {}

  /** A fault code or word in place of a reading, both ends included. */
  record Fault(Channel channel, int from, int to, String text) implements Blemish {}

  /** One wild reading. */
  record Spike(Channel channel, int at, double kelvin) implements Blemish {}

  /** Whether a row is missing. */
  static boolean missing(List<Blemish> blemishes, int second) {
    return blemishes.stream()
        .anyMatch(b -> b instanceof Gap gap && second >= gap.from && second <= gap.to);
  }

  /** The fault text in place of a reading, if there is one. */
  static Optional<String> fault(List<Blemish> blemishes, Channel channel, int second) {
    for (Blemish blemish : blemishes) {
      if (blemish instanceof Fault fault
          && fault.channel == channel
          && second >= fault.from
          && second <= fault.to) {
        return Optional.of(fault.text);
      }
    }
    return Optional.empty();
  }

  /** What a spike adds to a reading, K. */
  static double spike(List<Blemish> blemishes, Channel channel, int second) {
    double sum = 0;
    for (Blemish blemish : blemishes) {
      if (blemish instanceof Spike spike && spike.channel == channel && spike.at == second) {
        sum += spike.kelvin;
      }
    }
    return sum;
  }
}
