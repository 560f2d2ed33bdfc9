package fairboil.reports.words;

import fairboil.analysis.run.Inclusion;
import fairboil.analysis.run.RunResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is said of a run. */
public final class RunWords {

  private RunWords() {}

  /** Whether some run is left out because the program failed at it. */
  public static boolean anyLost(List<RunResult> runs) {
    return runs.stream().anyMatch(run -> run.inclusion().isLost());
  }

  /** Why a run, its peak or its boil is left out, if it is: the reason as the sheet gives it. */
  public static Optional<String> exclusion(Inclusion inclusion, Display display) {
    if (inclusion.excluded().isPresent()) {
      return inclusion.excluded().map(display::say);
    }
    List<String> reasons = new ArrayList<>();
    inclusion.peakExcluded().ifPresent(reason -> reasons.add("peak: " + display.say(reason)));
    inclusion.boilExcluded().ifPresent(reason -> reasons.add("boil: " + display.say(reason)));
    return reasons.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", reasons));
  }

  /** Whether a run counts, in a word or two. */
  public static String counts(Inclusion inclusion) {
    if (!inclusion.included()) {
      return "left out";
    }
    if (inclusion.includedForPeak() && inclusion.includedForBoil()) {
      return "counts";
    }
    if (inclusion.includedForPeak()) {
      return "boil left out";
    }
    return inclusion.includedForBoil() ? "peak left out" : "peak and boil left out";
  }
}
