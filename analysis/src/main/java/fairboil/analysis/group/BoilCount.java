package fairboil.analysis.group;

import fairboil.analysis.run.BoilState;
import fairboil.analysis.run.RunResult;
import java.util.List;

/**
 * In how many runs the water boiled: of those that count for their boil.
 *
 * @param boiled in how many it is known to have boiled
 * @param failed in how many it is known not to have boiled
 * @param unseen in how many nobody and nothing saw whether it did
 */
public record BoilCount(int boiled, int failed, int unseen) {

  /** No run. */
  public static final BoilCount NONE = new BoilCount(0, 0, 0);

  /** Of those of some runs that count for their boil. */
  public static BoilCount of(List<RunResult> runs) {
    return new BoilCount(
        count(runs, BoilState.Boiled.class),
        count(runs, BoilState.DidNotBoil.class),
        count(runs, BoilState.NotSeen.class));
  }

  private static int count(List<RunResult> runs, Class<? extends BoilState> state) {
    return (int)
        runs.stream()
            .filter(run -> run.inclusion().includedForBoil())
            .filter(run -> state.isInstance(run.state()))
            .count();
  }

  /** Of how many runs it is known: what a share is a share of. */
  public int judged() {
    return boiled + failed;
  }

  /** The same if none of those not seen had boiled. */
  public BoilCount unseenFailed() {
    return new BoilCount(boiled, failed + unseen, 0);
  }

  /** The same if all of those not seen had boiled. */
  public BoilCount unseenBoiled() {
    return new BoilCount(boiled + unseen, failed, 0);
  }
}
