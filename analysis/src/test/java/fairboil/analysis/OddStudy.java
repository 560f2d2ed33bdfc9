package fairboil.analysis;

import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.choice.HoldsFor;
import fairboil.ingest.choice.Outcome;
import fairboil.ingest.choice.Relation;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.quantity.Amount;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Selection;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An invented study as nobody wants one: figures copied down, without scatter, huge or missing,
 * nothing boiled, holes all alike. Everything follows from a seed.
 */
final class OddStudy {

  private static final List<Optional<Outcome>> OUTCOMES =
      List.of(
          Optional.of(Outcome.BOILED),
          Optional.of(Outcome.DID_NOT_BOIL),
          Optional.of(Outcome.WENT_OUT),
          Optional.empty());

  private final OddNumbers odd;
  private final int builds;
  private final int designs;
  private final List<Integer> runs = new ArrayList<>();
  private final Study study;
  private final List<RunResult> results = new ArrayList<>();

  OddStudy(long seed) {
    this.odd = new OddNumbers(seed);
    this.builds = 1 + odd.below(6);
    this.designs = 1 + odd.below(3);
    this.study = sheets();
    results();
  }

  Study study() {
    return study;
  }

  /** The result of each run, in order. */
  List<RunResult> runs() {
    return results;
  }

  RunResult result(Run run) {
    return results.stream().filter(each -> each.run().equals(run)).findFirst().orElseThrow();
  }

  private Study sheets() {
    TestStudy sheets =
        new TestStudy()
            .setting(Settings.COMPARE_BY, List.of("tester", "site", "fuel", "design"))
            .wall("upper", 4, 200)
            .wall("lower", 4, 200);
    if (odd.happens(0.5)) {
      sheets.setting(Settings.COVARIATES, List.of(odd.oneOf(List.of("order", "site", "ambient"))));
    }
    double[] errors = holeErrors();
    boolean two = odd.happens(0.3);
    int even = odd.below(6);
    for (int build = 0; build < builds; build++) {
      String name = "B" + build;
      sheets.build(name, "design " + build % designs);
      holes(sheets, name, "upper", errors[build]);
      if (two) {
        holes(sheets, name, "lower", errors[builds - 1 - build]);
      }
      int count = odd.happens(0.5) ? even : odd.below(6);
      runs.add(count);
      for (int run = 0; run < count; run++) {
        run(sheets, name, run);
      }
    }
    for (int i = 0; i < 4; i++) {
      claim(sheets, i);
    }
    return sheets.finish();
  }

  private double[] holeErrors() {
    double[] errors = new double[builds];
    boolean none = odd.happens(0.2);
    boolean equal = odd.happens(0.2);
    for (int i = 0; i < builds; i++) {
      errors[i] = none ? 0 : equal ? 1.5 : odd.happens(0.5) ? i : odd.oneOf(0, 1e-6, 0.3, 2.7, 40);
    }
    return errors;
  }

  private void holes(TestStudy sheets, String build, String ring, double error) {
    if (odd.happens(0.1)) {
      return;
    }
    for (int hole = 0; hole < 4; hole++) {
      sheets.hole(build, ring, hole + 1, 50 * hole + (hole % 2 == 0 ? error : 0), 15);
    }
  }

  private void run(TestStudy sheets, String build, int run) {
    sheets.run(
        build + "-" + run,
        build,
        row -> {
          row.put(RunsSheet.TESTER, "tester " + run % 2).put(RunsSheet.ORDER, 1 + odd.below(30));
          row.put(RunsSheet.FUEL, odd.oneOf(List.of("pellets", "twigs")));
          return odd.happens(0.7)
              ? row.put(RunsSheet.SITE, odd.oneOf(List.of("yard", "shed", "hill")))
              : row;
        });
  }

  private void claim(TestStudy sheets, int number) {
    Measure measure = odd.oneOf(List.of(Measure.values()));
    Unit unit = unit(measure.dimension());
    double value = odd.oneOf(0, 400, 640.3, 0.1, -5, odd.any());
    double margin = odd.oneOf(0, 1, 1e-12, 20, odd.positive());
    sheets.claim(
        "claim " + number,
        row -> {
          row.put(ClaimsSheet.TEXT, "as it says")
              .put(ClaimsSheet.MEASURE, measure.label())
              .put(ClaimsSheet.RELATION, odd.oneOf(List.of(Relation.values())))
              .put(ClaimsSheet.HOLDS_FOR, odd.oneOf(List.of(HoldsFor.values())))
              .put(ClaimsSheet.VALUE, new Amount(value, 0, Optional.of(unit)))
              .put(ClaimsSheet.MARGIN, new Amount(margin, 0, Optional.of(unit)));
          if (odd.happens(0.6)) {
            row.put(ClaimsSheet.ABOUT, selection());
          }
          return odd.happens(0.4) ? row.put(ClaimsSheet.AGAINST, selection()) : row;
        });
  }

  private Selection selection() {
    return odd.oneOf(
        List.of(
            new Selection.Named("B0"),
            new Selection.Named("B1"),
            new Selection.Named("design 0"),
            new Selection.Named("design 1"),
            new Selection.Where(Map.of("fuel", "twigs")),
            new Selection.Where(Map.of("tester", "tester 0"))));
  }

  private static Unit unit(Dimension dimension) {
    return switch (dimension) {
      case TEMPERATURE, TEMPERATURE_DIFFERENCE, TEMPERATURE_DIFFERENCE_PER_LENGTH -> Unit.CELSIUS;
      case DURATION, DURATION_PER_LENGTH -> Unit.SECOND;
      case POWER -> Unit.WATT;
      case MASS -> Unit.GRAM;
      default -> Unit.FRACTION;
    };
  }

  /** Figures of one kind: by run, copied down the builds, or one for each build. */
  private double[] figures(int count) {
    double[] own = odd.values(Math.max(1, count));
    int copied = odd.below(3);
    double[] figures = new double[count];
    int next = 0;
    for (int build = 0; build < builds; build++) {
      for (int run = 0; run < runs.get(build); run++) {
        figures[next] = own[copied == 0 ? next : (copied == 1 ? run : build) % own.length];
        next++;
      }
    }
    return figures;
  }

  private void results() {
    int count = study.runs().size();
    double[] peaks = figures(count);
    double[] times = figures(count);
    double[] fuels = figures(count);
    double[] airs = odd.happens(0.5) ? figures(count) : new double[count];
    double missing = odd.oneOf(0, 0, 0.3, 1);
    double shared = odd.oneOf(0, 0, 2, 1e15);
    Optional<Outcome> all = odd.oneOf(OUTCOMES);
    boolean mixed = odd.happens(0.4);
    for (int i = 0; i < count; i++) {
      TestRun run = TestRun.of(study, study.runs().get(i).key().name()).shared(shared);
      Optional<Outcome> outcome = mixed ? odd.oneOf(OUTCOMES) : all;
      outcome.ifPresent(run::outcome);
      if (!odd.happens(missing)) {
        run.peak(peaks[i]).ambient(airs[i]).fuel(Math.abs(fuels[i]));
      }
      if (outcome.equals(OUTCOMES.get(0)) && !odd.happens(missing)) {
        run.boilTime(Math.abs(times[i]));
      }
      if (odd.happens(0.1)) {
        run.excluded("it rained");
      }
      results.add(run.result());
    }
  }
}
