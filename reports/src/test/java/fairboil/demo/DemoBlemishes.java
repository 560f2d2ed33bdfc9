package fairboil.demo;

import java.util.List;

/** What is wrong with which log of the demonstration, by the order of the run. */
final class DemoBlemishes {

  private DemoBlemishes() {}

  static List<Blemish> of(int order) {
    return switch (order) {
      case 3 -> List.of(new Blemish.Gap(150, 181));
      case 6 -> List.of(new Blemish.Fault(Channel.FLAME, 301, 307, "OL"));
      case 14 ->
          List.of(
              new Blemish.Spike(Channel.FLAME, 412, 240),
              new Blemish.Spike(Channel.FLAME, 688, -170),
              new Blemish.Spike(Channel.WATER, 255, 21));
      case 18 -> List.of(new Blemish.Fault(Channel.AMBIENT, 520, 524, "-999.9"));
      case 21 -> List.of(new Blemish.Fault(Channel.WATER, 201, 203, "---"));
      case 41 -> List.of(new Blemish.Spike(Channel.FLAME, 530, 310));
      default -> List.of();
    };
  }
}
