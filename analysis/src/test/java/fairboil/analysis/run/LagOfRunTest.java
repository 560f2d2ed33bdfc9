package fairboil.analysis.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.TimeConstant;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The lag of a flame probe, told or taken from a step, in the figures of a run. */
class LagOfRunTest {

  private static final double TAU = 8;
  private static final int LENGTH = 900;
  private static final int LIT = 60;

  /** How the probe came into the flame. */
  private enum Probe {
    /** It was there when the fire was lit, and rose with it. */
    WAITING(40),
    /** It was put into a burning flame at once. */
    PLUNGED(0.01);

    private final double rise;

    Probe(double rise) {
      this.rise = rise;
    }

    /** Gas of 640 °C that swells by 120 K once; its bead lags by {@link #TAU}. */
    double[] celsius() {
      Random random = new Random(11);
      double[] celsius = new double[LENGTH];
      double bead = 20;
      for (int i = 0; i < LENGTH; i++) {
        for (int k = 0; k < 20; k++) {
          double t = i + k / 20.0;
          double grown = t < LIT ? 0 : 1 - Math.exp(-(t - LIT) / rise);
          double gas = 20 + grown * (620 + 120 * Math.exp(-Math.pow((t - 500) / 20, 2)));
          bead += (gas - bead) / TAU / 20;
        }
        celsius[i] = bead + random.nextGaussian();
      }
      return celsius;
    }
  }

  /** The highest mean of the gas over 10 s: its swelling averaged about its middle. */
  private static double truth() {
    double sum = 0;
    for (int k = 0; k < 1000; k++) {
      double t = -5 + (k + 0.5) / 100;
      sum += 640 + 120 * Math.exp(-Math.pow(t / 20, 2));
    }
    return sum / 1000;
  }

  private static StudyFixture fixture() {
    double[] seconds = new double[LENGTH];
    Arrays.setAll(seconds, i -> i);
    return new StudyFixture().mark(Event.LIT, LIT).mark(Event.POT_ON, 90).times(seconds);
  }

  private static double u(Figure figure, Influence influence) {
    return figure.budget().lines().stream()
        .filter(line -> line.influence() == influence)
        .mapToDouble(BudgetLine::contribution)
        .sum();
  }

  @Test
  void toldLagIsUndoneWithTheNoiseThatItAdds() {
    FlameResult shown = fixture().channel(Role.FLAME, Probe.WAITING.celsius()).analyse().flame();
    FlameResult undone =
        fixture()
            .lag(new TimeConstant.Told(Quantity.of(TAU, Unit.SECOND)))
            .channel(Role.FLAME, Probe.WAITING.celsius())
            .analyse()
            .flame();

    assertThat(shown.lagUndone().isKnown()).isFalse();
    assertThat(truth() - shown.peak().orNaN()).isGreaterThan(5);
    double u = undone.peak().budget().independent() + u(undone.peak(), Influence.LAG);
    assertThat(undone.peak().orNaN()).isCloseTo(truth(), within(2 * u));
    assertThat(undone.lagUndone().orNaN())
        .isCloseTo(undone.peak().orNaN() - shown.peak().orNaN(), within(1e-9));
    assertThat(u(undone.peak(), Influence.LAG))
        .isCloseTo(0.2 * undone.lagUndone().orNaN(), within(1e-9));
    assertThat(u(undone.peak(), Influence.LAG_NOISE)).isPositive();
    assertThat(u(shown.peak(), Influence.LAG_NOISE)).isZero();
  }

  @Test
  void lagIsTakenFromAStepInTheLogWhereThatIsAskedFor() {
    RunResult run =
        fixture()
            .lag(new TimeConstant.OfStep())
            .channel(Role.FLAME, Probe.PLUNGED.celsius())
            .analyse();

    assertThat(run.findings())
        .extracting(Finding::problem)
        .anyMatch(told -> told.matches("its time constant is (7\\.[5-9]|8\\.[0-5]) s, by .*"));
    assertThat(run.flame().lagUndone().orNaN()).isGreaterThan(5);
    assertThat(run.flame().peak().orNaN())
        .isCloseTo(truth(), within(2 * run.flame().peak().budget().combined()));
  }

  @Test
  void withoutAStepNothingIsUndoneAndThatIsSaid() {
    RunResult run =
        fixture()
            .lag(new TimeConstant.OfStep())
            .channel(Role.FLAME, Probe.WAITING.celsius())
            .analyse();

    assertThat(run.flame().lagUndone().isKnown()).isFalse();
    assertThat(run.flame().peak().isKnown()).isTrue();
    assertThat(run.findings())
        .extracting(Finding::problem)
        .contains("no step in the log is clear enough to tell its time constant");
  }
}
