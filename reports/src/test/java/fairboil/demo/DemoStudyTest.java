package fairboil.demo;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.demo.DemoRun.Fate;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The committed demonstration is what its generator makes, and is what its README says. */
final class DemoStudyTest {

  /** Maven runs the tests of a module in the module's own folder. */
  private static final Path DEMO = Path.of("..", "data-demo");

  private final List<DemoRun> runs = DemoStudy.runs();

  @Test
  void committedFilesAreByteForByteWhatTheGeneratorMakes() throws IOException {
    for (var file : DemoStudy.files(runs).entrySet()) {
      byte[] made = file.getValue().getBytes(StandardCharsets.UTF_8);
      byte[] committed = Files.readAllBytes(DEMO.resolve(file.getKey()));
      assertThat(Arrays.mismatch(committed, made)).as("%s, byte", file.getKey()).isEqualTo(-1);
    }
  }

  @Test
  void nothingElseIsInTheFolder() throws IOException {
    SortedSet<String> expected = new TreeSet<>(DemoStudy.files(runs).keySet());
    expected.add("README.md");
    try (Stream<Path> files = Files.walk(DEMO)) {
      SortedSet<String> found =
          files
              .filter(Files::isRegularFile)
              .map(file -> DEMO.relativize(file).toString().replace('\\', '/'))
              .collect(Collectors.toCollection(TreeSet::new));
      assertThat(found).isEqualTo(expected);
    }
  }

  @Test
  void staysSmallEnoughToKeepInTheRepository() {
    long bytes =
        DemoStudy.files(runs).values().stream()
            .mapToLong(text -> text.getBytes(StandardCharsets.UTF_8).length)
            .sum();
    assertThat(bytes).isLessThan(6_000_000);
  }

  @Test
  void twelveStovesOfTwoDesignsAreBurntFourTimesAndOneThreeTimes() {
    for (Stove stove : Stove.all()) {
      long burns = runs.stream().filter(run -> run.stove().equals(stove)).count();
      assertThat(burns).as(stove.name()).isEqualTo(stove.name().equals("L2") ? 3 : 4);
    }
    assertThat(Stove.all()).hasSize(12);
  }

  @Test
  void waterAirAndFlickerAreWithinWhatTheStudyIsMeantToCover() {
    assertThat(lowest(run -> run.burn().pot().waterKg())).isGreaterThanOrEqualTo(0.5);
    assertThat(highest(run -> run.burn().pot().waterKg())).isLessThanOrEqualTo(1.2);
    assertThat(lowest(run -> run.burn().air().celsius())).isLessThan(-5);
    assertThat(highest(run -> run.burn().air().celsius())).isGreaterThan(25);
    assertThat(lowest(run -> run.burn().times().readings())).isGreaterThanOrEqualTo(25 * 60);
    assertThat(highest(run -> run.burn().times().readings())).isLessThanOrEqualTo(60 * 60);
  }

  @Test
  void everyPotLidAndWindHasALogOfItsCooling() {
    assertThat(kinds(run -> true)).isEqualTo(kinds(DemoStudyTest::coolsFor25Minutes));
  }

  @Test
  void everyBurnThatWasMeantToBoilBoilsForLongEnoughToSee() {
    for (DemoRun run : runs) {
      double boilAt = run.happened().water().boilAt();
      if (run.fate() == Fate.BOILED || run.fate() == Fate.NO_LOG) {
        assertThat(run.burn().times().flameOut() - boilAt).as(run.name()).isGreaterThan(300);
      } else {
        assertThat(boilAt).as(run.name()).isNaN();
      }
    }
  }

  @Test
  void fuelIsUsedWithAnEfficiencyOfSuchStoves() {
    for (DemoRun run : runs) {
      if (run.fate() == Fate.BOILED) {
        double wet = run.day().moisture() / 100;
        double fuel = run.fuel().loaded() * (1 - wet) * Fuel.DRY_PELLETS;
        double charLeft = run.fuel().charLeft() * 29_500;
        assertThat(run.happened().usefulHeat() / (fuel - charLeft)).isBetween(0.20, 0.35);
      }
    }
  }

  private static boolean coolsFor25Minutes(DemoRun run) {
    return run.fate() == Fate.BOILED
        && run.burn().times().logTo() - run.burn().times().potOff() >= 25 * 60;
  }

  private SortedSet<String> kinds(Predicate<DemoRun> which) {
    return runs.stream()
        .filter(which)
        .map(run -> run.cookware() + " " + run.cover() + " B" + run.day().wind())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private double lowest(ToDoubleFunction<DemoRun> of) {
    return runs.stream().mapToDouble(of).min().orElseThrow();
  }

  private double highest(ToDoubleFunction<DemoRun> of) {
    return runs.stream().mapToDouble(of).max().orElseThrow();
  }
}
