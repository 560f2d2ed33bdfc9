package fairboil.reports.chart.xchart;

import fairboil.analysis.Results;
import fairboil.analysis.fault.Faults;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.reports.SampleResults;
import fairboil.reports.chart.ChartBook;
import fairboil.reports.chart.Painter;
import fairboil.reports.chart.Picture;
import fairboil.reports.words.Display;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Draws all charts of the sample into a folder, to be looked at, and tells how long each took, cold
 * and warm: {@code Gallery DIR [US]}.
 */
public final class Gallery {

  private Gallery() {}

  /** Draws the sample's charts. */
  public static void main(String[] args) throws Exception {
    Path folder = Files.createDirectories(Path.of(args[0]));
    DisplayUnits units = args.length > 1 ? DisplayUnits.US : DisplayUnits.METRIC;
    Results results = SampleResults.typical(units);
    long start = System.nanoTime();
    Painter painter = XChartPainter.withBundledFont();
    say("font %.0f ms", since(start));
    for (String round : List.of("cold", "warm", "warm again")) {
      List<Picture> pictures =
          draw(ChartBook.of(results, Display.in(units), new Faults()), painter, round);
      for (Picture picture : pictures) {
        Files.write(folder.resolve(picture.name() + ".png"), picture.png());
      }
    }
  }

  private static List<Picture> draw(ChartBook book, Painter painter, String round)
      throws IOException {
    List<Picture> pictures = new ArrayList<>();
    long start = System.nanoTime();
    long[] last = {start};
    book.draw(
        painter,
        1,
        picture -> {
          pictures.add(picture);
          if (pictures.size() < 16) {
            say(
                "%s %s %.1f ms, %d bytes",
                round, picture.name(), since(last[0]), picture.png().length);
          }
          last[0] = System.nanoTime();
        });
    say("%s: %d pictures in %.0f ms", round, pictures.size(), since(start));
    return pictures;
  }

  private static double since(long start) {
    return (System.nanoTime() - start) / 1e6;
  }

  private static void say(String format, Object... values) {
    System.out.println(String.format(Locale.ROOT, format, values));
  }
}
