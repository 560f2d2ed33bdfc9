package fairboil.analysis.precision;

import fairboil.analysis.group.RunGroup;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.RunsSheet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Who repeated the burns: sites, else testers, else nobody. */
public enum Repeated {
  /** Several sites. */
  BY_SITES("site", RunsSheet.SITE),
  /** Several testers at one site. */
  BY_TESTERS("tester", RunsSheet.TESTER),
  /** One tester at one site, or not told for every run. */
  BY_NOBODY("", null);

  private final String word;
  private final @Nullable Column<String> column;

  Repeated(String word, @Nullable Column<String> column) {
    this.word = word;
    this.column = column;
  }

  /** What people call one of them: site, or tester; empty for nobody. */
  public String word() {
    return word;
  }

  /**
   * Who repeated these runs. It must be told of every run. Testers count only where some tester
   * burnt some stove twice: else they could not be told from run to run, which people ask for
   * first.
   */
  public static Repeated of(RunGroup runs) {
    if (count(runs, RunsSheet.SITE) > 1) {
      return BY_SITES;
    }
    return count(runs, RunsSheet.TESTER) > 1 && BY_TESTERS.hasRepeats(runs)
        ? BY_TESTERS
        : BY_NOBODY;
  }

  private boolean hasRepeats(RunGroup runs) {
    Set<List<Object>> cells = new HashSet<>();
    return runs.runs().stream().anyMatch(run -> !cells.add(List.of(run.build().key(), key(run))));
  }

  private static int count(RunGroup runs, Column<String> column) {
    Set<String> found = new HashSet<>();
    for (RunResult run : runs.runs()) {
      Optional<String> name = run.run().row().value(column);
      if (name.isEmpty()) {
        return 0;
      }
      found.add(plain(name.get()));
    }
    return found.size();
  }

  private static String plain(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }

  /** The site or tester of a run, capital letters aside; empty text for nobody. */
  String key(RunResult run) {
    return plain(name(run));
  }

  /** The site or tester of a run as written; empty text for nobody. */
  public String name(RunResult run) {
    return column == null ? "" : run.run().row().value(column).orElse("");
  }
}
