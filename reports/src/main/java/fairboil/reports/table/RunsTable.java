package fairboil.reports.table;

import static fairboil.reports.table.TableColumn.figure;
import static fairboil.reports.table.TableColumn.independentUncertainty;
import static fairboil.reports.table.TableColumn.text;
import static fairboil.reports.table.TableColumn.uncertainty;

import fairboil.analysis.run.BoilResult.BoilTimeFrom;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.choice.NormaliseBy;
import fairboil.reports.words.Display;
import fairboil.reports.words.RunWords;
import java.util.ArrayList;
import java.util.List;

/** {@code runs.csv}: everything worked out for each run. */
final class RunsTable {

  static final TableSchema<RunResult> SCHEMA = new TableSchema<>("runs.csv", "a run", columns());

  private RunsTable() {}

  private static List<TableColumn<RunResult>> columns() {
    List<TableColumn<RunResult>> columns = new ArrayList<>();
    columns.addAll(identity());
    columns.addAll(conditions());
    columns.addAll(flame());
    columns.addAll(boil());
    columns.addAll(energy());
    columns.addAll(fuel());
    return columns;
  }

  private static List<TableColumn<RunResult>> identity() {
    return List.of(
        text("run", "name of the run", run -> run.run().key().name()),
        text("build", "build that was burnt", run -> run.run().build().name()),
        text("design", "plan that it was built to", run -> run.build().design().orElse("")),
        text(
            "included",
            "whether the run counts: yes or no",
            run -> run.inclusion().included() ? "yes" : "no"),
        text(
            "reason",
            "fault of the test, or of the program, for which it, its peak or its boil is left out",
            run -> RunWords.exclusion(run.inclusion(), Display.in(DisplayUnits.METRIC)).orElse("")),
        text(
            "outcome",
            "how it ended; not seen: nobody and nothing saw whether the water boiled",
            run -> run.state().label()));
  }

  private static List<TableColumn<RunResult>> conditions() {
    return List.of(
        figure("ambient", TableUnit.CELSIUS, "air temperature", run -> run.conditions().ambient()),
        figure(
            "pressure",
            TableUnit.KILOPASCAL,
            "air pressure at the place",
            run -> run.conditions().pressure()),
        figure(
            "boiling_point",
            TableUnit.CELSIUS,
            "boiling point of water at that pressure",
            run -> run.conditions().boilingPoint()),
        figure("water", TableUnit.KILOGRAM, "water put on", run -> run.conditions().water()),
        figure(
            "water_start",
            TableUnit.CELSIUS,
            "temperature of the water when put on",
            run -> run.conditions().waterStart()));
  }

  private static List<TableColumn<RunResult>> flame() {
    return List.of(
        figure(
            "peak",
            TableUnit.CELSIUS,
            "highest held flame temperature of the bead",
            run -> run.flame().peak()),
        uncertainty(
            "peak",
            TableUnit.CELSIUS,
            "standard uncertainty of the peak",
            run -> run.flame().peak()),
        independentUncertainty(
            "peak",
            TableUnit.CELSIUS,
            "its part that is independent from run to run",
            run -> run.flame().peak()),
        figure(
            "peak_at",
            TableUnit.SECOND,
            "when, from the first reading of the log",
            run -> run.flame().peakAt()),
        figure(
            "peak_rise",
            TableUnit.CELSIUS,
            "peak less air temperature",
            run -> run.flame().peakRise()),
        figure(
            "peak_normalised",
            TableUnit.CELSIUS,
            "peak restated for the reference air temperature",
            run -> run.flame().normalisedPeak()),
        uncertainty(
            "peak_normalised",
            TableUnit.CELSIUS,
            "its standard uncertainty",
            run -> run.flame().normalisedPeak()),
        figure(
            "flame_steady",
            TableUnit.CELSIUS,
            "median flame temperature from gas lit (or pot on) to flame out",
            run -> run.flame().steadyFlame()),
        uncertainty(
            "flame_steady",
            TableUnit.CELSIUS,
            "its standard uncertainty",
            run -> run.flame().steadyFlame()));
  }

  private static List<TableColumn<RunResult>> boil() {
    return List.of(
        figure(
            "hottest_water",
            TableUnit.CELSIUS,
            "highest held water temperature",
            run -> run.boil().hottestWater()),
        figure(
            "plateau_offset",
            TableUnit.CELSIUS,
            "boiling plateau of the log less boiling point",
            run -> run.boil().plateauOffset()),
        figure(
            "boil_time",
            TableUnit.SECOND,
            "from the later of lit and pot on to the boil",
            run -> run.boil().boilTime()),
        uncertainty(
            "boil_time",
            TableUnit.SECOND,
            "its standard uncertainty",
            run -> run.boil().boilTime()),
        text(
            "boil_time_from",
            "what the boil time stands on",
            run -> run.boil().from().map(BoilTimeFrom::label).orElse("")),
        figure(
            "boil_time_stopwatch",
            TableUnit.SECOND,
            "boil time by the stopwatch",
            run -> run.boil().stopwatchBoilTime()),
        figure(
            "lit_to_boil",
            TableUnit.SECOND,
            "from lighting to the boil",
            run -> run.boil().litToBoil()),
        figure(
            "burn_time",
            TableUnit.SECOND,
            "from lighting to flame out",
            run -> run.boil().burnTime()));
  }

  private static List<TableColumn<RunResult>> energy() {
    return List.of(
        figure(
            "net_power",
            TableUnit.WATT,
            "heat into water and pot from start to boil over boil time",
            run -> run.energy().netPower()),
        figure(
            "power_growth",
            TableUnit.PER_SECOND,
            "growth of the fire's power from pot on, as a fraction per second",
            run -> run.energy().powerGrowth()),
        figure(
            "loss",
            TableUnit.WATT_PER_KELVIN,
            "heat lost to the air per degree",
            run -> run.energy().loss()),
        uncertainty(
            "loss",
            TableUnit.WATT_PER_KELVIN,
            "its standard uncertainty",
            run -> run.energy().loss()),
        figure(
            "boil_time_energy_scaled",
            TableUnit.SECOND,
            "boil time restated by energy scaling",
            run -> run.energy().energyScaledBoilTime()),
        figure(
            "boil_time_heat_balance",
            TableUnit.SECOND,
            "boil time restated by heat balance",
            run -> run.energy().heatBalanceBoilTime()),
        figure(
            "boil_time_normalised",
            TableUnit.SECOND,
            "boil time restated by the method of the study",
            run -> run.energy().normalisedBoilTime()),
        uncertainty(
            "boil_time_normalised",
            TableUnit.SECOND,
            "its standard uncertainty",
            run -> run.energy().normalisedBoilTime()),
        independentUncertainty(
            "boil_time_normalised",
            TableUnit.SECOND,
            "its part that is independent from run to run",
            run -> run.energy().normalisedBoilTime()),
        text(
            "boil_time_normalised_by",
            "the method",
            run -> run.energy().normalisedBy().map(NormaliseBy::label).orElse("")));
  }

  private static List<TableColumn<RunResult>> fuel() {
    return List.of(
        figure(
            "dry_fuel",
            TableUnit.KILOGRAM,
            "equivalent dry fuel burnt from lit to flame out",
            run -> run.fuel().dryFuel()),
        figure(
            "burning_rate",
            TableUnit.GRAM_PER_MINUTE,
            "dry fuel per minute",
            run -> run.fuel().burningRate()),
        figure(
            "firepower",
            TableUnit.WATT,
            "heat of the fuel per second",
            run -> run.fuel().firepower()),
        figure(
            "efficiency",
            TableUnit.NONE,
            "share of the fuel's heat that went into water and steam, char credited",
            run -> run.fuel().efficiency()),
        figure(
            "efficiency_without_char",
            TableUnit.NONE,
            "the same, char not credited",
            run -> run.fuel().efficiencyWithoutChar()),
        figure(
            "specific_consumption",
            TableUnit.NONE,
            "dry fuel per mass of water boiled",
            run -> run.fuel().specificConsumption()),
        figure(
            "fuel_per_boil",
            TableUnit.KILOGRAM,
            "dry fuel for the reference water brought to the boil",
            run -> run.fuel().fuelPerBoil()));
  }
}
