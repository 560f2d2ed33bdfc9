package fairboil.analysis.run;

import fairboil.ingest.choice.Outcome;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Ledger;
import fairboil.ingest.grid.SourceFile;
import fairboil.ingest.log.RowFate;
import fairboil.ingest.sheet.Build;
import fairboil.ingest.sheet.Run;
import java.util.List;
import java.util.Optional;

/**
 * Everything worked out for one run. Immutable; holds no log.
 *
 * @param run the run as its sheet gives it
 * @param build the build that was burnt
 * @param inclusion whether it counts
 * @param state whether the water boiled, did not, or was not seen
 * @param conditions the conditions
 * @param timeline the events
 * @param flame what the flame channel shows
 * @param boil what was seen of the boil
 * @param energy heat, and boil times restated
 * @param fuel fuel measures
 * @param sketch what a chart needs
 * @param source the log file, if it was read to its end
 * @param rows what became of the lines of the log, if there is one
 * @param samples what became of the readings of each channel; unmodifiable
 * @param findings what a reader should know of this run, sorted; unmodifiable
 * @param heat what the heat balance of the study needs of the run
 */
public record RunResult(
    Run run,
    Build build,
    Inclusion inclusion,
    BoilState state,
    Conditions conditions,
    Timeline timeline,
    FlameResult flame,
    BoilResult boil,
    EnergyResult energy,
    FuelResult fuel,
    RunSketch sketch,
    Optional<SourceFile> source,
    Optional<Ledger<RowFate>> rows,
    List<ChannelLedger> samples,
    List<Finding> findings,
    HeatRecord heat) {

  /** Copies the lists. */
  public RunResult {
    samples = List.copyOf(samples);
    findings = List.copyOf(findings);
  }

  /** A result of which no heat balance will be asked. */
  public RunResult(
      Run run,
      Build build,
      Inclusion inclusion,
      BoilState state,
      Conditions conditions,
      Timeline timeline,
      FlameResult flame,
      BoilResult boil,
      EnergyResult energy,
      FuelResult fuel,
      RunSketch sketch,
      Optional<SourceFile> source,
      Optional<Ledger<RowFate>> rows,
      List<ChannelLedger> samples,
      List<Finding> findings) {
    this(
        run,
        build,
        inclusion,
        state,
        conditions,
        timeline,
        flame,
        boil,
        energy,
        fuel,
        sketch,
        source,
        rows,
        samples,
        findings,
        HeatRecord.NONE);
  }

  /** The same result with heat as the study as a whole tells it. */
  public RunResult with(EnergyResult other) {
    return new RunResult(
        run,
        build,
        inclusion,
        state,
        conditions,
        timeline,
        flame,
        boil,
        other,
        fuel,
        sketch,
        source,
        rows,
        samples,
        findings,
        heat);
  }

  /** The same result as if nothing of it had been excluded. */
  public RunResult asIfIncluded() {
    return new RunResult(
        run,
        build,
        new Inclusion(Optional.empty(), Optional.empty(), Optional.empty()),
        state,
        conditions,
        timeline,
        flame,
        boil,
        energy,
        fuel,
        sketch,
        source,
        rows,
        samples,
        findings,
        heat);
  }

  /** How it ended: as told, else as it was seen; empty if neither. */
  public Optional<Outcome> outcome() {
    return state.outcome();
  }

  /** Whether the water is known to have boiled. */
  public boolean boiled() {
    return state instanceof BoilState.Boiled;
  }

  /** Whether the water is known not to have boiled. */
  public boolean didNotBoil() {
    return state instanceof BoilState.DidNotBoil;
  }
}
