package fairboil.analysis.plan;

import fairboil.analysis.Results;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.layout.RingResult;
import fairboil.analysis.model.Chance;
import fairboil.analysis.plan.Answer.Need;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.Build;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Plans the next tests from what a study shows, or from what a person states. */
public final class Plans {

  private static final int FEW_BUILDS = 3;
  private static final int FEW_RUNS = 3;

  /** An example looks for a difference of so many standard deviations of a burn of any stove. */
  private static final double EXAMPLE = 2;

  private static final Template NO_SCATTER =
      Template.of(
          "nothing scatters in this study, so there is nothing to plan by; give the scatter with"
              + " --burn-sd and --stove-sd");
  private static final Template NO_HOLE_ERRORS =
      Template.of(
          "to plan for a hole effect I must know how wrongly holes may be drilled; give a"
              + " --largest-error above the smallest RMS hole error measured so far");
  private static final Template OWN_STOVES =
      Template.of(
          "each site burnt stoves of its own, so a difference between sites could come from the"
              + " stoves");
  private static final Template SEND_ROUND =
      Template.of("send the same stoves round all sites: name each site with --site");

  private final Results results;
  private final Asked asked;
  private final int seed;
  private final List<String> designs;

  private Plans(Results results, Asked asked) {
    this.results = results;
    this.asked = asked;
    this.seed = results.study().settings().get(Settings.SEED);
    this.designs =
        results.study().builds().stream().flatMap(b -> b.design().stream()).distinct().toList();
  }

  /**
   * A plan.
   *
   * @param results of the study; it may have no run
   * @throws PlanException if something must be stated first
   */
  public static Plan of(Results results, Asked asked) throws PlanException {
    return new Plans(results, asked).plan();
  }

  private Plan plan() throws PlanException {
    Scatters scatters = new Scatters(asked);
    Spreads ofDesigns = scatters.ofDesigns(results.runs());
    List<Wish> wishes = asked.wishes();
    if (wishes.isEmpty()) {
      wishes = List.of(example(ofDesigns));
    }
    boolean effect = wishes.stream().anyMatch(wish -> !wish.kind().isByDesign());
    Optional<HoleLevels> levels = effect ? Optional.of(levels()) : Optional.empty();
    Spreads aboutLine = scatters.aboutLine(results.holeEffects()).orElse(ofDesigns);
    List<Answer> answers = new ArrayList<>();
    for (Wish wish : wishes) {
      Spreads spreads = wish.kind().isByDesign() ? ofDesigns : aboutLine;
      Odds odds = new Odds(wish, spreads, compared(), levels, results.confidence());
      answers.add(Answers.of(wish, spreads, odds, asked.power()));
    }
    return withOrder(answers, levels);
  }

  private int compared() {
    return Math.max(2, designs.size());
  }

  private static Wish example(Spreads spreads) throws PlanException {
    double size = EXAMPLE * spreads.ofBuildMean(1, Basis.ESTIMATE);
    if (!(size > 0)) {
      throw new PlanException(NO_SCATTER.with());
    }
    return new Wish(Wish.Kind.DIFFERENCE, size);
  }

  private HoleLevels levels() throws PlanException {
    double[] measured =
        results.rings().stream()
            .filter(ring -> isAsked(ring.ring()))
            .map(RingResult::rms)
            .filter(Figure::isKnown)
            .mapToDouble(Figure::orNaN)
            .sorted()
            .toArray();
    double least = measured.length == 0 ? 0 : measured[0];
    double largest =
        asked.largestHoleError().orElse(measured.length == 0 ? 0 : measured[measured.length - 1]);
    if (!(largest > least)) {
      throw new PlanException(NO_HOLE_ERRORS.with());
    }
    return new HoleLevels(least, largest);
  }

  private boolean isAsked(String ring) {
    return results.holeEffects().isEmpty() || results.holeEffects().get(0).ring().equals(ring);
  }

  /** The order is for the hole effect if that is wished, else for the wish that takes most. */
  private Plan withOrder(List<Answer> answers, Optional<HoleLevels> levels) {
    boolean effect = levels.isPresent();
    int needed = 0;
    int runs = asked.runs().orElse(0);
    for (Answer answer : answers) {
      Optional<Need> advice = answer.advice(Basis.UPPER_LIMIT);
      if (advice.isPresent() && answer.wish().kind().isByDesign() != effect) {
        needed = Math.max(needed, advice.get().builds().orElseThrow());
        runs = asked.runs().orElse(Math.max(runs, advice.get().runs()));
      }
    }
    int each = needed == 0 ? FEW_BUILDS : needed;
    int total = asked.builds().orElse(effect ? each : each * groups().size());
    List<PlannedBuild> builds = effect ? drilled(total, levels.orElseThrow()) : stoves(total);
    int burns = runs == 0 ? FEW_RUNS : runs;
    RunningOrder order =
        RunningOrder.of(
            builds.stream().map(PlannedBuild::name).toList(),
            burns,
            asked.sites(),
            Chance.stream(seed, "plan", "running order"));
    return new Plan(
        asked, answers, compared(), levels, results.confidence(), builds, burns, order, findings());
  }

  private List<String> groups() {
    List<String> groups = new ArrayList<>(designs);
    for (int number = 1; groups.size() < 2; number++) {
      String name = "design " + number;
      if (!groups.contains(name)) {
        groups.add(name);
      }
    }
    return groups;
  }

  /** New builds of one design, each given a hole error at random. */
  private List<PlannedBuild> drilled(int total, HoleLevels levels) {
    List<Integer> shared = new ArrayList<>();
    for (int level : HoleLevels.shared(total)) {
      shared.add(level);
    }
    List<Integer> assigned =
        RunningOrder.shuffled(shared, Chance.stream(seed, "plan", "hole errors"));
    Names names = new Names();
    List<PlannedBuild> builds = new ArrayList<>();
    for (int level : assigned) {
      builds.add(
          new PlannedBuild(
              names.next(),
              designs.stream().findFirst(),
              PlannedBuild.Origin.NEW,
              OptionalDouble.of(levels.at(level))));
    }
    return builds;
  }

  /** As many of each design as can be: those that are there first. */
  private List<PlannedBuild> stoves(int total) {
    Map<String, List<String>> there = new HashMap<>();
    for (Build build : results.study().builds()) {
      there
          .computeIfAbsent(build.design().orElse(""), key -> new ArrayList<>())
          .add(build.key().name());
    }
    Names names = new Names();
    List<PlannedBuild> builds = new ArrayList<>();
    List<String> groups = groups();
    for (int i = 0; i < total; i++) {
      String design = groups.get(i % groups.size());
      List<String> own = there.getOrDefault(design, List.of());
      int index = i / groups.size();
      boolean exists = index < own.size();
      builds.add(
          new PlannedBuild(
              exists ? own.get(index) : names.next(),
              Optional.of(design),
              exists ? PlannedBuild.Origin.STUDY : PlannedBuild.Origin.NEW,
              OptionalDouble.empty()));
    }
    return builds;
  }

  /** Names for new builds that no build of the study has, whatever the case. */
  private final class Names {

    private final Set<String> taken = new HashSet<>();
    private int last;

    Names() {
      results.study().builds().forEach(b -> taken.add(b.key().name().toUpperCase(Locale.ROOT)));
    }

    String next() {
      do {
        last++;
      } while (!taken.add("N" + last));
      return "N" + last;
    }
  }

  /** Where no stove was burnt at two sites, nothing can tell site and stove apart. */
  private List<Finding> findings() {
    Map<String, Set<String>> sites = new HashMap<>();
    Set<String> all = new HashSet<>();
    for (RunResult run : results.runs()) {
      run.run()
          .row()
          .value(RunsSheet.SITE)
          .ifPresent(
              site -> {
                all.add(site);
                sites.computeIfAbsent(run.build().key().name(), key -> new HashSet<>()).add(site);
              });
    }
    boolean apart = sites.values().stream().allMatch(some -> some.size() == 1);
    return all.size() < 2 || !apart || !asked.sites().isEmpty()
        ? List.of()
        : List.of(
            Finding.warning(
                results.runs().get(0).run().row().place(RunsSheet.SITE),
                OWN_STOVES.with(),
                SEND_ROUND.with()));
  }
}
