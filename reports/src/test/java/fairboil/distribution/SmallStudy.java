package fairboil.distribution;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** A small invented study: two stoves, three burns, just enough to write every kind of file. */
final class SmallStudy {

  private SmallStudy() {}

  static Path write(Path folder) throws IOException {
    Files.createDirectories(folder.resolve("logs"));
    Files.writeString(
        folder.resolve("runs.csv"),
        """
        run,build,ambient (°C),water (g),water start (°C),pot
        1,A,12,800,15,250 g
        2,A,14,800,15,250 g
        3,B,13,800,15,250 g
        """);
    Files.writeString(
        folder.resolve("stopwatch.csv"),
        """
        run,event,time
        1,pot on,1:00
        2,pot on,1:00
        3,pot on,1:00
        """);
    for (int run = 1; run <= 3; run++) {
      Files.writeString(folder.resolve("logs/" + run + ".csv"), log(run));
    }
    return folder;
  }

  /** Water that warms by 0.15 °C a second to 99.5 °C and stays there; a flame that sways. */
  private static String log(int run) {
    StringBuilder text = new StringBuilder("time (s),flame (°C),water (°C)\n");
    for (int second = 0; second < 900; second++) {
      double flame = second < 20 ? 15 : 650 + 10 * run + 25 * Math.sin(second / 7.0);
      double water = Math.min(99.5, 15 + 0.15 * Math.max(0, second - 60));
      text.append(String.format(Locale.ROOT, "%d,%.1f,%.1f\n", second, flame, water));
    }
    return text.toString();
  }
}
