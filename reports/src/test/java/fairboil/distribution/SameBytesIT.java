package fairboil.distribution;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Same study, same bytes: whatever the locale, time zone and number of cores of the machine. */
class SameBytesIT {

  private static final Path DEMO = Path.of("../data-demo").toAbsolutePath().normalize();

  /** Thai digits, decimal commas and a locale with its own rules for upper and lower case. */
  private static final List<List<String>> LOCALES =
      List.of(
          List.of("-Duser.language=th", "-Duser.country=TH", "-Duser.extensions=u-nu-thai"),
          List.of("-Duser.language=de", "-Duser.country=DE"),
          List.of("-Duser.language=tr", "-Duser.country=TR"));

  private static final List<String> ZONES = List.of("Pacific/Kiritimati", "America/St_Johns");

  @TempDir private Path temp;

  @Test
  void demoReportIsTheSameEverywhere() throws Exception {
    SortedMap<String, String> first = null;
    for (List<String> locale : LOCALES) {
      for (String zone : ZONES) {
        for (String cores : List.of("1", "2")) {
          SortedMap<String, String> hashes = report(locale, zone, cores);
          if (first == null) {
            first = hashes;
          }
          assertThat(hashes).as("%s %s %s cores", locale, zone, cores).isEqualTo(first);
        }
      }
    }
    assertThat(first).containsKey("index.html").hasSizeGreaterThan(40);
  }

  private SortedMap<String, String> report(List<String> locale, String zone, String cores)
      throws Exception {
    Path out = temp.resolve("report");
    List<String> command = new ArrayList<>();
    command.add(Program.JAVA_HOME.resolve("bin/java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    command.addAll(locale);
    command.add("-Duser.timezone=" + zone);
    command.add("-XX:ActiveProcessorCount=" + cores);
    command.addAll(List.of("-jar", Program.JAR.toString(), "report", DEMO.toString()));
    command.addAll(List.of("--out", out.toString()));
    Program program = Program.run(temp, Map.of("PATH", "/usr/bin:/bin"), command);
    assertThat(program.exitCode()).as(program.printed()).isZero();
    return Trees.hashes(out);
  }
}
