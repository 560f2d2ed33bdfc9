package fairboil.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Groups from the command line to the page. The groups and their burns are made up. */
class PoolTest {

  @TempDir private Path temp;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
  }

  private String at(String name) {
    return temp.resolve(name).toString();
  }

  private void write(String name, String text) throws IOException {
    Path file = temp.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private String read(String name) throws IOException {
    return Files.readString(temp.resolve(name));
  }

  /** A study of boil times by the stopwatch, in seconds: build, then its values. */
  private void study(String folder, String shared, String... builds) throws IOException {
    StringBuilder runs =
        new StringBuilder("run,build,outcome,water (g),water start (°C),pot,pot material,lid\n");
    StringBuilder marks = new StringBuilder("run,event,time (s)\n");
    StringBuilder stoves = new StringBuilder("build,design,shared\n");
    int number = 0;
    for (String build : builds) {
      String[] parts = build.split(" ", -1);
      stoves.append(parts[0]).append(",two-wall,").append(shared).append('\n');
      for (int i = 1; i < parts.length; i++) {
        number++;
        String water = number == 2 ? "1200" : "1000";
        runs.append(number + "," + parts[0] + ",boiled," + water + ",15,240 g,steel,on\n");
        marks.append(number + ",lit,0\n" + number + ",pot on,0\n" + number + ",boil," + parts[i]);
        marks.append('\n');
      }
    }
    write(folder + "/runs.csv", runs.toString());
    write(folder + "/stopwatch.csv", marks.toString());
    write(folder + "/builds.csv", stoves.toString());
    write(folder + "/study.csv", "setting,value\nboil time from,stopwatch\n");
  }

  private void threeGroups() throws IOException {
    study("groups/a", "yes", "K1 612 618 605", "K2 588 595");
    study("groups/b", "yes", "K1 640 633", "K2 611 602 607");
    study("groups/c", "yes", "K1 622 629 617 625", "K2 597 604");
  }

  private double sd(String tables, String measureAndLevel) throws IOException {
    String line =
        read(tables + "/repeatability.csv")
            .lines()
            .filter(row -> row.startsWith(measureAndLevel + ","))
            .findFirst()
            .orElseThrow();
    return Double.parseDouble(line.substring(measureAndLevel.length() + 1).split(",", -1)[0]);
  }

  /**
   * R 4: {@code a <- anova(lm(y ~ stove + stove:site)); n <- table(stove, site); nb <- (sum(n) -
   * sum(rowSums(n^2) / rowSums(n))) / a[2, 1]; sr2 <- a[3, 3]; sL2 <- (a[2, 3] - sr2) / nb;
   * sqrt(c(sr2, sL2, sL2 + sr2))}.
   */
  @Test
  void threeGroupsGiveThePrecisionOfTheMethod() throws IOException {
    threeGroups();
    int code = run("report", at("groups/a"), at("groups/b"), at("groups/c"), "--out", at("out"));
    assertThat(code).as(err.toString()).isZero();
    assertThat(sd("out/tables", "boil time,run to run")).isCloseTo(5.24960316, within(1e-6));
    assertThat(sd("out/tables", "boil time,between sites")).isCloseTo(9.386842214, within(1e-6));
    assertThat(sd("out/tables", "boil time,reproducibility")).isCloseTo(10.75505184, within(1e-6));
    assertThat(read("out/index.html"))
        .contains("Of the 3 sites (a, b and c), at least two burnt the same stove (K1 and K2)")
        .contains("Boil time: two burns of one stove by one site differ by up to")
        .contains("Study <bdi>a, b, c</bdi>");
    assertThat(out.toString()).contains("Boil time: two burns of one stove by one site differ");
    assertThat(read("out/tables/runs.csv")).contains("\na 1,K1,").contains("\nc 6,K2,");
    assertThat(read("out/tables/sites.csv")).contains("boil time,K2,b,3,");
  }

  @Test
  void theOrderOfTheStudiesChangesNoByte() throws IOException {
    threeGroups();
    run("report", at("groups/a"), at("groups/b"), at("groups/c"), "--out", at("one"));
    run("report", at("groups/c"), at("groups/a"), at("groups/b"), "--out", at("two"));
    for (String name : List.of("index.html", "tables/runs.csv", "tables/repeatability.csv")) {
      assertThat(read("one/" + name)).isEqualTo(read("two/" + name));
    }
  }

  @Test
  void theReportMayNotGoIntoOrAboveAnyStudy() throws IOException {
    threeGroups();
    for (String target : List.of("groups/b", "groups/b/report", "groups")) {
      assertThat(run("report", at("groups/a"), at("groups/b"), "--out", at(target)))
          .as(target)
          .isEqualTo(4);
    }
    assertThat(temp.resolve("groups/b/report")).doesNotExist();
  }

  @Test
  void sixTownsWithOneOwnStoveEachGetTheHonestAnswer() throws IOException {
    List<String> args = new ArrayList<>(List.of("report"));
    for (int town = 1; town <= 6; town++) {
      int time = 600 + 17 * town;
      study("town" + town, "no", "K1 " + time + " " + (time + 6) + " " + (time - 5));
      args.add(at("town" + town));
    }
    args.addAll(List.of("--out", at("out")));
    assertThat(run(args.toArray(String[]::new))).as(err.toString()).isZero();
    assertThat(read("out/index.html"))
        .contains("Each of the 6 sites")
        .contains("burnt one stove of its own, so site and stove cannot be told apart")
        .contains("no share of it can be given to either")
        .contains("send one stove round");
    assertThat(read("out/tables/repeatability.csv"))
        .contains("boil time,\"site and stove together, two-wall\"")
        .doesNotContain("reproducibility", "between sites", "build to build");
  }

  @Test
  void runsOutsideProtocolAreNamedAndLeftOutForComparison() throws IOException {
    threeGroups();
    write("groups/a/protocol.csv", "column,low (g),high (g),allowed\nwater,950,1050,\nlid,,,on\n");
    int code = run("report", at("groups/a"), at("groups/b"), at("groups/c"), "--out", at("out"));
    assertThat(code).as(err.toString()).isZero();
    assertThat(read("out/tables/protocol.csv"))
        .contains("a 1,yes,")
        .contains("a 2,no,\"water 1200, above 1050 g\"");
    assertThat(read("out/index.html"))
        .contains("13 of 16 runs kept to what the group agreed")
        .contains("with those within protocol only");
    assertThat(read("out/tables/findings.csv")).contains("this run is not within protocol");
  }

  /**
   * R 4 as above, of the thirteen burns that are left: {@code y <- c(612, 605, 588, 595, 640, 611,
   * 602, 607, 622, 617, 625, 597, 604)} without the second burn of each folder.
   */
  @Test
  void precisionIsToldWithAndWithoutTheRunsOutsideProtocol() throws IOException {
    threeGroups();
    write("groups/a/protocol.csv", "column,low (g),high (g),allowed\nwater,950,1050,\nlid,,,on\n");
    run("report", at("groups/a"), at("groups/b"), at("groups/c"), "--out", at("out"));
    assertThat(read("out/index.html"))
        .contains(
            "Standard deviation of boil time: run to run 5.2 s with all runs, 4.6 s with those"
                + " within protocol only; reproducibility 11 s with all runs, 11 s with those"
                + " within protocol only.");
  }

  @Test
  void aGroupGetsTheSameStudyEmpty() throws IOException {
    study("mine", "no", "K1 612 618", "K2 588 595");
    write("mine/rings.csv", "ring,holes,wrap (mm),height (in)\nupper,12,314,0.5\n");
    write("mine/pots.csv", "pot,mass (g),material\nbilly,240,steel\n");
    write("mine/protocol.csv", "column,low (g),high (g)\nwater,950,1050\n");
    write(
        "mine/claims.csv",
        "claim,text,measure,about,relation,value (min)\nC1,\"It boils, fast.\",boil time,K1,at most,11\n");
    assertThat(run("new", at("north"), "--from", at("mine"), "--site", "North, shed"))
        .as(err.toString())
        .isZero();
    assertThat(read("north/builds.csv"))
        .contains("K1,two-wall,,yes,")
        .contains("K2,two-wall,,yes,");
    assertThat(read("north/rings.csv")).contains("314 mm").contains("0.5 in");
    assertThat(read("north/pots.csv")).contains("billy,240 g,steel");
    assertThat(read("north/protocol.csv")).contains("water,950 g,1050 g,");
    assertThat(read("north/claims.csv")).contains("\"It boils, fast.\"").contains("11 min");
    assertThat(read("north/study.csv")).contains("\nboil time from,stopwatch\n");
    assertThat(read("north/runs.csv").lines().skip(1)).hasSize(1);
    assertThat(read("north/runs.csv")).contains("\"North, shed\"");
    // the two are read as one once the group has burnt, and nothing is at odds
    study("mine", "yes", "K1 612 618", "K2 588 595");
    write("north/runs.csv", "run,build,site,outcome\n1,K1,North,boiled\n");
    write("north/stopwatch.csv", "run,event,time (s)\n1,lit,0\n1,pot on,0\n1,boil,650\n");
    assertThat(run("report", at("mine"), at("north"), "--out", at("out")))
        .as(err.toString())
        .isZero();
    assertThat(read("out/tables/builds.csv").lines()).hasSize(3);
  }

  @Test
  void fromAndSiteGoTogether() {
    assertThat(run("new", at("north"), "--site", "North")).isEqualTo(2);
    assertThat(err.toString()).contains("--from and --site go together");
  }
}
