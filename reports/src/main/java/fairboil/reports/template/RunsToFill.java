package fairboil.reports.template;

import fairboil.analysis.plan.Plan;
import fairboil.ingest.Study;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.RunsSheet;
import java.util.stream.Collectors;

/** A sheet of runs with the running order filled in and everything else empty. */
public final class RunsToFill {

  private RunsToFill() {}

  /**
   * The sheet: {@code runs.csv} of the next tests.
   *
   * @param study the study that the plan is for
   */
  public static String of(Study study, Plan plan) {
    StringBuilder text = new StringBuilder(StudyTemplate.BYTE_ORDER_MARK);
    text.append(
            RunsSheet.SCHEMA.columns().stream()
                .map(StudyTemplate::header)
                .collect(Collectors.joining(",")))
        .append('\n');
    text.append("# running order of ").append(study.name().replace('\n', ' '));
    text.append("; a block is a day or days that follow each other\n");
    int block = 0;
    for (PlannedRun run : PlannedRun.of(study, plan)) {
      if (run.block() != block) {
        block = run.block();
        text.append("# block ").append(block).append('\n');
      }
      text.append(row(run)).append('\n');
    }
    return text.toString();
  }

  private static String row(PlannedRun run) {
    return RunsSheet.SCHEMA.columns().stream()
        .map(column -> StudyTemplate.quoted(cell(column, run)))
        .collect(Collectors.joining(","));
  }

  private static String cell(Column<?> column, PlannedRun run) {
    if (column == RunsSheet.RUN) {
      return run.name();
    }
    if (column == RunsSheet.BUILD) {
      return run.build();
    }
    if (column == RunsSheet.SITE) {
      return run.site().orElse("");
    }
    return column == RunsSheet.ORDER ? String.valueOf(run.order()) : "";
  }
}
