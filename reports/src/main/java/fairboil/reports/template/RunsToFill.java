package fairboil.reports.template;

import fairboil.analysis.plan.Plan;
import fairboil.analysis.plan.RunningOrder.Block;
import fairboil.ingest.Study;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.RunsSheet;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;

/** A sheet of runs with the running order filled in and everything else empty. */
public final class RunsToFill {

  private final Study study;
  private final Set<String> taken = new HashSet<>();
  private int order;

  private RunsToFill(Study study) {
    this.study = study;
    study.runs().forEach(run -> taken.add(run.key().name()));
  }

  /**
   * The sheet: {@code runs.csv} of the next tests, with no name of a run that the study has.
   *
   * @param study the study that the plan is for
   */
  public static String of(Study study, Plan plan) {
    return new RunsToFill(study).text(plan);
  }

  private String text(Plan plan) {
    StringBuilder text = new StringBuilder(StudyTemplate.BYTE_ORDER_MARK);
    text.append(
            RunsSheet.SCHEMA.columns().stream()
                .map(StudyTemplate::header)
                .collect(Collectors.joining(",")))
        .append('\n');
    text.append("# running order of ").append(study.name().replace('\n', ' '));
    text.append("; a block is a day or days that follow each other\n");
    for (Block block : plan.order().blocks()) {
      text.append("# block ").append(block.number()).append('\n');
      block.builds().forEach(build -> row(block, build, text));
    }
    return text.toString();
  }

  private void row(Block block, String build, StringBuilder text) {
    String name = name(build);
    order++;
    text.append(
            RunsSheet.SCHEMA.columns().stream()
                .map(column -> StudyTemplate.quoted(cell(column, block, build, name)))
                .collect(Collectors.joining(",")))
        .append('\n');
  }

  private String name(String build) {
    int number = 1;
    while (!taken.add(build + "-" + number)) {
      number++;
    }
    return build + "-" + number;
  }

  private String cell(Column<?> column, Block block, String build, String name) {
    if (column == RunsSheet.RUN) {
      return name;
    }
    if (column == RunsSheet.BUILD) {
      return build;
    }
    if (column == RunsSheet.SITE) {
      return block.site().orElse("");
    }
    return column == RunsSheet.ORDER ? String.valueOf(order) : "";
  }
}
