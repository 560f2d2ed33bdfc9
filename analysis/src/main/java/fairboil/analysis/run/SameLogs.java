package fairboil.analysis.run;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.RunsSheet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds runs that stand on the very same readings: one burn would count twice. */
public final class SameLogs {

  private static final Template SAME =
      Template.of(
          "the log of run {name} is the same as that of run {name}, reading for reading: one burn"
              + " counts twice");
  private static final Template OWN_PART =
      Template.of(
          "give each run its own log, or type in the columns log from and log to of {sheet} which"
              + " part is whose");

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
        SAME.with(
            Argument.name(run.run().key().toString()),
            Argument.name(earlier.run().key().toString())),
        OWN_PART.with(RunSays.RUNS));
  }
}
