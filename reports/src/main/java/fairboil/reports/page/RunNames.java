package fairboil.reports.page;

import fairboil.analysis.Results;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.sheet.Key;
import java.util.LinkedHashMap;
import java.util.Map;

/** What each run is called in addresses: unique in a study ignoring case, and safe as a name. */
public final class RunNames {

  private final Map<Key, String> names;

  private RunNames(Map<Key, String> names) {
    this.names = names;
  }

  /** The names of the runs of a study. */
  public static RunNames of(Results results) {
    Slugs slugs = new Slugs();
    Map<Key, String> names = new LinkedHashMap<>();
    for (RunResult run : results.runs()) {
      names.put(run.run().key(), slugs.of("run", run.run().key().name()));
    }
    return new RunNames(names);
  }

  /** The name of a run. */
  public String of(RunResult run) {
    return names.get(run.run().key());
  }

  /** The name of the file of a run's own page, relative to the folder of the main page. */
  public String file(RunResult run) {
    return "runs/" + of(run) + ".html";
  }
}
