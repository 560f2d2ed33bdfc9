package fairboil.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Studies through the command in which nobody saw the boil, and studies in which it failed. */
class NotSeenCommandTest {

  private static final String RUNS = "run,build,water (g),water start (°C),altitude (m),outcome\n";
  private static final String CLAIM =
      """
      claim,text,measure,about,against,relation,value,holds for
      C,At least 70 % boil.,share that boiled,,,at least,70 %,on average
      """;

  @TempDir private Path temp;
  private Path study;

  @BeforeEach
  void makeStudy() throws IOException {
    study = Files.createDirectories(temp.resolve("study"));
    Files.createDirectory(study.resolve("logs"));
    write("claims.csv", CLAIM);
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(study.resolve(name), text);
  }

  private String report() throws IOException {
    StringWriter said = new StringWriter();
    PrintWriter messages = new PrintWriter(said, true);
    int status =
        Main.run(
            messages,
            messages,
            "report",
            study.toString(),
            "--out",
            temp.resolve("out").toString(),
            "--quote");
    assertThat(status).as(said.toString()).isIn(0, 1);
    return said.toString().replace('\u00a0', ' ');
  }

  private String written(String name) throws IOException {
    return Files.readString(temp.resolve("out").resolve(name)).replace('\u00a0', ' ');
  }

  private static String runs(int count, String outcome) {
    StringBuilder runs = new StringBuilder(RUNS);
    for (int run = 1; run <= count; run++) {
      runs.append("R" + run + ",A,800,15,0," + outcome + "\n");
    }
    return runs.toString();
  }

  /** Water that boils in five minutes, read so seldom that the log does not show when. */
  private static String slowLog() {
    StringBuilder log = new StringBuilder("time (s),water (°C)\n");
    for (int s = 0; s <= 600; s += 40) {
      log.append(String.format(Locale.ROOT, "%d,%.1f\n", s, Math.min(100, 15 + s * 0.28)));
    }
    return log.toString();
  }

  private void assertNothingIsSaidToHaveFailed(String said) throws IOException {
    String page = written("index.html");
    for (String text : List.of(said, page, written("quote/critic.md"))) {
      assertThat(text).doesNotContain("boiled in none").doesNotContain("did not boil and");
    }
    assertThat(said).contains("whether the water boiled was not seen in any run");
    assertThat(page).contains("<dt>boiled</dt><dd>not seen</dd>");
    assertThat(written("tables/claims.csv"))
        .contains("not settled", "in none of")
        .doesNotContain("contradicted");
    assertThat(written("tables/builds.csv")).contains("boil_not_seen");
    assertThat(written("tables/runs.csv")).contains(",not seen,");
  }

  @Test
  void slowLoggersAndNoMark() throws IOException {
    write("runs.csv", runs(10, ""));
    for (int run = 1; run <= 10; run++) {
      write("logs/R" + run + ".csv", slowLog());
    }
    String said = report();
    assertNothingIsSaidToHaveFailed(said);
    assertThat(said).contains("whether the water boiled was not seen: ");
  }

  @Test
  void neitherLogNorMark() throws IOException {
    write("runs.csv", runs(4, ""));
    write("stopwatch.csv", "run,event,time (s)\nR1,lit,0\n");
    String said = report();
    assertNothingIsSaidToHaveFailed(said);
    assertThat(said)
        .contains("3 errors")
        .contains("nothing was seen of this run: it has no log and no mark that could be read");
  }

  @Test
  void flamesOnly() throws IOException {
    write("runs.csv", "run,build\nR1,A\nR2,A\n");
    StringBuilder log = new StringBuilder("time (s),flame (°C)\n");
    for (int s = 0; s <= 900; s += 2) {
      log.append(s + "," + (s < 60 ? 20 + 10 * s : s < 700 ? 620 + s % 7 : 90) + "\n");
    }
    write("logs/R1.csv", log.toString());
    write("logs/R2.csv", log.toString());
    String said = report();
    assertNothingIsSaidToHaveFailed(said);
    assertThat(said).contains("0 errors");
  }

  /** Twenty-four of thirty marks cannot be read. */
  @Test
  void unreadableMarks() throws IOException {
    write("runs.csv", runs(30, ""));
    StringBuilder marks = new StringBuilder("run,event,time\n");
    for (int run = 1; run <= 30; run++) {
      marks.append("R" + run + ",lit,0:00\nR" + run + ",boil,");
      marks.append(run <= 6 ? "6:0" + run : "six or so").append('\n');
    }
    write("stopwatch.csv", marks.toString());
    String said = report();
    assertThat(said).contains("the water boiled in 6 of 6 runs, and in 24 more it was not seen");
    assertThat(written("index.html")).contains("6 of 6, 24 not seen");
    assertThat(written("tables/claims.csv")).contains("not settled", "In 24 more runs nobody saw");
  }

  /**
   * Stoves that never differ but in how often they boil: those that boil 5 times in 20 lead in no
   * mean, because there is none of them.
   */
  @Test
  void aMeanOfSurvivorsIsNotCompared() throws IOException {
    StringBuilder runs = new StringBuilder(RUNS);
    StringBuilder marks = new StringBuilder("run,event,time (s)\n");
    for (int run = 0; run < 40; run++) {
      boolean boils = run < 20 || run % 4 == 0;
      String name = "R" + run;
      runs.append(name + (run < 20 ? ",good" : ",poor") + ",800,15,0,");
      runs.append(boils ? "boiled\n" : "did not boil\n");
      marks.append(name + ",lit,0\n");
      marks.append(boils ? name + ",boil," + (400 + 7 * (run % 9)) + "\n" : "");
    }
    write("runs.csv", runs.toString());
    write("stopwatch.csv", marks.toString());
    String said = report();
    assertThat(said)
        .contains("Burns failed, so build poor (boiled in 5 of 20) has no mean")
        .contains("net power")
        .contains("would make a stove look better than it is")
        .doesNotContain("Nothing need be done: not boiling");
    assertThat(written("tables/comparisons.csv"))
        .doesNotContain("net power")
        .contains("normalised boil time,build,good,poor,,,,,,");
    String builds = written("tables/builds.csv");
    String header = builds.lines().findFirst().orElseThrow();
    int column = List.of(header.split(",", -1)).indexOf("net_power_mean_W");
    assertThat(
            builds
                .lines()
                .filter(line -> line.startsWith("poor,"))
                .map(line -> line.split(",", -1)[column]))
        .containsExactly("");
  }
}
