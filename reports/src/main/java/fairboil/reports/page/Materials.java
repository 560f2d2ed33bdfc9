package fairboil.reports.page;

import fairboil.analysis.Results;
import fairboil.analysis.fault.Faults;
import fairboil.ingest.finding.Place;
import fairboil.ingest.sheet.Settings;
import fairboil.reports.chart.ChartKey;
import fairboil.reports.chart.Picture;
import fairboil.reports.words.Display;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** What every section is made from. */
final class Materials {

  private final PageModel model;
  private final Display display;
  private final RunNames runNames;
  private final FigureCells cells;
  private final Faults faults;

  Materials(PageModel model, Faults faults) {
    this.faults = faults;
    this.model = model;
    this.display = Display.in(model.results().study().settings().get(Settings.SHOW_UNITS));
    this.runNames = RunNames.of(model.results());
    this.cells = new FigureCells(display, model.results().confidence());
  }

  PageModel model() {
    return model;
  }

  Results results() {
    return model.results();
  }

  Display display() {
    return display;
  }

  RunNames runNames() {
    return runNames;
  }

  FigureCells cells() {
    return cells;
  }

  /** What a section or a run of the page gives; empty if the program fails at it. */
  <R> Optional<R> contain(String part, Supplier<R> work) {
    return faults.contain(part, Place.of("index.html"), work::get);
  }

  List<Picture> charts(Picture.Kind kind) {
    return model.charts().stream().filter(picture -> picture.kind() == kind).toList();
  }

  /** The chart with that key, if it was drawn; of several the first. */
  Optional<Picture> chart(ChartKey key) {
    return model.charts().stream().filter(picture -> picture.key().equals(key)).findFirst();
  }
}
