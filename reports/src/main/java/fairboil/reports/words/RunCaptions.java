package fairboil.reports.words;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.group.BoilCount;
import fairboil.analysis.group.Restating;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.ChannelLedger;
import fairboil.analysis.run.RunResult;
import fairboil.analysis.run.TimedEvent;
import fairboil.ingest.choice.Outcome;
import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What is said of charts of runs: their traces, and what normalising did to them. */
public final class RunCaptions {

  private final Display display;

  private RunCaptions(Display display) {
    this.display = display;
  }

  /** Captions with numbers as {@code display} shows them. */
  public static RunCaptions in(Display display) {
    return new RunCaptions(display);
  }

  /** Of the trace of one run. */
  public Caption run(RunResult run) {
    String of =
        run.build().design().map(design -> ", design " + Names.inSentence(design)).orElse("");
    String name =
        "Run "
            + Names.inSentence(run.run().key().name())
            + ", build "
            + Names.inSentence(run.build().key().name())
            + of;
    String facts = String.join("; ", facts(run));
    return new Caption(
        name,
        facts,
        drawn(run),
        "Flame and water temperature over time. " + name + ": " + facts + "." + events(run));
  }

  /** Of how many readings the curves are drawn; what they show stands in the chart. */
  private static String drawn(RunResult run) {
    List<String> counts =
        run.samples().stream()
            .filter(ledger -> ledger.samples().used() > 0)
            .map(
                ledger ->
                    Display.whole(ledger.samples().used()) + " readings of " + channel(run, ledger))
            .toList();
    return (counts.isEmpty() ? "" : Plural.sentence(Plural.list(counts)) + ". ")
        + "Each curve goes through the lowest and highest reading of every stretch; upright lines"
        + " are events. Diamonds: where the peak was held, and where the rise of the water meets"
        + " its plateau.";
  }

  /** What a channel holds; its name where others hold the same. */
  private static String channel(RunResult run, ChannelLedger ledger) {
    long alike = run.samples().stream().filter(other -> other.role() == ledger.role()).count();
    String role = ledger.role() == Role.AMBIENT ? "air" : ledger.role().label();
    return alike == 1 ? role : Names.inSentence(ledger.channel());
  }

  private List<String> facts(RunResult run) {
    List<String> facts = new ArrayList<>();
    run.inclusion()
        .excluded()
        .ifPresent(
            reason ->
                facts.add("left out of the results: " + Names.inSentence(display.say(reason))));
    run.inclusion()
        .peakExcluded()
        .ifPresent(reason -> facts.add("peak left out: " + Names.inSentence(display.say(reason))));
    run.inclusion()
        .boilExcluded()
        .ifPresent(reason -> facts.add("boil left out: " + Names.inSentence(display.say(reason))));
    add(facts, "peak", run.flame().peak());
    if (run.boil().boilTime().isKnown()) {
      add(facts, "boil time", run.boil().boilTime());
    } else {
      facts.add(outcome(run));
      add(facts, "hottest water", run.boil().hottestWater());
    }
    add(facts, "air", run.conditions().ambient());
    add(facts, "water", run.conditions().water());
    return facts;
  }

  private static String outcome(RunResult run) {
    return run.outcome().map(Outcome::label).orElse("boil not seen");
  }

  private void add(List<String> facts, String name, Figure figure) {
    figure
        .ifKnown()
        .ifPresent(
            known ->
                facts.add(
                    name
                        + " "
                        + display.value(
                            known.value(), known.standardUncertainty(), known.dimension())));
  }

  private String events(RunResult run) {
    List<TimedEvent> events = run.timeline().events();
    return events.isEmpty()
        ? ""
        : " Events: " + events.stream().map(this::event).collect(Collectors.joining(", ")) + ".";
  }

  private String event(TimedEvent event) {
    return Names.inSentence(event.text())
        + " "
        + display.number(event.seconds(), 1, Dimension.DURATION);
  }

  /** Of boil times as measured and normalised, against air and water. */
  public Caption normalising(Restating restating) {
    String scatter =
        "standard deviation over all burns "
            + time(restating.scatter(Measure.BOIL_TIME))
            + " as measured and "
            + time(restating.scatter(Measure.NORMALISED_BOIL_TIME))
            + " normalised";
    String runs = Plural.of(restating.runs().size(), "burn");
    String failed = failed(restating.failed());
    String water =
        correlations(
            "mass of water",
            restating.withWater(Measure.BOIL_TIME),
            restating.withWater(Measure.NORMALISED_BOIL_TIME));
    String air =
        correlations(
            "air temperature",
            restating.withAmbient(Measure.BOIL_TIME),
            restating.withAmbient(Measure.NORMALISED_BOIL_TIME));
    return new Caption(
        "What normalising did to boil times",
        runs + "; " + scatter,
        Plural.sentence(runs)
            + ", each once above as measured and once below normalised, on one scale of time: "
            + scatter
            + "."
            + failed
            + water
            + air
            + " What is left lies between stoves, fires and days.",
        "Charts of boil time against air temperature and mass of water, as measured and"
            + " normalised. "
            + Plural.sentence(runs)
            + ": "
            + scatter
            + "."
            + failed
            + water
            + air);
  }

  private static String failed(int runs) {
    return runs == 0
        ? ""
        : " "
            + Plural.sentence(Plural.of(runs, "more burn"))
            + (runs == 1 ? " has" : " have")
            + " no boil time because the water did not boil.";
  }

  private String time(double seconds) {
    return display.value(seconds, seconds / 10, Dimension.DURATION);
  }

  private static String correlations(
      String condition, OptionalDouble measured, OptionalDouble normalised) {
    return measured.isEmpty() || normalised.isEmpty()
        ? ""
        : " Correlation with "
            + condition
            + ": "
            + CheckWords.twoDecimals(measured.getAsDouble())
            + " as measured, "
            + CheckWords.twoDecimals(normalised.getAsDouble())
            + " normalised.";
  }

  /**
   * Of the traces of many runs, small and side by side.
   *
   * @param some the runs of one sheet; at least one
   * @param minutes how far the time axis of each reaches
   * @param axis from and to which shown temperature each reaches
   */
  public Caption traces(List<RunResult> some, double minutes, String axis) {
    String first = Names.inSentence(some.get(0).run().key().name());
    String last = Names.inSentence(some.get(some.size() - 1).run().key().name());
    String scale = Math.round(minutes) + " minutes along, " + axis + " up";
    String found = BoilWords.clause(BoilCount.of(some));
    return new Caption(
        some.size() == 1 ? "Trace of " + first : "Traces from " + first + " to " + last,
        Plural.of(some.size(), "run") + ", all over the same axes: " + scale,
        Plural.sentence(Plural.of(some.size(), "run"))
            + ", from "
            + first
            + " to "
            + last
            + ", all over the same axes: "
            + scale
            + ". Beside each name is its boil time; "
            + found
            + ". Each run has a page of its own, to which the table above leads.",
        "Small traces of flame and water of "
            + Plural.of(some.size(), "run")
            + ", from "
            + first
            + " to "
            + last
            + ": "
            + found
            + ".");
  }
}
