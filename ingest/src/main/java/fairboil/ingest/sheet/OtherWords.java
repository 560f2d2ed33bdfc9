package fairboil.ingest.sheet;

import fairboil.ingest.choice.Air;
import fairboil.ingest.choice.Choice;
import fairboil.ingest.choice.Datum;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Feed;
import fairboil.ingest.choice.FuelForm;
import fairboil.ingest.choice.Lid;
import fairboil.ingest.choice.Outcome;
import fairboil.ingest.choice.Relation;
import fairboil.ingest.choice.Role;
import fairboil.ingest.choice.StoveStart;
import fairboil.ingest.choice.Surface;
import fairboil.ingest.choice.WeighedAt;
import fairboil.ingest.choice.YesNo;
import java.util.List;
import java.util.Map;

/** Other words for the answers to choices; each can mean that answer only. */
final class OtherWords {

  private static final Map<Choice, List<String>> WORDS =
      Map.ofEntries(
          Map.entry(YesNo.YES, List.of("y", "x", "1", "true", "\u2713", "\u2714")),
          Map.entry(YesNo.NO, List.of("n", "0", "false")),
          Map.entry(Lid.ON, List.of("lid on", "yes", "y", "covered", "closed", "with lid")),
          Map.entry(
              Lid.OFF, List.of("lid off", "no", "n", "none", "no lid", "open", "without lid")),
          Map.entry(Lid.PART, List.of("partly", "partial", "half", "ajar", "part on")),
          Map.entry(Outcome.BOILED, List.of("boil", "boiled ok", "it boiled")),
          Map.entry(
              Outcome.DID_NOT_BOIL,
              List.of("no boil", "not boiled", "didn't boil", "didn\u2019t boil", "dnb")),
          Map.entry(
              Outcome.WOULD_NOT_LIGHT,
              List.of(
                  "did not light",
                  "didn't light",
                  "didn\u2019t light",
                  "not lit",
                  "failed to light")),
          Map.entry(Outcome.WENT_OUT, List.of("fire went out", "died")),
          Map.entry(Outcome.STOPPED, List.of("aborted", "stopped early")),
          Map.entry(FuelForm.PELLETS, List.of("pellet")),
          Map.entry(FuelForm.STICKS, List.of("stick", "twigs", "splits", "kindling")),
          Map.entry(FuelForm.CHIPS, List.of("chip", "wood chips", "woodchips")),
          Map.entry(FuelForm.CONES, List.of("cone", "pine cones", "pinecones")),
          Map.entry(Feed.BATCH, List.of("batch fed", "batch-loaded", "loaded once")),
          Map.entry(Feed.FED, List.of("hand fed", "continuous", "continuously fed")),
          Map.entry(WeighedAt.BURNT_OUT, List.of("burned out", "end", "at the end")),
          Map.entry(StoveStart.COLD, List.of("cold start")),
          Map.entry(StoveStart.WARM, List.of("hot", "warm start", "hot start")),
          Map.entry(Surface.WALL, List.of("side", "walls")),
          Map.entry(Surface.BASE, List.of("bottom", "floor")),
          Map.entry(Air.PRIMARY, List.of("primary air")),
          Map.entry(Air.SECONDARY, List.of("secondary air")),
          Map.entry(Air.INTAKE, List.of("inlet")),
          Map.entry(Datum.TOP_RIM, List.of("top")),
          Map.entry(Datum.BOTTOM_RIM, List.of("bottom")),
          Map.entry(DisplayUnits.US, List.of("us customary", "U.S.")),
          Map.entry(DisplayUnits.METRIC, List.of("SI")),
          Map.entry(Relation.AT_MOST, List.of("<=", "\u2264", "no more than", "up to")),
          Map.entry(Relation.AT_LEAST, List.of(">=", "\u2265", "no less than")),
          Map.entry(Relation.NO_DIFFERENT_FROM, List.of("same as", "no different", "equal to")),
          Map.entry(Role.COLD_JUNCTION, List.of("cj", "reference junction", "internal")),
          Map.entry(Role.AMBIENT, List.of("air")),
          Map.entry(Role.OTHER, List.of("ignore", "none")),
          Map.entry(Event.LIT, List.of("ignition", "ignited", "lighting", "fire lit")),
          Map.entry(Event.GAS_LIT, List.of("gas ignition", "gas ignited", "wood gas lit")),
          Map.entry(Event.POT_ON, List.of("pot put on", "water on", "kettle on")),
          Map.entry(Event.BOIL, List.of("boiled", "boiling", "full boil", "rolling boil")),
          Map.entry(Event.POT_OFF, List.of("pot taken off", "kettle off", "water off")),
          Map.entry(Event.FLAME_OUT, List.of("flames out", "flame gone", "end of flame")),
          Map.entry(Event.GLOW_OUT, List.of("end of glow", "char out", "embers out")),
          Map.entry(Event.REFUELLED, List.of("refueled", "refuel", "fuel added")),
          Map.entry(Event.LID_ON, List.of("lid put on")),
          Map.entry(Event.LID_OFF, List.of("lid taken off")));

  private OtherWords() {}

  static List<String> of(Choice choice) {
    return WORDS.getOrDefault(choice, List.of());
  }
}
