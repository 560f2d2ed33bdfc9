package fairboil.reports.page;

import fairboil.analysis.run.RunResult;
import fairboil.ingest.sheet.RunsSheet;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The days on which runs were made. */
record DayCondition() implements Condition {

  @Override
  public String label() {
    return "day";
  }

  @Override
  public boolean isRecorded(RunResult run) {
    return run.run().row().value(RunsSheet.DATE).isPresent();
  }

  @Override
  public String over(List<RunResult> runs) {
    List<LocalDate> days = sorted(runs);
    if (days.isEmpty()) {
      return "";
    }
    LocalDate first = days.get(0);
    LocalDate last = days.get(days.size() - 1);
    return (first.equals(last) ? first : first + " to " + last)
        + Condition.notTold(runs, days.size());
  }

  @Override
  public boolean overlap(List<RunResult> some, List<RunResult> others) {
    List<LocalDate> a = sorted(some);
    List<LocalDate> b = sorted(others);
    return !a.get(0).isAfter(b.get(b.size() - 1)) && !b.get(0).isAfter(a.get(a.size() - 1));
  }

  private static List<LocalDate> sorted(List<RunResult> runs) {
    return runs.stream()
        .map(run -> run.run().row().value(RunsSheet.DATE))
        .flatMap(Optional::stream)
        .sorted()
        .toList();
  }
}
