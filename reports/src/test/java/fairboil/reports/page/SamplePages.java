package fairboil.reports.page;

import fairboil.analysis.Results;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.fault.Faults;
import fairboil.analysis.layout.RingResult;
import fairboil.analysis.measure.Measure;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Settings;
import fairboil.reports.SampleResults;
import fairboil.reports.chart.ChartBook;
import fairboil.reports.chart.ChartException;
import fairboil.reports.chart.ChartKey;
import fairboil.reports.chart.Picture;
import fairboil.reports.chart.xchart.XChartPainter;
import fairboil.reports.words.Display;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Pages of the sample results, to test and to look at. */
final class SamplePages {

  private SamplePages() {}

  /** A model with every chart drawn. */
  static PageModel drawn(Results results) {
    List<Picture> study = new ArrayList<>();
    Map<Key, Picture> runs = new HashMap<>();
    DisplayUnits units = results.study().settings().get(Settings.SHOW_UNITS);
    try {
      ChartBook.of(results, Display.in(units), new Faults())
          .draw(
              XChartPainter.withBundledFont(),
              1,
              picture -> {
                if (picture.kind() == Picture.Kind.RUN) {
                  runs.put(picture.key().run().orElseThrow(), picture);
                } else {
                  study.add(picture);
                }
              });
    } catch (IOException | ChartException e) {
      throw new IllegalStateException(e);
    }
    return new PageModel(
        results, study, run -> Optional.ofNullable(runs.get(run.run().key())), "0.0-test");
  }

  /** A model with a small picture in place of every chart, which is quicker than drawing. */
  static PageModel pictured(Results results) {
    List<Picture> study = new ArrayList<>();
    for (HoleEffect effect : results.holeEffects()) {
      study.add(
          picture(ChartKey.of(Picture.Kind.HOLE_EFFECT, effect), "effect-" + (study.size() + 1)));
    }
    study.add(picture(ChartKey.of(Picture.Kind.BUILDS, Measure.NORMALISED_PEAK), "builds"));
    results.rings().stream()
        .map(RingResult::ring)
        .distinct()
        .forEach(
            ring ->
                study.add(
                    picture(
                        ChartKey.ofRing(Picture.Kind.RING_MAPS, ring), "ring-" + study.size())));
    RunNames names = RunNames.of(results);
    return new PageModel(
        results,
        study,
        run ->
            Optional.of(picture(ChartKey.ofRun(Picture.Kind.RUN, run.run().key()), names.of(run))),
        "0.0-test");
  }

  /** A picture that shows nothing. */
  static Picture picture(ChartKey key, String name) {
    return new Picture(
        key, name, new byte[] {1, 2, 3}, 30, 20, "chart of " + name, "About " + name);
  }

  /** A model without charts. */
  static PageModel bare(Results results) {
    return new PageModel(results, List.of(), run -> Optional.empty(), "0.0-test");
  }

  static String written(PageModel model) {
    ByteArrayOutputStream page = new ByteArrayOutputStream();
    try {
      Page.of(model, new Faults()).write(page);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return page.toString(StandardCharsets.UTF_8);
  }

  /** Writes pages to look at into the folder named. */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    Files.createDirectories(folder);
    Files.writeString(
        folder.resolve("metric.html"), written(drawn(SampleResults.typical(DisplayUnits.METRIC))));
    Files.writeString(
        folder.resolve("us.html"), written(drawn(SampleResults.typical(DisplayUnits.US))));
    Files.writeString(folder.resolve("two.html"), written(drawn(SampleResults.twoBuilds())));
    Files.writeString(folder.resolve("empty.html"), written(drawn(SampleResults.empty())));
  }
}
