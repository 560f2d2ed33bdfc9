package fairboil.analysis.precision;

import fairboil.analysis.fault.Fault;
import fairboil.analysis.fault.Faults;
import fairboil.analysis.group.RunGroup;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.model.MeanSquare;
import fairboil.analysis.model.VarianceComponents;
import fairboil.analysis.precision.Precision.Layout;
import fairboil.analysis.precision.Repeatability.Level;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.RunsSheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * How far runs of a stove, stoves of a design, and sites that burn them differ. Scatter between
 * builds is that within designs: stoves built to different plans are meant to differ.
 */
public final class Repeatabilities {

  private static final Template SCATTER = Template.of("the scatter of {word}");

  private final RunGroup runs;
  private final Repeated by;
  private final double confidence;
  private final List<Repeatability> scatter = new ArrayList<>();
  private final List<Round> rounds = new ArrayList<>();
  private final Faults faults = new Faults();

  private Repeatabilities(RunGroup runs, double confidence) {
    this.runs = runs;
    this.by = Repeated.of(runs);
    this.confidence = confidence;
  }

  /**
   * The scatter of a study.
   *
   * @param scatter a row a measure and level
   * @param precision who repeated the burns, and what each found
   * @param faults measures at whose scatter the program failed; unmodifiable
   */
  public record Outcome(List<Repeatability> scatter, Precision precision, List<Fault> faults) {

    /** Of a study whose scatter is lost, as its own fault tells. */
    public static final Outcome NONE = new Outcome(List.of(), Precision.NONE, List.of());
  }

  /** What is found of one measure. */
  private record Found(ScatterRows rows, List<Round> rounds) {}

  /**
   * The scatter of each measure of runs.
   *
   * @param runs the results of all runs
   * @param confidence of the intervals, between 0 and 1
   */
  public static Outcome of(List<RunResult> runs, double confidence) {
    Repeatabilities all = new Repeatabilities(RunGroup.of(runs), confidence);
    for (Measure measure : Measure.values()) {
      if (measure.level() == Measure.Level.RUN) {
        all.add(measure);
      }
    }
    return new Outcome(List.copyOf(all.scatter), all.precision(), all.faults.all());
  }

  private void add(Measure measure) {
    Message part = SCATTER.with(Argument.word(measure.label()));
    faults
        .contain(part, Place.of(RunsSheet.SCHEMA.file()), () -> found(measure))
        .ifPresent(
            found -> {
              scatter.addAll(found.rows().rows());
              rounds.addAll(found.rounds());
            });
  }

  private Found found(Measure measure) {
    Found found = new Found(new ScatterRows(confidence), new ArrayList<>());
    find(measure, found);
    return found;
  }

  private void find(Measure measure, Found into) {
    ScatterRows rows = into.rows();
    SiteScatter scatter = SiteScatter.of(runs, measure, by);
    MeanSquare within = scatter.runs();
    if (within.isThere()) {
      rows.runToRun(measure, within, scatter.burned());
    }
    designs().forEach((design, own) -> addBuilds(measure, design, own, rows));
    if (by == Repeated.BY_NOBODY) {
      return;
    }
    scatter.betweenSites().ifPresent(found -> addSites(measure, scatter, found, into));
    if (scatter.wentRound().isEmpty()) {
      scatter
          .sitesWithOwnStoves()
          .ifPresent(
              found ->
                  rows.add(
                      measure, level(Level.SITES_WITH_OWN_STOVES), "", found, scatter.burned()));
    }
  }

  private Map<String, RunGroup> designs() {
    Map<String, List<RunResult>> designs = new LinkedHashMap<>();
    for (RunResult run : runs.runs()) {
      String design = run.build().design().orElse("");
      designs.computeIfAbsent(design, key -> new ArrayList<>()).add(run);
    }
    Map<String, RunGroup> groups = new LinkedHashMap<>();
    designs.forEach((design, own) -> groups.put(design, RunGroup.of(own)));
    return groups;
  }

  private void addBuilds(Measure measure, String design, RunGroup own, ScatterRows rows) {
    Burned burned = Burned.of(own, measure, by);
    if (burned.siteCount() < 2) {
      VarianceComponents.of(burned.byStove())
          .ifPresent(found -> rows.add(measure, Level.BUILD_TO_BUILD, design, found, burned));
      return;
    }
    SiteScatter scatter = new SiteScatter(burned);
    Optional<VarianceComponents> within = scatter.stovesWithinSites();
    within.ifPresent(found -> rows.add(measure, Level.BUILD_TO_BUILD, design, found, burned));
    if (within.isEmpty() && scatter.wentRound().isEmpty()) {
      VarianceComponents.of(burned.byStove())
          .ifPresent(
              found -> rows.add(measure, level(Level.SITE_AND_STOVE), design, found, burned));
    }
  }

  private void addSites(
      Measure measure, SiteScatter scatter, VarianceComponents sites, Found into) {
    ScatterRows rows = into.rows();
    Set<Key> round = scatter.wentRound();
    Burned burned = Burned.of(runs.where(run -> round.contains(run.build().key())), measure, by);
    rows.add(measure, level(Level.BETWEEN_SITES), "", sites, burned);
    scatter
        .siteAlike()
        .ifPresent(found -> rows.add(measure, level(Level.SITE_ALIKE), "", found, burned));
    scatter
        .siteByStove()
        .ifPresent(found -> rows.add(measure, level(Level.SITE_BY_STOVE), "", found, burned));
    rows.total(measure, level(Level.REPRODUCIBILITY), sites, burned);
    for (Key stove : burned.stovesInOrder()) {
      into.rounds().add(RoundFinder.of(measure, stove, burned.bySite(stove, by)));
    }
  }

  /** The same of testers. */
  private Level level(Level ofSites) {
    return by == Repeated.BY_TESTERS ? ofSites.ofTesters() : ofSites;
  }

  private Precision precision() {
    if (by == Repeated.BY_NOBODY) {
      return Precision.NONE;
    }
    Map<String, String> names = new LinkedHashMap<>();
    runs.runs().forEach(run -> names.putIfAbsent(by.key(run), by.name(run)));
    return new Precision(by, layout(), List.copyOf(names.values()), rounds);
  }

  private Layout layout() {
    Map<Key, Set<String>> sitesOfStove = new LinkedHashMap<>();
    Map<String, Set<String>> sitesOfDesign = new LinkedHashMap<>();
    Map<List<String>, Set<Key>> stovesAtSite = new LinkedHashMap<>();
    for (RunResult run : runs.runs()) {
      String site = by.key(run);
      String design = run.build().design().orElse("");
      put(sitesOfStove, run.build().key(), site);
      put(sitesOfDesign, design, site);
      put(stovesAtSite, List.of(design, site), run.build().key());
    }
    if (sitesOfStove.values().stream().anyMatch(sites -> sites.size() > 1)) {
      return Layout.SAME_STOVE;
    }
    Set<String> common = new LinkedHashSet<>(sitesOfDesign.keySet());
    common.removeIf(design -> Objects.requireNonNull(sitesOfDesign.get(design)).size() < 2);
    if (common.isEmpty()) {
      return Layout.OWN_DESIGNS;
    }
    boolean several =
        stovesAtSite.entrySet().stream()
            .anyMatch(at -> common.contains(at.getKey().get(0)) && at.getValue().size() > 1);
    return several ? Layout.SEVERAL_OWN_STOVES : Layout.ONE_OWN_STOVE_EACH;
  }

  private static <K, V> void put(Map<K, Set<V>> map, K key, V value) {
    map.computeIfAbsent(key, absent -> new LinkedHashSet<>()).add(value);
  }
}
