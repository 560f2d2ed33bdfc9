package fairboil.reports.chart;

import fairboil.analysis.Results;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.sheet.Key;
import fairboil.reports.chart.ChartPlan.Drawn;
import fairboil.reports.words.Caption;
import fairboil.reports.words.Display;
import fairboil.reports.words.HeatCaptions;
import fairboil.reports.words.HeatWords;
import java.util.ArrayList;
import java.util.List;

/** Pictures of how heat was reckoned: one run in full, all runs small. */
final class HeatPlans {

  private final Results results;
  private final Display display;
  private final HeatCaptions captions;

  HeatPlans(Results results, Display display) {
    this.results = results;
    this.display = display;
    this.captions = new HeatCaptions(display);
  }

  List<ChartPlan> all() {
    List<ChartPlan> plans = new ArrayList<>();
    HeatWords.example(results)
        .filter(HeatBalanceChart::canDraw)
        .map(this::balance)
        .ifPresent(plans::add);
    List<RunResult> runs = results.runs().stream().filter(HeatBalanceChart::canDraw).toList();
    if (runs.size() > 1 && results.runs().size() <= ChartBook.MOST_RUNS_IN_PAGE) {
      plans.add(balances(runs));
    }
    HeatWords.example(results).filter(BudgetChart::canDraw).map(this::budget).ifPresent(plans::add);
    return plans;
  }

  private ChartPlan balance(RunResult run) {
    Key key = run.run().key();
    return new ChartPlan(
        ChartKey.ofRun(Picture.Kind.HEAT_BALANCE, key),
        "heat balance " + key.name(),
        format -> {
          Caption caption = captions.balance(run);
          return new Drawn(new HeatBalanceChart(run, display, format).sheet(caption), caption);
        });
  }

  private ChartPlan balances(List<RunResult> runs) {
    return new ChartPlan(
        ChartKey.of(Picture.Kind.BALANCES),
        "heat balances",
        format -> {
          BalanceSheet sheet = new BalanceSheet(runs, display);
          Caption caption = captions.balances(runs, sheet.minutes(), sheet.reach());
          return new Drawn(sheet.sheet(caption), caption);
        });
  }

  private ChartPlan budget(RunResult run) {
    Key key = run.run().key();
    return new ChartPlan(
        ChartKey.ofRun(Picture.Kind.BUDGET, key),
        "uncertainty " + key.name(),
        format -> {
          Caption caption = captions.budget(run);
          return new Drawn(new BudgetChart(run, display, format).sheet(caption), caption);
        });
  }
}
