package fairboil.reports.page;

import fairboil.analysis.Results;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.sheet.Key;
import fairboil.reports.chart.Slugs;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** What each run is called in addresses: unique in a study ignoring case, and safe as a name. */
public final class RunNames {

  private final Map<Key, String> names;

  private RunNames(Map<Key, String> names) {
    this.names = names;
  }

  /** The names of the runs of a study. */
  public static RunNames of(Results results) {
    List<Key> keys = results.runs().stream().map(run -> run.run().key()).toList();
    List<String> slugs = Slugs.of(keys.stream().map(key -> "run " + key.name()).toList());
    Map<Key, String> names = new LinkedHashMap<>();
    for (int i = 0; i < keys.size(); i++) {
      names.put(keys.get(i), slugs.get(i));
    }
    return new RunNames(names);
  }

  /** The name of a run. */
  public String of(RunResult run) {
    return Objects.requireNonNull(names.get(run.run().key()));
  }

  /** The name of the file of a run's own page, relative to the folder of the main page. */
  public String file(RunResult run) {
    return "runs/" + of(run) + ".html";
  }
}
