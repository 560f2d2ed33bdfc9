package fairboil.browser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A study whose names and notes try to become part of the page. */
final class HostileStudy {

  /** A script that would leave {@code window.harmed} behind. */
  static final String SCRIPT = "<script>window.harmed=1</script>";

  private static final String PICTURE = "\"><img src=x onerror=window.harmed=2>";
  private static final String RIGHT_TO_LEFT = "\u202egnp.exe \u05d0\u05d1\u2067";
  private static final String FLAMES =
      "\ud83d\udd25\ud83d\udc68\u200d\ud83d\udc69\u200d\ud83d\udc67";
  private static final String NO_BREAK = "x".repeat(300);
  private static final String LONG_NOTE = "a note that does not end ".repeat(400);

  private static final List<String> BUILDS =
      List.of(SCRIPT, PICTURE, "' onmouseover='window.harmed=3", RIGHT_TO_LEFT, FLAMES, NO_BREAK);

  private HostileStudy() {}

  /** Writes it: two burns of each build, by logs. */
  static Path write(Path folder) throws IOException {
    Files.createDirectories(folder.resolve("logs"));
    Files.writeString(
        folder.resolve("study.csv"),
        table("setting,value", List.of(row("title", SCRIPT), row("question", PICTURE))));
    Files.writeString(
        folder.resolve("builds.csv"),
        table(
            "build,design",
            BUILDS.stream().map(build -> row(build, "</style></title>" + FLAMES)).toList()));
    Files.writeString(
        folder.resolve("claims.csv"),
        table(
            "claim,text,measure,about,relation,value",
            List.of(row(PICTURE, SCRIPT, "peak", SCRIPT, "at least", "500 °C"))));
    StringBuilder runs =
        new StringBuilder("run,build,log,ambient (°C),water (g),water start (°C),");
    runs.append("pot,fuel,notes\n");
    for (int run = 1; run <= 2 * BUILDS.size(); run++) {
      String build = BUILDS.get((run - 1) / 2);
      String log = "logs/" + run + ".csv";
      runs.append(
          row(build + " " + run, build, log, "12", "800", "15", "250 g", SCRIPT, LONG_NOTE));
      runs.append('\n');
      Files.writeString(folder.resolve(log), log(run));
    }
    Files.writeString(folder.resolve("runs.csv"), runs);
    return folder;
  }

  private static String table(String header, List<String> rows) {
    return header + "\n" + String.join("\n", rows) + "\n";
  }

  private static String row(String... cells) {
    return List.of(cells).stream()
        .map(cell -> '"' + cell.replace("\"", "\"\"") + '"')
        .collect(Collectors.joining(","));
  }

  /** Water that warms by 0.15 °C a second to 99.5 °C and stays there; a flame that sways. */
  private static String log(int run) {
    StringBuilder text = new StringBuilder("time (s),flame (°C),water (°C)\n");
    for (int second = 0; second < 900; second += 2) {
      double flame = second < 20 ? 15 : 650 + 3 * run + 25 * Math.sin(second / 7.0);
      double water = Math.min(99.5, 15 + 0.15 * second);
      text.append(String.format(Locale.ROOT, "%d,%.1f,%.1f\n", second, flame, water));
    }
    return text.toString();
  }
}
