package fairboil.analysis.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.ingest.choice.Role;
import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class ThinningTest {

  private static Trace trace(int size, double missing) {
    Random random = new Random(size);
    double[] seconds = new double[size];
    double[] celsius = new double[size];
    for (int i = 0; i < size; i++) {
      seconds[i] = i * 0.5;
      celsius[i] = random.nextDouble() < missing ? Double.NaN : 500 + 100 * random.nextGaussian();
    }
    return Trace.of(seconds, celsius, 0.5);
  }

  @Property(tries = 100)
  void keepsTheHighestAndLowestInFewPoints(
      @ForAll @IntRange(min = 1, max = 20_000) int size,
      @ForAll @DoubleRange(min = 0, max = 0.95) double missing) {
    Trace trace = trace(size, missing);
    Curve curve = Thinning.thin("flame", Role.FLAME, trace);
    double[] present = trace.withoutMissing().values();
    double[] drawn = Arrays.stream(curve.celsius()).filter(v -> !Double.isNaN(v)).toArray();

    assertThat(curve.size()).isLessThanOrEqualTo(Thinning.MOST_POINTS);
    assertThat(Arrays.stream(drawn).max()).isEqualTo(Arrays.stream(present).max());
    assertThat(Arrays.stream(drawn).min()).isEqualTo(Arrays.stream(present).min());
    assertThat(curve.seconds()).isSorted();
  }

  @Test
  void shortTracesAreKeptWhole() {
    assertThat(Thinning.thin("water", Role.WATER, trace(300, 0)).size()).isEqualTo(300);
  }

  @Test
  void aLongGapIsNotDrawnAcross() {
    double[] seconds = new double[2000];
    double[] celsius = new double[2000];
    for (int i = 0; i < 2000; i++) {
      seconds[i] = i < 1000 ? i : i + 500;
      celsius[i] = i * 0.01;
    }

    Curve curve = Thinning.thin("water", Role.WATER, Trace.of(seconds, celsius, 1));

    double[] gaps = new double[2];
    int found = 0;
    for (int i = 0; i < curve.size(); i++) {
      if (Double.isNaN(curve.celsius()[i])) {
        gaps[found++] = curve.seconds()[i];
      }
    }
    assertThat(found).isEqualTo(1);
    assertThat(gaps[0]).isCloseTo(1249.5, within(1.0));
  }

  @Test
  void nothingGivesNothing() {
    assertThat(Thinning.thin("other", Role.OTHER, Trace.empty()).size()).isZero();
  }
}
