package fairboil.analysis.run;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Finding;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class UnsteadyProbeTest {

  private static final int COUNT = 200;

  private static List<String> told(Role role, double[] celsius) {
    double[] seconds = IntStream.range(0, COUNT).asDoubleStream().toArray();
    return new StudyFixture()
        .times(seconds).channel(role, celsius).analyse().findings().stream()
            .map(finding -> finding.problem().toString())
            .filter(problem -> problem.startsWith("the probe is unsteady"))
            .toList();
  }

  private static double[] rising() {
    return IntStream.range(0, COUNT).mapToDouble(i -> 20 + i * 0.3).toArray();
  }

  @Test
  void aSteadyProbeIsNotTold() {
    assertThat(told(Role.WATER, rising())).isEmpty();
  }

  /** A loose wire gives two levels, from reading to reading. */
  @Test
  void waterThatJumpsToAndFroIsTold() {
    double[] celsius = rising();
    for (int i = 100; i < 130; i += 2) {
      celsius[i] -= 26;
    }
    assertThat(told(Role.WATER, celsius))
        .singleElement()
        .asString()
        .contains("of 200 readings jump by more than 15.0 K and back");
    assertThat(told(Role.FLAME, celsius)).isEmpty();
  }

  /** A pot that is taken off is one fall. */
  @Test
  void aFallIsNotAJump() {
    double[] celsius = rising();
    for (int i = 150; i < COUNT; i++) {
      celsius[i] -= 40;
    }
    assertThat(told(Role.WATER, celsius)).isEmpty();
  }

  @Test
  void manyFaultsAreTold() {
    double[] celsius = rising();
    for (int i = 0; i < COUNT; i += 10) {
      celsius[i] = Double.NaN;
    }
    double[] seconds = IntStream.range(0, COUNT).asDoubleStream().toArray();
    StudyFixture fixture = new StudyFixture().times(seconds).faulty(20, Role.FLAME, celsius);
    assertThat(fixture.analyse().findings())
        .extracting(Finding::toString)
        .anyMatch(text -> text.contains("the probe is unsteady: 20 of 200 readings are faults"));
  }
}
