package fairboil.analysis.run;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.measure.Measure;
import fairboil.analysis.measure.Measure.Level;
import fairboil.analysis.measure.WithoutBoil;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Role;
import fairboil.ingest.choice.WeighedAt;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.PotGiven;
import fairboil.ingest.sheet.RunsSheet;
import java.lang.reflect.Constructor;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * What each measure declares of runs that did not boil, against two burns that differ in nothing
 * but their fire: of one the water boiled.
 */
class WhatFailuresLackTest {

  private static RunResult burn(double share, WeighedAt weighed) {
    Burn burn = new Burn(share, 3);
    StudyFixture fixture =
        new StudyFixture()
            .cell(RunsSheet.AMBIENT, Burn.AMBIENT, Unit.CELSIUS)
            .cell(RunsSheet.STATION_PRESSURE, 97.8, Unit.KILOPASCAL)
            .cell(RunsSheet.WATER, Burn.WATER, Unit.KILOGRAM)
            .cell(RunsSheet.WATER_START, Burn.START, Unit.CELSIUS)
            .cell(RunsSheet.WATER_LEFT, 0.75, Unit.KILOGRAM)
            .cell(RunsSheet.POT, new PotGiven.Named("billy"))
            .cell(RunsSheet.FUEL, "spruce pellets")
            .cell(RunsSheet.FUEL_LOADED, 200, Unit.GRAM)
            .cell(RunsSheet.FUEL_LEFT, 0, Unit.GRAM)
            .cell(RunsSheet.CHAR_LEFT, 20, Unit.GRAM)
            .cell(RunsSheet.WEIGHED_AT, weighed)
            .cell(RunsSheet.MOISTURE_WET_BASIS, 8, Unit.PERCENT)
            .pot("billy", Burn.POT_GRAMS, "aluminium")
            .lag(0)
            .mark(Event.LIT, 0)
            .mark(Event.POT_ON, Burn.POT_ON)
            .mark(Event.FLAME_OUT, Burn.FLAME_OUT);
    return fixture
        .times(burn.seconds)
        .channel(Role.FLAME, burn.flame)
        .channel(Role.WATER, burn.water)
        .analyse();
  }

  private static Set<Measure> known(RunResult run) {
    return Arrays.stream(Measure.values())
        .filter(measure -> measure.of(run).isKnown())
        .collect(Collectors.toSet());
  }

  @Test
  void everyMeasureOfARunDeclaresWhatAFailureLacks() {
    for (WeighedAt weighed : new WeighedAt[] {WeighedAt.BURNT_OUT, WeighedAt.BOIL}) {
      RunResult boiled = burn(1, weighed);
      RunResult failed = burn(0.3, weighed);
      assertThat(boiled.boiled()).isTrue();
      assertThat(failed.didNotBoil()).isTrue();
      assertThat(known(boiled))
          .contains(
              Arrays.stream(Measure.values())
                  .filter(measure -> measure.level() == Level.RUN)
                  .toArray(Measure[]::new));
      for (Measure measure : known(boiled)) {
        assertThat(measure.isHidden(failed))
            .as("%s of a run that failed, weighed %s", measure, weighed)
            .isEqualTo(!measure.of(failed).isKnown());
        assertThat(measure.isHidden(boiled)).as(measure.label()).isFalse();
      }
    }
  }

  /** A new constant cannot be written without saying it. */
  @Test
  void noMeasureCanForgetToDeclareIt() {
    for (Constructor<?> constructor : Measure.class.getDeclaredConstructors()) {
      assertThat(constructor.getParameterTypes()).contains(WithoutBoil.class);
    }
    assertThat(Measure.values()).extracting(Measure::withoutBoil).doesNotContainNull();
  }
}
