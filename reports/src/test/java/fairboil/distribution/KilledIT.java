package fairboil.distribution;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Killed at any moment, the program leaves a whole report: the old one or the new one. */
class KilledIT {

  private static final int KILLS = 50;

  @TempDir private Path temp;

  @Test
  void killedFiftyTimesItLeavesAWholeReport() throws Exception {
    Path study = SmallStudy.write(temp.resolve("study"));
    Path out = temp.resolve("report");
    long unhurried = finish(study, out);
    assertThat(Trees.isWhole(out)).isTrue();
    Random moments = new Random(50);
    int killed = 0;
    for (int i = 0; i < KILLS; i++) {
      killed += killAfter((long) (unhurried * moments.nextDouble()), study, out) ? 1 : 0;
      assertThat(Trees.isWhole(wholeReport(out))).as("after kill %d", i + 1).isTrue();
    }
    assertThat(killed).as("runs that were really cut short").isGreaterThan(KILLS / 3);
    finish(study, out);
    assertThat(Trees.isWhole(out)).isTrue();
    assertThat(besides(out)).as("what the kills left was cleared away").isEmpty();
  }

  /** The report, or the old one that the next run puts back after a kill between the renames. */
  private Path wholeReport(Path out) throws IOException {
    if (Files.exists(out)) {
      return out;
    }
    List<Path> old = new ArrayList<>(besides(out));
    old.removeIf(path -> !path.getFileName().toString().contains(".old-"));
    assertThat(old).hasSize(1);
    return old.get(0);
  }

  private List<Path> besides(Path out) throws IOException {
    List<Path> found = new ArrayList<>();
    try (DirectoryStream<Path> entries =
        Files.newDirectoryStream(temp, "." + out.getFileName() + ".*")) {
      entries.forEach(found::add);
    }
    return found;
  }

  private long finish(Path study, Path out) throws Exception {
    long start = System.nanoTime();
    Program program = Program.run(temp, Map.of("PATH", "/usr/bin:/bin"), command(study, out));
    assertThat(program.exitCode()).as(program.printed()).isLessThanOrEqualTo(1);
    return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
  }

  /** Whether the program was still running when it was killed. */
  private boolean killAfter(long milliseconds, Path study, Path out) throws Exception {
    Process process =
        new ProcessBuilder(command(study, out))
            .directory(temp.toFile())
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    boolean ended = process.waitFor(milliseconds, TimeUnit.MILLISECONDS);
    process.destroyForcibly().waitFor();
    return !ended;
  }

  private static List<String> command(Path study, Path out) {
    return List.of(
        Program.JAVA_HOME.resolve("bin/java").toString(),
        "-XX:TieredStopAtLevel=1",
        "-XX:+UseSerialGC",
        "-jar",
        Program.JAR.toString(),
        "report",
        study.toString(),
        "--out",
        out.toString());
  }
}
