package fairboil.reports.words;

import fairboil.analysis.heat.Fire;
import fairboil.analysis.run.BalanceResult;
import fairboil.analysis.run.BalanceResult.Fitted;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.dimension.Dimension;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What is said of charts of heat balances and of what makes results uncertain. */
public final class HeatCaptions {

  private static final double MINUTE = 60;

  private final Display display;

  /** Captions with numbers as {@code display} shows them. */
  public HeatCaptions(Display display) {
    this.display = display;
  }

  /** Of the heat balance of one run, which must have one with a part that was fitted. */
  public Caption balance(RunResult run) {
    BalanceResult balance = run.energy().balance().orElseThrow();
    String name = name(run);
    String found = fire(balance.fire()) + ", and the pot lost " + loss(balance);
    String fits = fits(balance);
    return new Caption(
        "Heat balance of run " + name + " over its readings",
        found,
        "Run "
            + name
            + ", "
            + counts(balance)
            + " (dots), with what the heat balance makes of them (lines). "
            + Plural.sentence(found)
            + ". Below, what is left over: "
            + fits
            + ". A bend in it would speak against the balance.",
        "Chart of water temperature of run "
            + name
            + " over time with its heat balance, and of reading less balance: "
            + counts(balance)
            + ". "
            + Plural.sentence(found)
            + ". Left over: "
            + fits
            + largest(balance)
            + ".");
  }

  private static String name(RunResult run) {
    return Names.inSentence(run.run().key().name());
  }

  private String fire(Fire fire) {
    double perMinute = 100 * MINUTE * fire.growth();
    String change =
        Math.abs(perMinute) < 0.05
            ? "and stayed even"
            : String.format(
                Locale.ROOT,
                "and %s by %.1f\u00a0%% of that a minute",
                perMinute > 0 ? "grew" : "fell",
                Math.abs(perMinute));
    double power = fire.power();
    return "the fire gave "
        + display.value(power, power / 100, Dimension.POWER)
        + " when the pot went on "
        + change;
  }

  private String loss(BalanceResult balance) {
    double loss = balance.loss().loss().perKelvin();
    return display.value(loss, loss / 30, Dimension.CONDUCTANCE);
  }

  private static String counts(BalanceResult balance) {
    List<String> counts = new ArrayList<>();
    balance.heating().ifPresent(part -> counts.add(count(part, "heating")));
    balance.cooling().ifPresent(part -> counts.add(count(part, "cooling")));
    return Plural.list(counts);
  }

  private static String count(Fitted part, String what) {
    return Plural.of(part.residuals().length, "mean") + " of readings while " + what;
  }

  private String fits(BalanceResult balance) {
    List<String> fits = new ArrayList<>();
    balance.heating().ifPresent(part -> fits.add(scatter(part.scatter()) + " while heating"));
    balance.cooling().ifPresent(part -> fits.add(scatter(part.scatter()) + " while cooling"));
    return "standard deviation " + Plural.list(fits);
  }

  private String scatter(double kelvins) {
    return display.value(kelvins, kelvins / 3, Dimension.TEMPERATURE_DIFFERENCE);
  }

  private String largest(BalanceResult balance) {
    return List.of(balance.heating(), balance.cooling()).stream()
        .flatMap(Optional::stream)
        .flatMapToDouble(part -> Arrays.stream(part.residuals()))
        .boxed()
        .max(Comparator.comparingDouble(Math::abs))
        .map(most -> ", at most " + scatter(Math.abs(most)))
        .orElse("");
  }

  /**
   * Of how far the water of many runs lies from its heat balance.
   *
   * @param runs the runs; at least one, each with a part that was fitted
   * @param minutes how long the time axis of each is
   * @param reach how far each reaches above and below 0, K
   */
  public Caption balances(List<RunResult> runs, double minutes, double reach) {
    String scale =
        Math.round(minutes)
            + " minutes along, \u00b1"
            + display.value(reach, reach / 3, Dimension.TEMPERATURE_DIFFERENCE)
            + " up and down";
    String heating = across(runs, BalanceResult::heating, "heating");
    String cooling = across(runs, BalanceResult::cooling, "cooling");
    String counts = Plural.of(runs.size(), "run");
    return new Caption(
        "Reading less heat balance, run by run",
        counts + ", all over the same axes: " + scale,
        Plural.sentence(counts)
            + ", all over the same axes: "
            + scale
            + "."
            + heating
            + cooling
            + " A line that bends the same way in every run would speak against the balance.",
        "Small charts of how far the water of "
            + counts
            + " lies from its heat balance."
            + heating
            + cooling);
  }

  private String across(
      List<RunResult> runs, Function<BalanceResult, Optional<Fitted>> part, String what) {
    List<RunResult> with = runs.stream().filter(run -> of(run, part).isPresent()).toList();
    if (with.isEmpty()) {
      return "";
    }
    RunResult worst =
        with.stream()
            .max(Comparator.comparingDouble(run -> of(run, part).orElseThrow().scatter()))
            .orElseThrow();
    double[] scatters =
        with.stream().mapToDouble(run -> of(run, part).orElseThrow().scatter()).sorted().toArray();
    return " While "
        + what
        + ": standard deviation "
        + scatter(scatters[scatters.length / 2])
        + " in the middle one of "
        + Plural.of(with.size(), "run")
        + ", largest "
        + scatter(scatters[scatters.length - 1])
        + " (run "
        + name(worst)
        + ").";
  }

  private static Optional<Fitted> of(
      RunResult run, Function<BalanceResult, Optional<Fitted>> part) {
    return run.energy().balance().flatMap(part);
  }

  /** Of what makes results of one run uncertain, which must have some that are. */
  public Caption budget(RunResult run) {
    List<HeatWords.Uncertain> figures = HeatWords.uncertain(run);
    String values =
        figures.stream()
            .map(
                each ->
                    each.name()
                        + " "
                        + each.value(display)
                        + ", u\u00a0=\u00a0"
                        + each.told(display))
            .collect(Collectors.joining("; "));
    return new Caption(
        "What makes results of run " + name(run) + " uncertain",
        values,
        "Run "
            + name(run)
            + ": the share of each source in the variance of a result; those of one result add up"
            + " to 100\u00a0%. u is the standard uncertainty. "
            + figures.stream().map(this::most).collect(Collectors.joining(" "))
            + " What is shared by all readings of a probe or pot does not average out over runs.",
        "Chart of what makes results of run "
            + name(run)
            + " uncertain. "
            + figures.stream().map(this::all).collect(Collectors.joining(" ")));
  }

  private String most(HeatWords.Uncertain figure) {
    BudgetShare first = figure.shares().get(0);
    return Plural.sentence(figure.name())
        + ": "
        + Plural.of(figure.shares().size(), "source")
        + ", most from "
        + first.source()
        + ", "
        + first.percent()
        + ".";
  }

  private String all(HeatWords.Uncertain figure) {
    return Plural.sentence(figure.name())
        + " "
        + figure.value(display)
        + ", u\u00a0=\u00a0"
        + figure.told(display)
        + ": "
        + figure.shares().stream()
            .map(share -> share.source() + " " + share.percent())
            .collect(Collectors.joining(", "))
        + ".";
  }
}
