package fairboil.analysis.measure;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.run.Inclusion;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Template;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * The one list of measures that tables, claims, comparisons, plans and charts share.
 *
 * <p>To add a measure, add a constant here; everything that loops over measures then has it. Each
 * declares what a run has of it whose water did not boil, so that no mean leaves such runs out
 * unsaid.
 */
public enum Measure {
  /** From the later of lit and pot on to the boil. */
  BOIL_TIME(
      "boil time",
      Dimension.DURATION,
      Inclusion::includedForBoil,
      WithoutBoil.WOULD_TAKE_LONGER,
      run -> run.boil().boilTime()),
  /** Boil time restated for reference conditions. */
  NORMALISED_BOIL_TIME(
      "normalised boil time",
      Dimension.DURATION,
      Inclusion::includedForBoil,
      WithoutBoil.WOULD_TAKE_LONGER,
      run -> run.energy().normalisedBoilTime()),
  /** From lighting to the boil. */
  LIT_TO_BOIL(
      "lit to boil",
      Dimension.DURATION,
      Inclusion::includedForBoil,
      WithoutBoil.WOULD_TAKE_LONGER,
      run -> run.boil().litToBoil()),
  /** From lighting to flame out. */
  BURN_TIME(
      "burn time",
      Dimension.DURATION,
      Inclusion::included,
      WithoutBoil.HAS_A_VALUE,
      run -> run.boil().burnTime()),
  /** Highest held flame temperature. */
  PEAK(
      "peak",
      Dimension.TEMPERATURE,
      Inclusion::includedForPeak,
      WithoutBoil.HAS_A_VALUE,
      run -> run.flame().peak()),
  /** Peak restated for the reference ambient. */
  NORMALISED_PEAK(
      "normalised peak",
      Dimension.TEMPERATURE,
      Inclusion::includedForPeak,
      WithoutBoil.HAS_A_VALUE,
      run -> run.flame().normalisedPeak()),
  /** Median flame temperature. */
  STEADY_FLAME(
      "steady flame",
      Dimension.TEMPERATURE,
      Inclusion::includedForPeak,
      WithoutBoil.HAS_A_VALUE,
      run -> run.flame().steadyFlame()),
  /** Heat into water and pot per second. */
  NET_POWER(
      "net power",
      Dimension.POWER,
      Inclusion::includedForBoil,
      WithoutBoil.HAS_NONE,
      run -> run.energy().netPower()),
  /** Heat of the fuel per second. */
  FIREPOWER(
      "firepower",
      Dimension.POWER,
      Inclusion::included,
      WithoutBoil.HAS_NONE_IF_WEIGHED_AT_THE_BOIL,
      run -> run.fuel().firepower()),
  /** Share of the fuel's heat that went into water and steam. */
  EFFICIENCY(
      "efficiency",
      Dimension.RATIO,
      Inclusion::included,
      WithoutBoil.HAS_NONE_IF_WEIGHED_AT_THE_BOIL,
      run -> run.fuel().efficiency()),
  /** Dry fuel for one boil of the reference water. */
  FUEL_PER_BOIL(
      "fuel per boil",
      Dimension.MASS,
      Inclusion::includedForBoil,
      WithoutBoil.HAS_NONE,
      run -> run.fuel().fuelPerBoil()),
  /** Share of runs in which the water boiled. */
  SHARE_THAT_BOILED("share that boiled", Level.BUILD, Dimension.RATIO, WithoutBoil.HAS_A_VALUE),
  /** Change of the normalised peak with RMS hole error. */
  HOLE_EFFECT_ON_PEAK(
      "hole effect on peak",
      Level.STUDY,
      Dimension.TEMPERATURE_DIFFERENCE_PER_LENGTH,
      WithoutBoil.HAS_A_VALUE),
  /** Change of the normalised boil time with RMS hole error. */
  HOLE_EFFECT_ON_BOIL_TIME(
      "hole effect on boil time", Level.STUDY, Dimension.DURATION_PER_LENGTH, WithoutBoil.HAS_NONE);

  /** What has a value of a measure. */
  public enum Level {
    /** Each run has one. */
    RUN,
    /** A group of runs has one. */
    BUILD,
    /** The study has one. */
    STUDY
  }

  /** Apart, as constants of an enum are made before its own fields. */
  private static final class Says {
    static final Template OF_NO_RUN = Template.of("it is not a measure of a single run");
  }

  private final String label;
  private final Level level;
  private final Dimension dimension;
  private final Predicate<Inclusion> counts;
  private final WithoutBoil withoutBoil;
  private final Function<RunResult, Figure> figure;

  Measure(
      String label,
      Dimension dimension,
      Predicate<Inclusion> counts,
      WithoutBoil withoutBoil,
      Function<RunResult, Figure> figure) {
    this.label = label;
    this.level = Level.RUN;
    this.dimension = dimension;
    this.counts = counts;
    this.withoutBoil = withoutBoil;
    this.figure = figure;
  }

  Measure(String label, Level level, Dimension dimension, WithoutBoil withoutBoil) {
    this.label = label;
    this.level = level;
    this.dimension = dimension;
    this.counts = Inclusion::included;
    this.withoutBoil = withoutBoil;
    this.figure = run -> Figure.unknown(Says.OF_NO_RUN.with());
  }

  /** The measure's name in sheets, tables and on the page. */
  public String label() {
    return label;
  }

  /** What has a value of it. */
  public Level level() {
    return level;
  }

  /** What its values are values of. */
  public Dimension dimension() {
    return dimension;
  }

  /** What a run has of it whose water did not boil. */
  public WithoutBoil withoutBoil() {
    return withoutBoil;
  }

  /** Whether a run that counts for it lacks it because its water did not boil. */
  public boolean isHidden(RunResult run) {
    return counts.test(run.inclusion()) && withoutBoil.hides(run);
  }

  /** The figure of a run, whether the run counts or not. */
  public Figure of(RunResult run) {
    return figure.apply(run);
  }

  /** The figure of a run if the run counts for this measure and the figure is known. */
  public Optional<Figure.Known> counted(RunResult run) {
    return counts.test(run.inclusion()) && of(run) instanceof Figure.Known known
        ? Optional.of(known)
        : Optional.empty();
  }

  /** The measure of that name, in any case, if there is one. */
  public static Optional<Measure> named(String name) {
    for (Measure measure : values()) {
      if (measure.label.equalsIgnoreCase(name.strip())) {
        return Optional.of(measure);
      }
    }
    return Optional.empty();
  }
}
