package fairboil.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Few data, equal data and no boil through the command: a report, and no number that is none. */
class FewDataCommandTest {

  @TempDir private Path temp;

  /** Builds, runs of each, designs, seconds by which boil times differ, outcome. */
  @ParameterizedTest
  @CsvSource({
    "0, 0, 1, 0, boiled",
    "1, 1, 1, 9, boiled",
    "1, 3, 1, 9, boiled",
    "2, 1, 1, 9, boiled",
    "2, 3, 2, 9, boiled",
    "3, 1, 1, 9, boiled",
    "3, 3, 2, 9, boiled",
    "4, 3, 2, 0, boiled",
    "5, 1, 1, 9, boiled",
    "4, 2, 2, 0, did not boil"
  })
  void isReported(int builds, int runs, int designs, int apart, String outcome) throws IOException {
    Path study = study(builds, runs, designs, apart, outcome);
    StringWriter err = new StringWriter();
    PrintWriter messages = new PrintWriter(err, true);
    int status =
        Main.run(messages, messages, "report", study.toString(), "--out", at("out").toString());
    assertThat(status).as(err.toString()).isIn(0, 1);
    assertThat(err.toString()).doesNotContain("Exception").doesNotContain("\tat ");
    assertThat(Files.readString(at("out/index.html"))).contains("The answer");
    try (Stream<Path> tables = Files.list(at("out/tables"))) {
      for (Path table : tables.toList()) {
        assertThat(Files.readString(table))
            .as(table.toString())
            .doesNotContain("NaN", "Infinity", "null");
      }
    }
  }

  /** Ten equal readings of a stopwatch are no scatter: nothing can be judged by it. */
  @Test
  void equalValuesSettleNothing() throws IOException {
    Path study = study(4, 3, 2, 0, "boiled");
    StringWriter said = new StringWriter();
    PrintWriter messages = new PrintWriter(said, true);
    Main.run(messages, messages, "report", study.toString(), "--out", at("out").toString());
    assertThat(said.toString())
        .contains("All 12 burns have the same normalised boil time, so that an effect of hole")
        .contains("Every build has the same mean normalised boil time")
        .contains("of 2 claims, 2 are not settled");
    assertThat(Files.readString(at("out/index.html")))
        .contains("the values do not scatter at all, so there is nothing to judge it by");
  }

  private Path at(String name) {
    return temp.resolve(name);
  }

  private Path study(int builds, int runs, int designs, int apart, String outcome)
      throws IOException {
    StringBuilder builders = new StringBuilder("build,design\n");
    StringBuilder holes = new StringBuilder("build,ring,hole,along (mm),height (mm)\n");
    StringBuilder burns =
        new StringBuilder(
            "run,build,water (g),water start (°C),ambient (°C),altitude (m),outcome,bag\n");
    StringBuilder marks = new StringBuilder("run,event,time (s)\n");
    for (int build = 0; build < builds; build++) {
      builders.append("B" + build + "," + List.of("tall", "wide").get(build % designs) + "\n");
      for (int hole = 0; hole < 6; hole++) {
        double along = 40 * hole + (hole % 2 == 0 ? 0.6 * (build + 1) : 0);
        holes.append(String.format(Locale.ROOT, "B%d,upper,%d,%.1f,15\n", build, hole + 1, along));
      }
      for (int run = 0; run < runs; run++) {
        String name = "B" + build + "-" + run;
        burns.append(name + ",B" + build + ",800,15,20,100," + outcome + ",7\n");
        int last = 500 + apart * (3 * build + run * run);
        marks.append(name + ",lit,0\n" + name + ",pot on,30\n" + name);
        marks.append(outcome.equals("boiled") ? ",boil," + last + "\n" : ",flame out,900\n");
      }
    }
    Path study = Files.createDirectory(at("study"));
    Files.writeString(study.resolve("builds.csv"), builders);
    Files.writeString(study.resolve("holes.csv"), holes);
    Files.writeString(study.resolve("runs.csv"), burns);
    Files.writeString(study.resolve("stopwatch.csv"), marks);
    Files.writeString(
        study.resolve("rings.csv"),
        "ring,surface,datum,holes,wrap (mm),height (mm)\nupper,wall,top rim,6,240,15\n");
    Files.writeString(
        study.resolve("study.csv"),
        "setting,value\nboil time from,stopwatch\ncompare by,design\ncovariates,bag\n");
    Files.writeString(
        study.resolve("claims.csv"),
        """
        claim,text,measure,relation,value,holds for
        C,It boils in 9 minutes.,boil time,at most,9 min,on average
        D,It nearly always does.,boil time,at most,9 min,most runs
        """);
    return study;
  }
}
