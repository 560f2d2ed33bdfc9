package fairboil.demo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The demonstration study, invented from end to end.
 *
 * <p>To write it again after a change here, from the top of the project: {@code mvn -q
 * test-compile}, then {@code java -cp reports/target/test-classes fairboil.demo.DemoStudy
 * data-demo}. What truly happened in each run goes to standard output.
 */
public final class DemoStudy {

  private static final long SEED = 5;

  private DemoStudy() {}

  /**
   * Writes the study.
   *
   * @param args the folder, which keeps what else is in it
   */
  public static void main(String[] args) throws IOException {
    List<DemoRun> runs = runs();
    StudyFiles.write(Path.of(args[0]), files(runs));
    System.out.write(DemoTruth.table(runs).getBytes(StandardCharsets.UTF_8));
    System.out.flush();
  }

  /** The runs with what truly happened. */
  static List<DemoRun> runs() {
    return DemoPlan.of(SEED);
  }

  /** Every file of the study: its name, with forward slashes, and its text. */
  static SortedMap<String, String> files(List<DemoRun> runs) {
    SortedMap<String, String> files = new TreeMap<>(DemoSheets.of(runs));
    files.put("holes.csv", HolesText.of(Stove.all(), SEED).toString());
    for (DemoRun run : runs) {
      if (run.fate() != DemoRun.Fate.NO_LOG) {
        files.put("logs/" + run.name() + ".csv", log(run));
      }
    }
    return files;
  }

  private static String log(DemoRun run) {
    Chance chance = Chance.of(SEED, "log " + run.name());
    Readings readings = run.dialect().probes().read(run.happened(), chance);
    if (run.fate() == DemoRun.Fate.KNOCKED_OVER) {
      Burn.Times times = run.burn().times();
      readings = readings.withWaterProbeInAirFrom(times.potOff() - times.logFrom());
    }
    return run.dialect().write(run.lit(), readings, run.blemishes());
  }
}
