package fairboil.reports.page;

import fairboil.analysis.Results;
import fairboil.analysis.plan.Answer;
import fairboil.analysis.plan.Answer.Need;
import fairboil.analysis.plan.Basis;
import fairboil.analysis.plan.Plan;
import fairboil.analysis.plan.PlannedBuild;
import fairboil.analysis.plan.Wish;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.sheet.Settings;
import fairboil.reports.chart.Picture;
import fairboil.reports.page.view.CellView;
import fairboil.reports.page.view.ColumnView;
import fairboil.reports.page.view.FigureView;
import fairboil.reports.page.view.TableView;
import fairboil.reports.words.Display;
import fairboil.reports.words.PlanWords;
import fairboil.reports.words.Plural;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Writes the page of a plan: self-contained, as the page of a report is. */
public final class PlanPage {

  private final Results results;
  private final Plan plan;
  private final Map<Wish.Kind, Picture> pictures;
  private final Display display;
  private final String version;

  /**
   * The page of a plan.
   *
   * @param results of the study that it is for
   * @param pictures one of each wish
   * @param version the version of the program
   */
  public PlanPage(Results results, Plan plan, Map<Wish.Kind, Picture> pictures, String version) {
    this.pictures = Map.copyOf(pictures);
    this.results = results;
    this.plan = plan;
    this.display = Display.in(results.study().settings().get(Settings.SHOW_UNITS));
    this.version = version;
  }

  /** Writes the page, as UTF-8; the stream stays open. */
  public void write(OutputStream out) throws IOException {
    PlanWords words = new PlanWords(plan, display);
    String title = "A plan for the next tests";
    Map<String, Object> parameters = new HashMap<>();
    parameters.put("head", new Policy().head(title + " – " + results.study().name()));
    parameters.put("title", title);
    parameters.put("study", results.study().name());
    parameters.put("version", version);
    parameters.put("answer", words.answer());
    parameters.put("basis", words.basis());
    parameters.put("drilling", words.drilling());
    parameters.put("order", words.order());
    parameters.put("charts", charts());
    parameters.put("builds", builds());
    parameters.put("blocks", blocks());
    parameters.put("findings", FindingViews.of(findings(), display));
    PageOutput page = new PageOutput();
    TemplateEngine.createPrecompiled(ContentType.Html).render("plan.jte", parameters, page);
    page.writeTo(out);
  }

  /** What is said of the plan, and what could not be used of the study that it stands on. */
  private List<Finding> findings() {
    return Stream.concat(
            results.study().told(plan.findings()).stream(),
            results.findings().stream().filter(finding -> finding.severity() == Severity.ERROR))
        .distinct()
        .sorted()
        .toList();
  }

  private static TableView needs(Answer answer, int number) {
    List<List<CellView>> rows = new ArrayList<>();
    for (int runs = 1; runs <= Answer.MOST_RUNS; runs++) {
      rows.add(
          List.of(
              FigureCells.count(runs),
              builds(answer.need(Basis.UPPER_LIMIT, runs)),
              builds(answer.need(Basis.ESTIMATE, runs))));
    }
    Wish.Kind kind = answer.wish().kind();
    return TableView.grid(
        "needs-" + number,
        "Stoves needed" + (kind.isByDesign() ? " of each design" : "") + ": " + kind.label(),
        List.of(
            ColumnView.numbers("burns of each stove"),
            ColumnView.numbers(Basis.UPPER_LIMIT.label()),
            ColumnView.numbers(Basis.ESTIMATE.label())),
        rows);
  }

  private List<FigureView> charts() {
    List<FigureView> charts = new ArrayList<>();
    for (Answer answer : plan.answers()) {
      Optional.ofNullable(pictures.get(answer.wish().kind()))
          .map(picture -> Charts.figure(picture, Optional.of(needs(answer, charts.size() + 1))))
          .ifPresent(charts::add);
    }
    return charts;
  }

  private static CellView builds(Need need) {
    return need.builds().isPresent()
        ? FigureCells.count(need.builds().getAsInt())
        : CellView.of("more than " + Answer.MOST_BUILDS);
  }

  private TableView builds() {
    return TableView.grid(
        "planned-builds",
        "The stoves",
        List.of(
            ColumnView.words("build"),
            ColumnView.words("design"),
            ColumnView.words("origin"),
            ColumnView.words("RMS hole error to drill")),
        plan.builds().stream().map(this::row).toList());
  }

  private List<CellView> row(PlannedBuild build) {
    return List.of(
        CellView.of(build.name()),
        CellView.of(build.design().orElse("")),
        CellView.of(build.origin().label()),
        CellView.of(
            build.holeError().isPresent()
                ? display.value(
                    build.holeError().getAsDouble(), FigureCells.OF_A_HOLE, Dimension.LENGTH)
                : "as truly as you can"));
  }

  private TableView blocks() {
    return TableView.grid(
        "blocks",
        "Blocks",
        List.of(
            ColumnView.numbers("block"),
            ColumnView.words("site"),
            ColumnView.words("in this order")),
        plan.order().blocks().stream()
            .map(
                block ->
                    List.of(
                        FigureCells.count(block.number()),
                        CellView.of(block.site().orElse("as you like")),
                        CellView.of(Plural.list(block.builds()))))
            .toList());
  }
}
