package fairboil.analysis.run;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.sheet.RunsSheet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds runs that stand on the very same readings: one burn would count twice. */
public final class SameLogs {

  private SameLogs() {}

  /** A warning for each run whose log, and part of it, an earlier run has. */
  public static List<Finding> of(List<RunResult> runs) {
    Map<List<Object>, RunResult> first = new HashMap<>();
    List<Finding> findings = new ArrayList<>();
    for (RunResult run : runs) {
      part(run)
          .flatMap(part -> Optional.ofNullable(first.putIfAbsent(part, run)))
          .ifPresent(earlier -> findings.add(warning(run, earlier)));
    }
    return findings;
  }

  /** What makes two runs the same: the bytes of their logs, and the part of them that is theirs. */
  private static Optional<List<Object>> part(RunResult run) {
    return run.source()
        .map(
            source ->
                List.of(
                    source.sha256(),
                    run.run().row().value(RunsSheet.LOG_FROM),
                    run.run().row().value(RunsSheet.LOG_TO)));
  }

  private static Finding warning(RunResult run, RunResult earlier) {
    return Finding.warning(
        run.run().row().place(RunsSheet.LOG),
        "the log of run "
            + run.run().key()
            + " is the same as that of run "
            + earlier.run().key()
            + ", reading for reading: one burn counts twice",
        "give each run its own log, or say with log from and log to which part is whose");
  }
}
