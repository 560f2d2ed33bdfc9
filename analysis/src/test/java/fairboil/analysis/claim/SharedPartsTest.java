package fairboil.analysis.claim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.TestRun;
import fairboil.analysis.TestStudy;
import fairboil.analysis.group.RunGroup;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.sheet.Key;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Errors that are wholly correlated add up, independent ones by their squares (JCGM 100:2008,
 * 5.2.2, note 1, and 5.1.2): a sensor errs alike in its own readings, two sensors do not.
 */
class SharedPartsTest {

  private static final double SHARED = 3;

  /** A build of four runs for each row, each run read by the sensor named there. */
  private static RunGroup runs(String[]... sensors) {
    TestStudy sheets = new TestStudy();
    for (int build = 0; build < sensors.length; build++) {
      sheets.build("B" + build, "one");
      for (int run = 0; run < sensors[build].length; run++) {
        sheets.run("B" + build + "-" + run, "B" + build, row -> row);
      }
    }
    Study study = sheets.finish();
    List<RunResult> results = new ArrayList<>();
    for (int build = 0; build < sensors.length; build++) {
      for (int run = 0; run < sensors[build].length; run++) {
        results.add(
            TestRun.of(study, "B" + build + "-" + run)
                .peak(700)
                .shared(SHARED)
                .sensor(sensors[build][run])
                .result());
      }
    }
    return RunGroup.of(results);
  }

  private static SharedParts parts(String[]... sensors) {
    return SharedParts.of(runs(sensors), Measure.PEAK);
  }

  @Test
  void oneSensorErrsAlikeHoweverOftenItIsRead() {
    String[] own = {"north", "north", "north", "north"};
    assertThat(parts(own).size()).isCloseTo(SHARED, within(1e-12));
    assertThat(parts(own, own, own).size()).isCloseTo(SHARED, within(1e-12));
  }

  @Test
  void sensorsOfTwoSitesErrIndependently() {
    String[] north = {"north", "north"};
    String[] south = {"south", "south", "south", "south"};
    // each build counts alike, however many runs it has
    assertThat(parts(north, south).size()).isCloseTo(SHARED / Math.sqrt(2), within(1e-12));
  }

  @Test
  void aDifferenceIsFreeOfTheSensorWithinASiteOnly() {
    String[] north = {"north", "north"};
    String[] south = {"south", "south"};
    assertThat(parts(north).apart(parts(north, north))).isCloseTo(0, within(1e-12));
    assertThat(parts(north).apart(parts(south))).isCloseTo(SHARED * Math.sqrt(2), within(1e-12));
    assertThat(parts(north, south).apart(parts(south, north))).isCloseTo(0, within(1e-12));
    // a quarter of the one side was read by the other sensor
    String[] mostly = {"north", "north", "north", "south"};
    assertThat(parts(mostly).apart(parts(north)))
        .isCloseTo(SHARED * Math.sqrt(2) / 4, within(1e-12));
  }

  @Test
  void sensorsOfOneNameInTwoStudiesDoNotCancel() {
    SharedParts north = one(new Key("north", "bead 1"));
    SharedParts south = one(new Key("south", "bead 1"));
    assertThat(north.apart(south)).isCloseTo(SHARED * Math.sqrt(2), within(1e-12));
    assertThat(north.apart(one(new Key("north", "bead 1")))).isCloseTo(0, within(1e-12));
  }

  private static SharedParts one(Key sensor) {
    Study study = new TestStudy().build("B", "one").run("B-1", "B", row -> row).finish();
    RunResult run = TestRun.of(study, "B-1").peak(700).shared(SHARED).sensor(sensor).result();
    return SharedParts.of(RunGroup.of(List.of(run)), Measure.PEAK);
  }
}
