package fairboil.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Differences with and without a run that was left out. The stoves and their burns are made up. */
class ExcludedRunTest {

  private static final String[] STOVES = {
    "T1 498 504", "T2 511 507", "T3 489 495", "S1 530 536", "S2 541 545", "S3 525 700"
  };

  @TempDir private Path temp;

  private Path study() {
    return temp.resolve("study");
  }

  @BeforeEach
  void write() throws IOException {
    Files.createDirectory(study());
    StringBuilder runs =
        new StringBuilder("run,build,outcome,water,water start,altitude,exclude\n");
    StringBuilder marks = new StringBuilder("run,event,time (s)\n");
    StringBuilder builds = new StringBuilder("build,design\n");
    for (String stove : STOVES) {
      String[] parts = stove.split(" ", -1);
      builds.append(parts[0]).append(stove.startsWith("T") ? ",tall\n" : ",short\n");
      for (int i = 1; i < parts.length; i++) {
        String run = parts[0] + "-" + i;
        String fault = parts[i].equals("700") ? "pot knocked over" : "";
        runs.append(run + "," + parts[0] + ",boiled,1000 g,15 °C,0 m," + fault + "\n");
        marks.append(run + ",pot on,0\n" + run + ",boil," + parts[i] + "\n");
      }
    }
    Files.writeString(study().resolve("runs.csv"), runs);
    Files.writeString(study().resolve("stopwatch.csv"), marks);
    Files.writeString(study().resolve("builds.csv"), builds);
    Files.writeString(study().resolve("study.csv"), "setting,value\nboil time from,stopwatch\n");
  }

  private String page() throws IOException {
    Path out = temp.resolve("out");
    PrintWriter told = new PrintWriter(new StringWriter());
    assertThat(Main.run(told, told, "report", study().toString(), "--out", out.toString()))
        .isZero();
    return Files.readString(out.resolve("index.html"));
  }

  /**
   * R 4, on the means of stoves: {@code t.test(c(501, 509, 492), c(533, 543, 525), var.equal =
   * TRUE)} gives −33.0 (−52.9 to −13.1), and with 612.5 in place of 525 −62.2 (−132.9 to 8.6).
   */
  @Test
  void aDifferenceThatTheRunWouldHaveTurnedIsToldBothWays() throws IOException {
    assertThat(page())
        .contains(
            "tall less short in boil time would be −1:02 min (−2:13 to 0:09) rather than"
                + " −33 s (−53 to −13), which is not settled.")
        .contains("1 run was left out", "pot knocked over");
  }

  @Test
  void differencesThatItWouldNotHaveTurnedAreCounted() throws IOException {
    assertThat(page())
        .contains("Of designs and conditions, 1 other difference would be judged the same.")
        .containsPattern("Of 45 differences between those very stoves, \\d+ would be judged");
  }
}
