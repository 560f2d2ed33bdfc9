package fairboil.reports.chart;

import fairboil.analysis.InOrder;
import fairboil.analysis.Results;
import fairboil.analysis.compare.Comparison;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.fault.Faults;
import fairboil.analysis.fault.Tried;
import fairboil.analysis.group.BuildResult;
import fairboil.analysis.group.Restating;
import fairboil.analysis.layout.RingResult;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.finding.Place;
import fairboil.ingest.sheet.Key;
import fairboil.reports.chart.ChartPlan.Drawn;
import fairboil.reports.words.BuildCaptions;
import fairboil.reports.words.Caption;
import fairboil.reports.words.CompareWords;
import fairboil.reports.words.Display;
import fairboil.reports.words.EffectCaptions;
import fairboil.reports.words.EffectWords;
import fairboil.reports.words.RunCaptions;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * All pictures of a report: of the study first (hole effects, builds side by side, differences,
 * what normalising did, residuals, ring maps, heat and uncertainty), then the trace of each run
 * that has one. Same results, same pictures, in the same order, however many threads draw them.
 */
public final class ChartBook {

  private static final List<Measure> SIDE_BY_SIDE =
      List.of(Measure.NORMALISED_PEAK, Measure.NORMALISED_BOIL_TIME, Measure.BOIL_TIME);

  /** As many runs as a page shows in full; of more it shows small traces. */
  public static final int MOST_RUNS_IN_PAGE = 60;

  private static final int MOST_PAIRS = 45;
  private static final int BUILDS_A_SHEET = 40;
  private static final int MAPS_A_SHEET = 12;

  private final Results results;
  private final Display display;
  private final EffectCaptions effectCaptions;
  private final BuildCaptions buildCaptions;
  private final RunCaptions runCaptions;
  private final Tips tips;
  private final DesignStyles styles;
  private final List<ChartPlan> plans;
  private final List<String> names;
  private final Faults faults;

  private ChartBook(Results results, Display display, Faults faults) {
    this.results = results;
    this.faults = faults;
    this.display = display;
    this.effectCaptions = EffectCaptions.in(display, results.confidence());
    this.buildCaptions = BuildCaptions.in(display, results.confidence());
    this.runCaptions = RunCaptions.in(display);
    this.tips = new Tips(results, display);
    this.styles = DesignStyles.of(results.builds().stream().map(BuildResult::build).toList());
    this.plans = plans();
    this.names = Slugs.of(plans.stream().map(ChartPlan::name).toList());
  }

  /**
   * The pictures of those results, with numbers as {@code display} shows them.
   *
   * @param faults takes, in the order of the pictures, those at which the program failed
   */
  public static ChartBook of(Results results, Display display, Faults faults) {
    return new ChartBook(results, display, faults);
  }

  /** Takes finished pictures one by one. */
  @FunctionalInterface
  public interface Taker {

    /** Takes the next picture. */
    void take(Picture picture) throws IOException;
  }

  /** How many pictures there are. */
  public int size() {
    return plans.size();
  }

  /** The names of all pictures, in their order: safe for files, no two alike ignoring case. */
  public List<String> names() {
    return names;
  }

  /**
   * Draws all pictures on as many threads and hands them over one by one in their order, on the
   * calling thread. Only a few pictures are held at any time.
   *
   * @throws IOException if {@code taker} throws it
   */
  public void draw(Painter painter, int threads, Taker taker) throws IOException {
    List<Integer> indices = IntStream.range(0, plans.size()).boxed().toList();
    InOrder.each(
        indices, threads, index -> tried(index, painter), tried -> taker.take(taken(tried)));
  }

  /** A picture as it was drawn, or failed to be, in a thread of its own. */
  private record Drawing(int index, Tried<Picture> picture) {}

  private Drawing tried(int index, Painter painter) {
    Place place = Place.of("charts/" + names.get(index) + ".png");
    return new Drawing(
        index, Faults.attempt(plans.get(index).part(), place, () -> picture(index, painter)));
  }

  private Picture taken(Drawing drawing) {
    ChartPlan plan = plans.get(drawing.index());
    return faults
        .take(drawing.picture())
        .orElseGet(() -> Picture.lost(plan.key(), names.get(drawing.index())));
  }

  private Picture picture(int index, Painter painter) {
    ChartPlan plan = plans.get(index);
    Drawn drawn = plan.maker().apply(Format.SCREEN);
    return new Picture(
        plan.key(),
        names.get(index),
        painter.painted(drawn.sheet()),
        drawn.sheet().width(),
        drawn.sheet().height(),
        drawn.caption().alternative(),
        drawn.caption().text());
  }

  /** Takes finished prints one by one. */
  @FunctionalInterface
  public interface PrintTaker {

    /** Takes the next print. */
    void take(Print print) throws IOException;
  }

  /**
   * Draws the charts of the study for print, each at every width for which it can be laid out; not
   * those of single runs. Otherwise as {@link #draw}.
   *
   * @throws IOException if {@code taker} throws it
   */
  public void print(Press press, int threads, PrintTaker taker) throws IOException {
    List<Impression> impressions = new ArrayList<>();
    for (int i = 0; i < plans.size(); i++) {
      ChartPlan plan = plans.get(i);
      String name = names.get(i);
      plan.printFormats().forEach(format -> impressions.add(new Impression(plan, name, format)));
    }
    InOrder.each(
        impressions,
        threads,
        each -> each.tried(press),
        tried -> {
          Optional<Print> print = faults.take(tried);
          if (print.isPresent()) {
            taker.take(print.get());
          }
        });
  }

  /** A chart to be printed at one width. */
  private record Impression(ChartPlan plan, String name, Format format) {

    Tried<Print> tried(Press press) {
      String file = "quote/charts/" + name + "-" + format.label();
      return Faults.attempt(plan.part() + " for print", Place.of(file), () -> drawn(press));
    }

    private Print drawn(Press press) {
      Drawn drawn = plan.maker().apply(format);
      return new Print(
          plan.key(),
          name,
          format,
          drawn.caption(),
          press.png(drawn.sheet(), format, Tint.COLOUR),
          press.png(drawn.sheet(), format, Tint.GREY),
          press.pdf(drawn.sheet(), format, drawn.caption().title()));
    }
  }

  private List<ChartPlan> plans() {
    List<RunResult> traced = results.runs().stream().filter(RunChart::canDraw).toList();
    return Stream.of(
            contained("charts of hole effects", this::holeEffects),
            contained("charts of builds", () -> all(this::builds)),
            contained("charts of differences", () -> all(this::forest)),
            contained("chart of normalising", this::normalising),
            contained("charts of residuals", this::residuals),
            contained("maps of holes", this::ringMaps),
            contained("charts of heat", () -> new HeatPlans(results, display).all()),
            contained("small traces", () -> traces(traced)),
            contained("charts of runs", () -> traced.stream().map(this::run).toList()))
        .flatMap(List::stream)
        .toList();
  }

  private List<ChartPlan> contained(String what, Supplier<List<ChartPlan>> plans) {
    return faults.contain("the " + what, Place.of("charts"), plans::get).orElse(List.of());
  }

  private static List<ChartPlan> all(Function<Measure, List<ChartPlan>> plans) {
    return SIDE_BY_SIDE.stream().flatMap(measure -> plans.apply(measure).stream()).toList();
  }

  private List<ChartPlan> holeEffects() {
    return results.holeEffects().stream()
        .filter(effect -> !effect.points().isEmpty())
        .map(this::holeEffect)
        .toList();
  }

  private List<ChartPlan> residuals() {
    return results.holeEffects().stream()
        .filter(effect -> !effect.band().isEmpty())
        .map(this::residuals)
        .toList();
  }

  private List<ChartPlan> ringMaps() {
    return rings().stream().flatMap(maps -> ringMaps(maps).stream()).toList();
  }

  private ChartPlan holeEffect(HoleEffect effect) {
    String name = "hole-effect " + effect.ring() + " " + effect.response().label();
    return new ChartPlan(
        ChartKey.of(Picture.Kind.HOLE_EFFECT, effect),
        name,
        format -> {
          double confidence = EffectWords.confidence(results, effect);
          Caption caption = EffectCaptions.in(display, confidence).holeEffect(effect);
          Sheet sheet =
              new HoleEffectChart(effect, styles, display, confidence, format).sheet(caption);
          return new Drawn(tips.on(sheet, effect), caption);
        });
  }

  private ChartPlan residuals(HoleEffect effect) {
    return new ChartPlan(
        ChartKey.of(Picture.Kind.RESIDUALS, effect),
        "residuals " + effect.ring() + " " + effect.response().label(),
        format -> {
          Caption caption = effectCaptions.residuals(effect);
          return new Drawn(
              new ResidualChart(effect, styles, display, format).sheet(caption), caption);
        });
  }

  /** Differences between designs and conditions; between builds for want of others. */
  public static List<Comparison> pairs(Results results, Measure measure) {
    List<Comparison> all =
        results.comparisons().stream()
            .filter(pair -> pair.measure() == measure && pair.method().isHeadline())
            .toList();
    List<Comparison> others =
        all.stream().filter(pair -> !pair.level().equals(Comparison.BUILD)).toList();
    List<Comparison> pairs = others.isEmpty() ? all : others;
    return pairs.size() > MOST_PAIRS ? List.of() : pairs;
  }

  private List<ChartPlan> forest(Measure measure) {
    List<Comparison> pairs = pairs(results, measure);
    CompareWords words = CompareWords.of(results);
    return pairs.isEmpty()
        ? List.of()
        : List.of(
            new ChartPlan(
                ChartKey.of(Picture.Kind.FOREST, measure),
                "differences " + measure.label(),
                format -> {
                  Caption caption = buildCaptions.forest(measure, pairs, words);
                  ForestChart chart =
                      new ForestChart(measure, pairs, words, display, results.confidence(), format);
                  return new Drawn(chart.sheet(caption), caption);
                }));
  }

  private List<ChartPlan> normalising() {
    Restating restating = Restating.of(results.runs());
    return restating.canBeSeen()
        ? List.of(
            new ChartPlan(
                ChartKey.of(Picture.Kind.NORMALISING, Measure.NORMALISED_BOIL_TIME),
                "what normalising did",
                format -> {
                  Caption caption = runCaptions.normalising(restating);
                  return new Drawn(
                      new NormalisingChart(restating, styles, display, format).sheet(caption),
                      caption);
                }))
        : List.of();
  }

  private List<ChartPlan> traces(List<RunResult> traced) {
    if (results.runs().size() <= MOST_RUNS_IN_PAGE) {
      return List.of();
    }
    TraceSheets sheets = new TraceSheets(traced, display);
    List<ChartPlan> plans = new ArrayList<>();
    for (int from = 0; from < traced.size(); from += TraceSheets.RUNS_A_SHEET) {
      List<RunResult> some =
          traced.subList(from, Math.min(traced.size(), from + TraceSheets.RUNS_A_SHEET));
      plans.add(
          new ChartPlan(
              ChartKey.of(Picture.Kind.TRACES),
              "traces",
              format -> {
                Caption caption =
                    runCaptions.traces(some, sheets.time().to(), sheets.temperatures());
                return new Drawn(sheets.sheet(some, caption, display), caption);
              }));
    }
    return plans;
  }

  private List<ChartPlan> builds(Measure measure) {
    Map<Key, double[]> burns = new LinkedHashMap<>();
    List<BuildResult> shown = new ArrayList<>();
    for (BuildResult build : results.builds()) {
      double[] values = BuildsChart.burns(measure, build.build().key(), results.runs());
      burns.put(build.build().key(), values);
      if (build.runs() > 0) {
        shown.add(build);
      }
    }
    boolean known = burns.values().stream().anyMatch(values -> values.length > 0);
    List<ChartPlan> plans = new ArrayList<>();
    for (int from = 0; known && from < shown.size(); from += BUILDS_A_SHEET) {
      List<BuildResult> some = shown.subList(from, Math.min(shown.size(), from + BUILDS_A_SHEET));
      plans.add(
          new ChartPlan(
              ChartKey.of(Picture.Kind.BUILDS, measure),
              "builds " + measure.label(),
              format -> buildsSheet(measure, some, burns, format)));
    }
    return plans;
  }

  private Drawn buildsSheet(
      Measure measure, List<BuildResult> some, Map<Key, double[]> burns, Format format) {
    int runs =
        some.stream()
            .mapToInt(build -> Objects.requireNonNull(burns.get(build.build().key())).length)
            .sum();
    Caption caption = buildCaptions.builds(measure, some, runs);
    BuildsChart chart =
        new BuildsChart(
            measure,
            some,
            burns,
            results.builds(),
            styles,
            buildCaptions,
            display,
            results.confidence(),
            format);
    return new Drawn(tips.on(chart.sheet(caption), measure, some), caption);
  }

  private Collection<List<RingResult>> rings() {
    Map<List<Object>, List<RingResult>> rings = new LinkedHashMap<>();
    for (RingResult map : results.rings()) {
      if (!map.holes().isEmpty()) {
        rings
            .computeIfAbsent(List.of(map.ring(), map.surface()), ring -> new ArrayList<>())
            .add(map);
      }
    }
    return rings.values();
  }

  private List<ChartPlan> ringMaps(List<RingResult> maps) {
    List<ChartPlan> plans = new ArrayList<>();
    for (int from = 0; from < maps.size(); from += MAPS_A_SHEET) {
      List<RingResult> some = maps.subList(from, Math.min(maps.size(), from + MAPS_A_SHEET));
      String ring = maps.get(0).ring();
      plans.add(
          new ChartPlan(
              ChartKey.ofRing(Picture.Kind.RING_MAPS, ring),
              "ring " + ring,
              format -> ringSheet(some, format)));
    }
    return plans;
  }

  private Drawn ringSheet(List<RingResult> some, Format format) {
    RingMaps chart = new RingMaps(some, results.study(), styles, buildCaptions, display, format);
    Caption caption = buildCaptions.ringMaps(some, chart.times());
    return new Drawn(chart.sheet(caption), caption);
  }

  private ChartPlan run(RunResult run) {
    Key key = run.run().key();
    return new ChartPlan(
        ChartKey.ofRun(Picture.Kind.RUN, key),
        "run " + key.name(),
        format -> {
          Caption caption = runCaptions.run(run);
          return new Drawn(new RunChart(run, display).sheet(caption), caption);
        });
  }
}
