package fairboil.reports.words;

import fairboil.analysis.Results;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Interval;
import fairboil.analysis.heat.ScalingBias;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.normalise.LossGroup;
import fairboil.analysis.normalise.Normalisation;
import fairboil.analysis.run.LagUndone;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.choice.Lid;
import fairboil.ingest.choice.NormaliseBy;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.sheet.Key;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What is said of how boil times were restated. */
public final class HeatWords {

  private static final double LEAST_SEEN = 0.005;

  private HeatWords() {}

  /** How the boil times of the study were restated, why so, and how far it can be relied on. */
  public static List<String> of(Normalisation normalisation, ScalingBias bias, Display display) {
    List<String> sentences = new ArrayList<>();
    sentences.add(method(normalisation, display));
    if (bias.cases() > 0) {
      sentences.add(bias(bias, display));
    }
    normalisation.check().ifPresent(check -> sentences.add(check(check, display)));
    return List.copyOf(sentences);
  }

  private static String method(Normalisation normalisation, Display display) {
    if (normalisation.method() == NormaliseBy.HEAT_BALANCE) {
      return "Boil times are restated by heat balance in all runs: for water, boiling point and air"
          + " temperature.";
    }
    String lacking =
        normalisation.lacking().isEmpty()
            ? ""
            : " The heat balance lacks "
                + Plural.of(normalisation.lacking().size(), "run")
                + ": of "
                + Names.inSentence(normalisation.lacking().get(0).run().name())
                + ", "
                + display.say(normalisation.lacking().get(0).reason())
                + ".";
    return "Boil times are restated by energy scaling in all runs: for water and boiling point, not"
        + " for air temperature."
        + lacking;
  }

  private static String bias(ScalingBias bias, Display display) {
    return "What energy scaling leaves out: over "
        + bias.cases()
        + " made-up tests of "
        + display.value(ScalingBias.LEAST_WATER, 0, Dimension.MASS)
        + " to "
        + display.value(ScalingBias.MOST_WATER, 0, Dimension.MASS)
        + " of water, in air of "
        + celsius(-20, display)
        + " to "
        + celsius(35, display)
        + ", from sea level up to where water boils at "
        + celsius(90, display)
        + ", on steady, dying and growing fires of at least 1.5 times the loss, it misses the heat"
        + " balance by "
        + percent(bias.lowest())
        + " to "
        + percent(bias.highest())
        + "; half of them lie between "
        + percent(bias.middleLow())
        + " and "
        + percent(bias.middleHigh())
        + ".";
  }

  private static String celsius(double value, Display display) {
    return display.value(value, 2, Dimension.TEMPERATURE);
  }

  private static String percent(double share) {
    String sign = share < 0 ? "−" : "+";
    return String.format(Locale.ROOT, "%s%.1f\u00a0%%", sign, Math.abs(100 * share));
  }

  private static String check(Normalisation.Check check, Display display) {
    return "As a check, every input of run "
        + Names.inSentence(check.run().name())
        + " was drawn "
        + check.draws()
        + " times from its distribution and the balance worked out each time (JCGM 101): the"
        + " interval of its normalised boil time is then "
        + range(check.drawn(), display)
        + ", and "
        + range(check.firstOrder(), display)
        + " by the law of propagation.";
  }

  private static String range(Interval interval, Display display) {
    return display.range(interval, Dimension.DURATION);
  }

  /** Which pots a loss is of. */
  public static String of(LossGroup group) {
    String pot = group.pot().isBlank() ? "a pot not told" : group.pot();
    String lid = group.lid().map(Lid::label).map(it -> ", lid " + it).orElse(", lid not told");
    String wind = group.beaufort().map(it -> ", wind B" + it).orElse(", wind not told");
    return pot + lid + wind;
  }

  /** The steps from readings to a normalised boil time. */
  public static Map<String, Figure> chain(RunResult run) {
    Map<String, Figure> steps = new LinkedHashMap<>();
    run.flame().lag().ifPresent(lag -> putLag(steps, lag));
    steps.put("held peak of the flame, taken off for noise", run.flame().peakBias());
    steps.put("held peak of the flame", run.flame().peak());
    steps.put("air temperature", run.conditions().ambient());
    steps.put("boiling point", run.conditions().boilingPoint());
    steps.put("plateau of the water", run.boil().plateau());
    steps.put("plateau less boiling point", run.boil().plateauOffset());
    steps.put("boil time", run.boil().boilTime());
    steps.put("water", run.conditions().water());
    steps.put("water at the start", run.conditions().waterStart());
    steps.put("net power", run.energy().netPower());
    steps.put("heat lost by the pot, from its cooling", run.energy().loss());
    steps.put("boil time restated by energy scaling", run.energy().energyScaledBoilTime());
    steps.put("boil time restated by heat balance", run.energy().heatBalanceBoilTime());
    steps.put("normalised boil time", run.energy().normalisedBoilTime());
    return steps;
  }

  private static void putLag(Map<String, Figure> steps, LagUndone lag) {
    steps.put("time constant of the flame probe", lag.timeConstant());
    steps.put("held peak of the flame as read", lag.asRead());
    steps.put("held peak of the flame, added for the lag of its probe", lag.added());
  }

  /**
   * The run that is shown from its readings to its results: the one that the check was made on,
   * else the first with a normalised boil time, else the first with a peak.
   */
  public static Optional<RunResult> example(Results results) {
    Optional<Key> checked = results.normalisation().check().map(Normalisation.Check::run);
    List<Measure> shown = List.of(Measure.NORMALISED_BOIL_TIME, Measure.PEAK);
    return shown.stream()
        .flatMap(measure -> results.runs().stream().filter(run -> measure.of(run).isKnown()))
        .sorted(Comparator.comparing(run -> !checked.equals(Optional.of(run.run().key()))))
        .findFirst();
  }

  /**
   * A figure and what makes it uncertain.
   *
   * @param name what it is
   * @param figure the figure, known
   * @param shares its sources, the largest first; at least one
   */
  public record Uncertain(String name, Figure figure, List<BudgetShare> shares) {

    /** Copies the list. */
    public Uncertain {
      shares = List.copyOf(shares);
    }

    /** The shares that can be seen on a chart: of half a percent and more. */
    public List<BudgetShare> seen() {
      return shares.stream().filter(share -> share.share() >= LEAST_SEEN).toList();
    }

    /** Its standard uncertainty with its unit. */
    public String told(Display display) {
      return told(figure.budget().combined(), display);
    }

    /** A part of it with its unit, to two digits. */
    public String told(double contribution, Display display) {
      return display.value(contribution, contribution / 3, dimension());
    }

    /** The figure itself with its unit. */
    public String value(Display display) {
      return figure
          .ifKnown()
          .map(
              known -> display.value(known.value(), known.standardUncertainty(), known.dimension()))
          .orElse("");
    }

    /** The dimension of its uncertainty. */
    public Dimension dimension() {
      return figure.ifKnown().orElseThrow().dimension().ofDifference();
    }
  }

  /** Peak and normalised boil time of a run, those of which the uncertainty is known. */
  public static List<Uncertain> uncertain(RunResult run) {
    return Stream.of(Measure.PEAK, Measure.NORMALISED_BOIL_TIME)
        .map(
            measure ->
                new Uncertain(measure.label(), measure.of(run), BudgetShare.of(measure.of(run))))
        .filter(each -> each.figure().isKnown() && !each.shares().isEmpty())
        .toList();
  }

  /** A share in percent. */
  public static String share(double percent) {
    return percent < 0.05
        ? "under 0.1"
        : String.format(Locale.ROOT, percent < 1 ? "%.1f" : "%.0f", percent);
  }

  /** Steam's loss for each kilopascal. */
  public static String perKilopascal(double watts) {
    return watts == 0 ? "none" : String.format(Locale.ROOT, "%.2f", watts);
  }
}
