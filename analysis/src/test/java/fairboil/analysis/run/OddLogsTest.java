package fairboil.analysis.run;

import static fairboil.analysis.NoNaN.assertNoNaN;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import fairboil.analysis.OddNumbers;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Role;
import fairboil.ingest.choice.YesNo;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.SensorsSheet;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** No log makes the analysis of its run throw, take for ever, or give a number that is none. */
class OddLogsTest {

  private static final Duration LIMIT = Duration.ofSeconds(60);

  @Property(tries = 150, seed = "1")
  void anyLog(@ForAll long seed) {
    assertTimeoutPreemptively(
        LIMIT,
        () -> assertNoNaN(fixture(new OddNumbers(seed)).analyse(), "run"),
        () -> "seed " + seed);
  }

  /** Of a level so high that a third of the noise is lost in it. */
  @Example
  void noiseThatIsLostInItsLevel() {
    anyLog(15009);
  }

  private static StudyFixture fixture(OddNumbers odd) {
    int size = (int) odd.oneOf(1, 2, 3, 12, 60, 400, 1500);
    StudyFixture fixture = new StudyFixture().times(seconds(odd, size));
    cells(odd, fixture);
    for (Event event : Event.values()) {
      if (odd.happens(0.25)) {
        fixture.mark(event, odd.oneOf(0, 5, 90, 600, 1e5, 300 * odd.below(6)));
      }
    }
    if (odd.happens(0.3)) {
      fixture.lag(odd.oneOf(0.1, 8, 1e4)).sensor(SensorsSheet.UNDO_LAG, YesNo.YES);
    }
    for (Role role : List.of(Role.FLAME, Role.WATER, Role.AMBIENT)) {
      if (odd.happens(0.8)) {
        fixture.channel(role, readings(odd, size));
      }
    }
    return fixture;
  }

  private static void cells(OddNumbers odd, StudyFixture fixture) {
    if (odd.happens(0.6)) {
      fixture.cell(RunsSheet.AMBIENT, odd.oneOf(-40, 0, 20, 60, 1e15), Unit.CELSIUS);
    }
    if (odd.happens(0.6)) {
      fixture.cell(RunsSheet.WATER, odd.oneOf(0, 1e-9, 0.8, 1e9), Unit.KILOGRAM);
      fixture.cell(RunsSheet.WATER_LEFT, odd.oneOf(0, 0.7, 0.8, 2), Unit.KILOGRAM);
    }
    if (odd.happens(0.6)) {
      fixture.cell(RunsSheet.ALTITUDE, odd.oneOf(-400, 0, 3000, 1e9), Unit.METRE);
    }
    if (odd.happens(0.6)) {
      fixture.cell(RunsSheet.FUEL_LOADED, odd.oneOf(0, 0.1, 1e9), Unit.KILOGRAM);
      fixture.cell(RunsSheet.CHAR_LEFT, odd.oneOf(0, 0.1, 5), Unit.KILOGRAM);
      fixture.cell(RunsSheet.MOISTURE_WET_BASIS, odd.oneOf(0, 0.1, 1), Unit.FRACTION);
    }
    if (odd.happens(0.3)) {
      fixture.cell(RunsSheet.WATER_START, odd.oneOf(-5, 12, 99, 100, 300), Unit.CELSIUS);
    }
  }

  private static double[] seconds(OddNumbers odd, int size) {
    double step = odd.oneOf(0, 0.1, 1, 1, 1, 10, 3600);
    boolean gap = odd.happens(0.2);
    double[] seconds = new double[size];
    Arrays.setAll(seconds, i -> step * i + (gap && i > size / 2 ? 1e6 : 0));
    return seconds;
  }

  private static double[] readings(OddNumbers odd, int size) {
    double missing = odd.oneOf(0, 0, 0, 0.3, 1);
    double[] readings = shape(odd, size);
    for (int i = 0; i < size; i++) {
      readings[i] = odd.happens(missing) ? Double.NaN : readings[i];
    }
    return readings;
  }

  private static double[] shape(OddNumbers odd, int size) {
    double level = odd.oneOf(-273, -40, 0, 20, 99.9, 640, 1e15);
    double height = odd.oneOf(-1e15, -500, 79, 600, 1e15);
    int at = odd.below(size);
    double noise = odd.oneOf(0, 0, 0.3, 20);
    double[] shape = new double[size];
    switch (odd.below(5)) {
      case 0 -> Arrays.fill(shape, level);
      case 1 -> Arrays.setAll(shape, i -> i < at ? level : level + height);
      case 2 -> Arrays.setAll(shape, i -> level + Math.min(80, 0.2 * i));
      case 3 -> Arrays.setAll(shape, i -> i == at ? level + height : level);
      default -> {
        return odd.values(size);
      }
    }
    Arrays.setAll(shape, i -> shape[i] + noise * (odd.happens(0.5) ? 1 : -1));
    return shape;
  }
}
