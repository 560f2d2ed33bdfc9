package fairboil.analysis.trace;

import java.util.OptionalDouble;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long it takes to find the peak and the boil in a trace of one reading a second, in
 * microseconds. From the top folder: {@code sh .dev/bench analysis TraceBenchmark}.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class TraceBenchmark {

  private static final double BOILING = 99;

  /** How many readings the traces have. */
  @Param({"1200", "4800"})
  private int readings;

  private Trace flame;
  private Trace water;
  private BoilSearch search;

  /** Makes a flame that flickers, and water that warms for half the time and then boils. */
  @Setup(Level.Trial)
  public void make() {
    Random random = new Random(3);
    double[] seconds = new double[readings];
    double[] hot = new double[readings];
    double[] warm = new double[readings];
    for (int i = 0; i < readings; i++) {
      seconds[i] = i;
      hot[i] = 650 + 30 * Math.sin(i / 200.0) + 15 * random.nextGaussian();
      double heating = 15 + (BOILING - 15) * 2 * i / readings;
      warm[i] = Math.min(BOILING, heating) + 0.1 * random.nextGaussian();
    }
    flame = Trace.of(seconds, hot, 1);
    water = Trace.of(seconds, warm, 1);
    search = new BoilSearch(0, readings, OptionalDouble.of(BOILING), 1, 0, 0.1);
  }

  /** Finds the peak held for 10 s. */
  @Benchmark
  public Peak peak() {
    return PeakFinder.find(flame, 0, readings, 10);
  }

  /** Finds the boil. */
  @Benchmark
  public Boil boil() {
    return BoilFinder.find(water, search);
  }
}
