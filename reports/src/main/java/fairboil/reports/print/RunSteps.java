package fairboil.reports.print;

import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.StopwatchStart;
import java.util.List;

/**
 * The steps of a burn in their order.
 *
 * @param started the mark at which the stopwatch starts
 * @param boilMeans what the testers call boiling
 */
record RunSteps(StopwatchStart started, String boilMeans) {

  /** What an event is, short enough for a cell. */
  static String means(Event event, String boilMeans) {
    return switch (event) {
      case LIT -> "fuel or tinder lit";
      case GAS_LIT -> "gas above the fuel caught";
      case POT_ON -> "pot set on the stove";
      case BOIL -> "seen to boil: " + boilMeans;
      case POT_OFF -> "pot taken off";
      case FLAME_OUT -> "flame gone, char glows";
      case GLOW_OUT -> "last glow gone";
      case REFUELLED -> "fuel added";
      case LID_ON -> "lid put on";
      case LID_OFF -> "lid taken off";
    };
  }

  List<String> all() {
    return List.of(
        "Read the cautions. Outdoors, on bare ground, upwind; water and sand at hand.",
        "Weigh the pot empty, or look that it is in pots.csv. Weigh the water, or the pot with"
            + " water.",
        "Weigh the fuel, and keep a bag of it closed for its moisture.",
        "Write down air temperature, pressure and wind.",
        "Place the probes: the flame probe where it was the run before, the water probe in the"
            + " water, clear of the bottom. Lid loose, leads tied down.",
        "Start the logger and look at its readings. Write down the temperature of the water.",
        "Light from the top. Mark “lit” and “gas lit”; set the pot on and mark “pot on”. The"
            + " stopwatch starts at “"
            + started.label()
            + "”.",
        "Watch from a distance. Mark “boil” when you see it boil ("
            + boilMeans
            + "). Do not look at the logger first.",
        "Leave the pot on 60 s after it boils: the log needs the plateau.",
        "Move the pot with a gripper onto a cold stand and mark “pot off”. With the lid as it was"
            + " and the logger running, let it cool for ten minutes or more: that shows what heat"
            + " the pot loses.",
        "Mark “flame out” and “glow out”. Smother the char in a lidded metal tin and leave it"
            + " outdoors overnight.",
        "Weigh cold: the water left, the fuel left, and the char once it is cold through. Never"
            + " weigh glowing char.",
        "Write down the outcome, also if it did not boil or went out: that is a result. Save the"
            + " log under the name of the run.");
  }
}
