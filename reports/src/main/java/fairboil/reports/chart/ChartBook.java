package fairboil.reports.chart;

import fairboil.analysis.InOrder;
import fairboil.analysis.Results;
import fairboil.analysis.compare.Comparison;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.group.BuildResult;
import fairboil.analysis.group.Restating;
import fairboil.analysis.layout.RingResult;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.sheet.Key;
import fairboil.reports.chart.Plan.Drawn;
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
import java.util.stream.IntStream;

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
  private final List<Plan> plans;
  private final List<String> names;

  private ChartBook(Results results, Display display) {
    this.results = results;
    this.display = display;
    this.effectCaptions = EffectCaptions.in(display, results.confidence());
    this.buildCaptions = BuildCaptions.in(display, results.confidence());
    this.runCaptions = RunCaptions.in(display);
    this.tips = new Tips(results, display);
    this.styles = DesignStyles.of(results.builds().stream().map(BuildResult::build).toList());
    this.plans = plans();
    this.names = Slugs.of(plans.stream().map(Plan::name).toList());
  }

  /** The pictures of those results, with numbers as {@code display} shows them. */
  public static ChartBook of(Results results, Display display) {
    return new ChartBook(results, display);
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
    InOrder.each(indices, threads, index -> picture(index, painter), taker::take);
  }

  private Picture picture(int index, Painter painter) {
    Plan plan = plans.get(index);
    Drawn drawn = plan.maker().apply(Format.SCREEN);
    return new Picture(
        plan.kind(),
        plan.subject(),
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
      Plan plan = plans.get(i);
      String name = names.get(i);
      plan.printFormats().forEach(format -> impressions.add(new Impression(plan, name, format)));
    }
    InOrder.each(impressions, threads, each -> each.drawn(press), taker::take);
  }

  /** A chart to be printed at one width. */
  private record Impression(Plan plan, String name, Format format) {

    Print drawn(Press press) {
      Drawn drawn = plan.maker().apply(format);
      return new Print(
          plan.kind(),
          plan.subject(),
          name,
          format,
          drawn.caption(),
          press.png(drawn.sheet(), format, Tint.COLOUR),
          press.png(drawn.sheet(), format, Tint.GREY),
          press.pdf(drawn.sheet(), format, drawn.caption().title()));
    }
  }

  private List<Plan> plans() {
    List<Plan> all = new ArrayList<>();
    results.holeEffects().stream()
        .filter(effect -> !effect.points().isEmpty())
        .forEach(effect -> all.add(holeEffect(effect)));
    SIDE_BY_SIDE.forEach(measure -> all.addAll(builds(measure)));
    SIDE_BY_SIDE.forEach(measure -> forest(measure).ifPresent(all::add));
    normalising().ifPresent(all::add);
    results.holeEffects().stream()
        .filter(effect -> !effect.band().isEmpty())
        .forEach(effect -> all.add(residuals(effect)));
    rings().forEach(maps -> all.addAll(ringMaps(maps)));
    all.addAll(new HeatPlans(results, display).all());
    List<RunResult> traced = results.runs().stream().filter(RunChart::canDraw).toList();
    if (results.runs().size() > MOST_RUNS_IN_PAGE) {
      all.addAll(traces(traced));
    }
    traced.forEach(run -> all.add(run(run)));
    return List.copyOf(all);
  }

  private Plan holeEffect(HoleEffect effect) {
    String name = "hole-effect " + effect.ring() + " " + effect.response().label();
    return new Plan(
        Picture.Kind.HOLE_EFFECT,
        effect.response().label(),
        name,
        format -> {
          double confidence = EffectWords.confidence(results, effect);
          Caption caption = EffectCaptions.in(display, confidence).holeEffect(effect);
          Sheet sheet =
              new HoleEffectChart(effect, styles, display, confidence, format).sheet(caption);
          return new Drawn(tips.on(sheet, effect), caption);
        });
  }

  private Plan residuals(HoleEffect effect) {
    return new Plan(
        Picture.Kind.RESIDUALS,
        effect.response().label(),
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

  private Optional<Plan> forest(Measure measure) {
    List<Comparison> pairs = pairs(results, measure);
    CompareWords words = CompareWords.of(results);
    return pairs.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Plan(
                Picture.Kind.FOREST,
                measure.label(),
                "differences " + measure.label(),
                format -> {
                  Caption caption = buildCaptions.forest(measure, pairs, words);
                  ForestChart chart =
                      new ForestChart(measure, pairs, words, display, results.confidence(), format);
                  return new Drawn(chart.sheet(caption), caption);
                }));
  }

  private Optional<Plan> normalising() {
    Restating restating = Restating.of(results.runs());
    return restating.canBeSeen()
        ? Optional.of(
            new Plan(
                Picture.Kind.NORMALISING,
                Measure.NORMALISED_BOIL_TIME.label(),
                "what normalising did",
                format -> {
                  Caption caption = runCaptions.normalising(restating);
                  return new Drawn(
                      new NormalisingChart(restating, styles, display, format).sheet(caption),
                      caption);
                }))
        : Optional.empty();
  }

  private List<Plan> traces(List<RunResult> traced) {
    TraceSheets sheets = new TraceSheets(traced, display);
    List<Plan> plans = new ArrayList<>();
    for (int from = 0; from < traced.size(); from += TraceSheets.RUNS_A_SHEET) {
      List<RunResult> some =
          traced.subList(from, Math.min(traced.size(), from + TraceSheets.RUNS_A_SHEET));
      plans.add(
          new Plan(
              Picture.Kind.TRACES,
              "traces",
              "traces",
              format -> {
                Caption caption =
                    runCaptions.traces(some, sheets.time().to(), sheets.temperatures());
                return new Drawn(sheets.sheet(some, caption, display), caption);
              }));
    }
    return plans;
  }

  private List<Plan> builds(Measure measure) {
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
    List<Plan> plans = new ArrayList<>();
    for (int from = 0; known && from < shown.size(); from += BUILDS_A_SHEET) {
      List<BuildResult> some = shown.subList(from, Math.min(shown.size(), from + BUILDS_A_SHEET));
      plans.add(
          new Plan(
              Picture.Kind.BUILDS,
              measure.label(),
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

  private List<Plan> ringMaps(List<RingResult> maps) {
    List<Plan> plans = new ArrayList<>();
    for (int from = 0; from < maps.size(); from += MAPS_A_SHEET) {
      List<RingResult> some = maps.subList(from, Math.min(maps.size(), from + MAPS_A_SHEET));
      String ring = maps.get(0).ring();
      plans.add(
          new Plan(
              Picture.Kind.RING_MAPS, ring, "ring " + ring, format -> ringSheet(some, format)));
    }
    return plans;
  }

  private Drawn ringSheet(List<RingResult> some, Format format) {
    RingMaps chart = new RingMaps(some, results.study(), styles, buildCaptions, display, format);
    Caption caption = buildCaptions.ringMaps(some, chart.times());
    return new Drawn(chart.sheet(caption), caption);
  }

  private Plan run(RunResult run) {
    String name = run.run().key().name();
    return new Plan(
        Picture.Kind.RUN,
        name,
        "run " + name,
        format -> {
          Caption caption = runCaptions.run(run);
          return new Drawn(new RunChart(run, display).sheet(caption), caption);
        });
  }
}
