package fairboil.reports.page;

import fairboil.analysis.effect.EffectRow;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.layout.RingResult;
import fairboil.ingest.choice.Air;
import fairboil.ingest.dimension.Dimension;
import fairboil.reports.chart.Picture;
import fairboil.reports.page.view.CellView;
import fairboil.reports.page.view.ColumnView;
import fairboil.reports.page.view.EffectView;
import fairboil.reports.page.view.FigureView;
import fairboil.reports.page.view.HolesView;
import fairboil.reports.page.view.TableView;
import fairboil.reports.words.CheckWords;
import fairboil.reports.words.EffectWords;
import fairboil.reports.words.Plural;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether hole position matters. */
final class HolesSection {

  /** Enough to see how holes lie. */
  private static final double TENTH_OF_A_DEGREE = Math.toRadians(0.1);

  private HolesSection() {}

  static HolesView of(Materials from) {
    EffectWords words = EffectWords.of(from.results());
    List<HoleEffect> effects = from.results().holeEffects();
    return new HolesView(
        effects.stream().anyMatch(effect -> effect.headline().isPresent()) ? words.origin() : "",
        effects.stream().map(effect -> view(from, effect, words)).toList(),
        models(from),
        StudyCharts.all(from, Picture.Kind.RING_MAPS),
        errors(from));
  }

  private static EffectView view(Materials from, HoleEffect effect, EffectWords words) {
    Optional<Picture> picture = EffectCharts.of(from, effect);
    boolean shownAbove = picture.isPresent() && picture.equals(AnswerSection.chart(from));
    Optional<FigureView> figure =
        picture.filter(chart -> !shownAbove).map(chart -> EffectCharts.figure(from, effect, chart));
    return new EffectView(
        Plural.sentence(effect.response().label()) + ", " + effect.ring() + " ring",
        words.sentence(effect) + words.fromBestToWorst(effect).map(it -> " " + it).orElse(""),
        words.naive(effect).orElse(""),
        checks(from, effect),
        figure,
        EffectCharts.residuals(from, effect),
        shownAbove ? Charts.id(picture.get()) : "");
  }

  private static List<String> checks(Materials from, HoleEffect effect) {
    CheckWords words = CheckWords.of(from.results());
    return from.results().effectChecks().stream()
        .filter(checks -> checks.response() == effect.response())
        .filter(checks -> checks.ring().equals(effect.ring()))
        .findFirst()
        .map(words::sentences)
        .orElse(List.of());
  }

  private static TableView models(Materials from) {
    List<List<CellView>> rows = new ArrayList<>();
    for (HoleEffect effect : from.results().holeEffects()) {
      effect.rows().forEach(row -> rows.add(row(from, effect, row)));
    }
    return TableView.list(
        "effect-models",
        "Every way in which the effect was estimated; the answer stands on the row marked so",
        List.of(
            ColumnView.words("response"),
            ColumnView.words("ring"),
            ColumnView.words("model"),
            ColumnView.words("term"),
            ColumnView.numbers("estimate"),
            ColumnView.numbers("interval"),
            ColumnView.numbers("degrees of freedom"),
            ColumnView.numbers("builds"),
            ColumnView.numbers("runs"),
            ColumnView.words("use")),
        rows);
  }

  private static List<CellView> row(Materials from, HoleEffect effect, EffectRow row) {
    EffectTermCells cells = new EffectTermCells(from.display(), effect, row);
    return List.of(
        CellView.of(effect.response().label()),
        CellView.of(effect.ring()),
        CellView.of(row.model().label()),
        CellView.of(row.term()),
        CellView.number(cells.estimate(), row.estimate()),
        CellView.of(cells.interval()),
        CellView.number(number(row.degreesOfFreedom()), row.degreesOfFreedom()),
        FigureCells.count(row.builds()),
        FigureCells.count(row.runs()),
        CellView.of(use(effect, row)));
  }

  private static String use(HoleEffect effect, EffectRow row) {
    if (effect.isHeadline(row)) {
      return "the answer";
    }
    return row.model() == EffectRow.Model.BURN_LEVEL ? "what not to claim" : "for comparison";
  }

  private static String number(double degreesOfFreedom) {
    return degreesOfFreedom == Math.rint(degreesOfFreedom)
        ? "" + (long) degreesOfFreedom
        : "" + Math.rint(degreesOfFreedom * 10) / 10;
  }

  private static TableView errors(Materials from) {
    FigureCells cells = from.cells();
    return TableView.list(
        "hole-errors",
        "Hole error of each ring, after best fit",
        List.of(
            ColumnView.words("build"),
            ColumnView.words("ring"),
            ColumnView.words("air"),
            ColumnView.numbers("holes measured"),
            cells.column("RMS hole error", Dimension.LENGTH),
            cells.column("floor of reading", Dimension.LENGTH),
            cells.column("largest", Dimension.LENGTH),
            cells.column("spacing SD", Dimension.LENGTH),
            cells.column("height offset", Dimension.LENGTH),
            cells.column("turned by", Dimension.ANGLE),
            cells.column("open area", Dimension.AREA),
            cells.column("intended", Dimension.AREA)),
        from.results().rings().stream().map(ring -> row(cells, ring)).toList());
  }

  private static List<CellView> row(FigureCells cells, RingResult ring) {
    return List.of(
        CellView.of(ring.build().name()),
        CellView.of(ring.ring()),
        CellView.of(ring.air().map(Air::label).orElse("")),
        CellView.number(ring.holes().size() + " of " + ring.holesIntended(), ring.holes().size()),
        millimetres(cells, ring.rms()),
        millimetres(cells, ring.rmsFloor()),
        millimetres(cells, ring.largest()),
        millimetres(cells, ring.spacingSd()),
        millimetres(cells, ring.heightOffset()),
        cells.cell(ring.rotation(), TENTH_OF_A_DEGREE),
        cells.cell(ring.openArea()),
        cells.cell(ring.openAreaIntended()));
  }

  private static CellView millimetres(FigureCells cells, Figure length) {
    return cells.cell(length, FigureCells.OF_A_HOLE);
  }
}
