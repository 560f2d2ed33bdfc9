package fairboil.distribution;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two large logs in one study do not exhaust the memory that the launcher gives. */
class LargeLogsIT {

  /** Of the largest logs that are read: readings, and memory in MB. */
  private static final int MOST_READINGS = 5_000_000;

  private static final int MEMORY = 512;

  /** Memory that the program takes without logs, MB. */
  private static final int PROGRAM = 64;

  @TempDir private Path folder;

  @Test
  @Tag("long")
  void twoOfTheLargest() throws IOException {
    bothAreRead(MOST_READINGS, MEMORY);
  }

  @Test
  void twoOfAFifthOfTheLargestInAFifthOfTheMemory() throws IOException {
    bothAreRead(MOST_READINGS / 5, PROGRAM + (MEMORY - PROGRAM) / 5);
  }

  private void bothAreRead(int readings, int memory) throws IOException {
    Path study = Files.createDirectory(folder.resolve("study"));
    Files.writeString(
        study.resolve("runs.csv"), "run,build,log,water (g)\n1,A,a.csv,800\n2,A,b.csv,800\n");
    writeLog(study.resolve("a.csv"), readings);
    Files.copy(study.resolve("a.csv"), study.resolve("b.csv"));

    Program check =
        Program.run(
            folder,
            Map.of("PATH", "/usr/bin:/bin", "FAIRBOIL_JAVA_OPTS", "-Xmx" + memory + "m"),
            List.of(Program.LAUNCHER.toString(), "check", study.toString()));

    assertThat(check.printed()).doesNotContain("memory");
    assertThat(check.exitCode()).as(check.printed()).isZero();
  }

  /** As many digits as the limit of 200 MB for a file leaves room for. */
  private static void writeLog(Path file, int readings) throws IOException {
    Random random = new Random(7);
    try (BufferedWriter out = Files.newBufferedWriter(file)) {
      out.write("time (s),flame (°C),water (°C),ambient (°C)\n");
      for (int i = 0; i < readings; i++) {
        out.write(i / 2 + (i % 2 == 0 ? ".0," : ".5,"));
        out.write(500 + random.nextInt(300) + "." + (1000 + random.nextInt(9000)) + ",");
        out.write(20 + Math.min(78, i / 4000) + "." + (1000 + random.nextInt(900)) + ",");
        out.write("15." + (1000 + random.nextInt(1000)) + "\n");
      }
    }
    assertThat(Files.size(file)).isLessThan(200_000_000);
  }
}
