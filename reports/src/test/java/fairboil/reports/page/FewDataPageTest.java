package fairboil.reports.page;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.Results;
import fairboil.analysis.StudyAnalysis;
import fairboil.ingest.OpenedStudy;
import fairboil.ingest.StudyException;
import fairboil.ingest.StudyReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Few data, equal data and no boil: from sheets to page, each is said in a plain sentence. */
class FewDataPageTest {

  private static final String[] DESIGNS = {"tall", "wide"};

  @TempDir Path folder;

  /** What differs from a study of stoves that boil. */
  private record Few(int builds, int runs, int designs, boolean equal, boolean boils) {}

  private String page(Few few, String settings) throws IOException, StudyException {
    StringBuilder builds = new StringBuilder("build,design\n");
    StringBuilder holes = new StringBuilder("build,ring,hole,along (mm),height (mm)\n");
    StringBuilder runs =
        new StringBuilder(
            "run,build,water (g),water start (°C),ambient (°C),altitude (m),outcome,bag\n");
    StringBuilder marks = new StringBuilder("run,event,time (s)\n");
    for (int build = 0; build < few.builds; build++) {
      builds.append("B%d,%s%n".formatted(build, DESIGNS[build % few.designs]));
      for (int hole = 0; hole < 6; hole++) {
        double error = hole % 2 == 0 ? 0.6 * (build + 1) : 0;
        holes.append(
            String.format(
                Locale.ROOT, "B%d,upper,%d,%.1f,15%n", build, hole + 1, 40 * hole + error));
      }
      for (int run = 0; run < few.runs; run++) {
        String name = "B" + build + "-" + run;
        runs.append(
            "%s,B%d,800,15,20,100,%s,7%n"
                .formatted(name, build, few.boils ? "boiled" : "did not boil"));
        marks.append(name + ",lit,0\n" + name + ",pot on,30\n");
        int boil = few.equal ? 500 : 480 + 20 * build + 7 * build * build % 13 + 7 * run * run;
        marks.append(few.boils ? name + ",boil," + boil + "\n" : name + ",flame out,900\n");
      }
    }
    write("builds.csv", builds.toString());
    write(
        "rings.csv",
        "ring,surface,datum,holes,wrap (mm),height (mm)\nupper,wall,top rim,6,240,15\n");
    write("holes.csv", holes.toString());
    write("runs.csv", runs.toString());
    write("stopwatch.csv", marks.toString());
    write("study.csv", "setting,value\nboil time from,stopwatch\n" + settings);
    write(
        "claims.csv",
        "claim,text,measure,relation,value\nC,It boils in 9 minutes.,boil time,at most,9 min\n");
    OpenedStudy opened = StudyReader.open(folder);
    Results results = StudyAnalysis.of(opened.study(), opened.logs());
    String text = new Html(SamplePages.written(SamplePages.drawn(results))).text();
    assertThat(text)
        .doesNotContain("NaN")
        .doesNotContain("Infinity")
        .doesNotContain("\u221e")
        .doesNotContain("null")
        // no more digits than anyone measures
        .doesNotContainPattern("\\d[.]\\d{9}");
    return text.replace('\u00a0', ' ');
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text.replace("\r\n", "\n"), StandardCharsets.UTF_8);
  }

  private static Few of(int builds, int runs) {
    return new Few(builds, runs, 1, false, true);
  }

  @Test
  void noRuns() throws IOException, StudyException {
    assertThat(page(of(0, 0), "")).contains("There are no runs to stand on.");
  }

  @Test
  void oneBuild() throws IOException, StudyException {
    assertThat(page(of(1, 1), ""))
        .contains("no line can be drawn through 1 point; drill at least 3 more")
        .contains("a single run has no scatter to judge it by");
  }

  @Test
  void oneBuildBurntThrice() throws IOException, StudyException {
    assertThat(page(of(1, 3), ""))
        .contains("1 build: no line can be drawn through 1 point")
        .contains("Only one build, so this is about that stove and not about others like it");
  }

  @Test
  void twoBuilds() throws IOException, StudyException {
    assertThat(page(of(2, 1), ""))
        .contains("2 builds: no line through 2 points can be tested; drill at least 2 more");
  }

  @Test
  void threeBuildsBurntOnce() throws IOException, StudyException {
    assertThat(page(of(3, 1), ""))
        .contains("in normalised boil time (95 % interval")
        .contains("3 builds, 3 burns");
  }

  @Test
  void threeBuildsOfTwoDesigns() throws IOException, StudyException {
    assertThat(page(new Few(3, 2, 2, false, true), ""))
        .contains("The builds are of 2 designs, and design could not be allowed for");
  }

  @Test
  void sixBuildsOfTwoDesigns() throws IOException, StudyException {
    assertThat(page(new Few(6, 2, 2, false, true), ""))
        .contains("6 builds, 12 burns; design allowed for)")
        .contains("From the best drilled build (B0, 0.3 mm) to the worst (B5, 1.8 mm) that makes");
  }

  @Test
  void allValuesEqual() throws IOException, StudyException {
    assertThat(page(new Few(4, 3, 1, true, true), ""))
        .contains("burns have the same", "so that an effect of hole error on it cannot be seen");
  }

  @Test
  void aConstantCovariate() throws IOException, StudyException {
    assertThat(page(of(5, 2), "covariates,bag\n"))
        .contains("Bag could not be allowed for: it does not differ");
  }

  @Test
  void nothingBoiled() throws IOException, StudyException {
    assertThat(page(new Few(4, 2, 1, false, false), ""))
        .contains("the water boiled in none")
        .contains("Not settled: in 8 of 8 runs the water did not boil");
  }
}
