package fairboil.browser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** A study of very many runs with short logs. */
final class LargeStudy {

  static final int RUNS = 1000;

  private static final int RUNS_A_BUILD = 25;

  private LargeStudy() {}

  /** Writes it. */
  static Path write(Path folder) throws IOException {
    Files.createDirectories(folder.resolve("logs"));
    StringBuilder runs = new StringBuilder("run,build,ambient (°C),water (g),water start (°C)\n");
    for (int run = 0; run < RUNS; run++) {
      runs.append(
          String.format(
              Locale.ROOT, "R%d,B%d,%d,800,15\n", run + 1, run / RUNS_A_BUILD + 1, run % 20));
      Files.writeString(folder.resolve("logs/R" + (run + 1) + ".csv"), log(run));
    }
    Files.writeString(folder.resolve("runs.csv"), runs);
    return folder;
  }

  /** A reading every 5 s: water that warms by 0.15 °C a second, a little faster in later runs. */
  private static String log(int run) {
    StringBuilder text = new StringBuilder("time (s),flame (°C),water (°C)\n");
    for (int second = 0; second < 900; second += 5) {
      double flame = second < 20 ? 15 : 650 + run % 7 + 25 * Math.sin((second + run) / 7.0);
      double water = Math.min(99.5, 15 + (0.15 + run / 1e5) * second);
      text.append(String.format(Locale.ROOT, "%d,%.1f,%.1f\n", second, flame, water));
    }
    return text.toString();
  }
}
