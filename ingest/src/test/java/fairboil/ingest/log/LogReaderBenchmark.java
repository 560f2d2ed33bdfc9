package fairboil.ingest.log;

import com.opencsv.CSVParser;
import com.opencsv.CSVReader;
import com.opencsv.CSVReaderBuilder;
import com.opencsv.RFC4180ParserBuilder;
import com.opencsv.exceptions.CsvValidationException;
import fairboil.ingest.grid.StudyFolder;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How fast a log is read, beside OpenCSV alone with {@code Double.parseDouble}. The score is in
 * megabytes a second. From the top folder, after {@code mvn -q install -DskipTests}:
 *
 * <pre>
 * mvn -q -pl ingest dependency:build-classpath -Dmdep.outputFile=target/classpath.txt
 * java -cp ingest/target/test-classes:ingest/target/classes:$(cat ingest/target/classpath.txt) \
 *     org.openjdk.jmh.Main LogReaderBenchmark
 * </pre>
 *
 * <p>Add {@code -jvmArgsAppend "-XX:TieredStopAtLevel=1 -XX:+UseParallelGC"} for the figure under
 * the launcher's options.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@OperationsPerInvocation(LogReaderBenchmark.MEGABYTES)
@Fork(1)
@Warmup(iterations = 4, time = 3)
@Measurement(iterations = 4, time = 3)
public class LogReaderBenchmark {

  static final int MEGABYTES = 16;

  private Path folder;
  private Path file;
  private LogReader reader;

  /** Writes a log of clean numbers: time, flame, water and air, one row a second. */
  @Setup(Level.Trial)
  public void write() throws IOException {
    folder = Files.createTempDirectory("fairboil-benchmark");
    file = folder.resolve("log.csv");
    try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
      out.write("time (s),flame (°C),water (°C),air (°C)\n");
      long written = 0;
      for (int i = 0; written < MEGABYTES * 1_000_000L; i++) {
        double flame = 620 + 30 * Math.sin(i * 0.7);
        double water = 20 + i % 8000 * 0.01;
        String row = String.format(Locale.ROOT, "%d,%.1f,%.2f,8.5\n", i, flame, water);
        out.write(row);
        written += row.length();
      }
    }
    reader = new LogReader(StudyFolder.at(folder), Runs.STUDY, List.of());
  }

  /** Takes the log away. */
  @TearDown(Level.Trial)
  public void delete() throws IOException {
    Files.delete(file);
    Files.delete(folder);
  }

  /** The log reader, from the file to columns, with fingerprint and ledger. */
  @Benchmark
  public Log logReader() {
    return reader.open(Runs.of("log.csv")).log().orElseThrow();
  }

  /** OpenCSV's RFC 4180 parser alone, and {@code Double.parseDouble} for every cell. */
  @Benchmark
  public double openCsv() throws IOException, CsvValidationException {
    double sum = 0;
    try (Reader text = Files.newBufferedReader(file, StandardCharsets.UTF_8);
        CSVReader csv =
            new CSVReaderBuilder(text)
                .withCSVParser(
                    new RFC4180ParserBuilder().withSeparator(CSVParser.DEFAULT_SEPARATOR).build())
                .withSkipLines(1)
                .build()) {
      for (String[] row = csv.readNext(); row != null; row = csv.readNext()) {
        for (String cell : row) {
          sum += Double.parseDouble(cell);
        }
      }
    }
    return sum;
  }
}
