package fairboil.analysis.run;

import fairboil.analysis.figure.Figure;
import fairboil.ingest.Study;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import java.util.List;
import java.util.Optional;

/** A run at which the program failed: it keeps its row, of which nothing is known. */
public final class LostRun {

  private static final Message WHY = Template.of("the program failed at this run").with();
  private static final Figure UNKNOWN = Figure.unknown(WHY);

  private LostRun() {}

  /**
   * The result of such a run. It does not count, nor is it one of those that a sheet excludes.
   *
   * @param findings what a reader should know of it
   */
  public static RunResult of(Study study, Run run, List<Finding> findings) {
    return new RunResult(
        run,
        RunAnalysis.build(study, run),
        Inclusion.LOST,
        new BoilState.NotSeen(run.row().value(RunsSheet.OUTCOME), WHY),
        new Conditions(UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN),
        new Timeline(List.of()),
        FlameResult.unknown(WHY),
        new BoilResult(
            UNKNOWN,
            Optional.empty(),
            UNKNOWN,
            UNKNOWN,
            UNKNOWN,
            UNKNOWN,
            UNKNOWN,
            UNKNOWN,
            UNKNOWN),
        EnergyResult.unknown(WHY),
        FuelResult.unknown(WHY),
        new RunSketch(List.of(), 0, Optional.empty()),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        findings);
  }
}
