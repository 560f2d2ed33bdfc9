package fairboil.analysis.run;

import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.trace.Trace;
import fairboil.analysis.water.Water;
import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.Optional;
import java.util.OptionalDouble;

/** The water of a run: how much was put on, how warm, and whether what was left can be true. */
final class WaterFinder {

  private static final double ROOT_12 = Math.sqrt(12);
  private static final double ROOM_CELSIUS = 20;

  /** Relative standard uncertainty of a volume from a jug: a judgement. */
  private static final double JUG = 0.01;

  /** Standard uncertainty of a thermometer in the water, K: a judgement. */
  private static final double THERMOMETER = 0.5;

  /** A share of the water that makes most of what is uncertain about boil times. */
  private static final double COARSE = 0.02;

  private static final double MOST_KILOGRAMS = 50;
  private static final double START_SECONDS = 15;
  private static final double SLOPE_SECONDS = 75;
  private static final double ABOVE_BOILING_KELVINS = 2;

  private final RunContext context;
  private final PotFinder pots;

  WaterFinder(RunContext context, PotFinder pots) {
    this.context = context;
    this.pots = pots;
  }

  /** Mass of the water put on, kg. */
  Figure mass() {
    Optional<Given<Quantity>> water = context.cell(RunsSheet.WATER);
    Optional<Given<Quantity>> together = context.cell(RunsSheet.POT_WITH_WATER);
    if (water.isPresent()) {
      return checked(massOf(water.get()), water.get());
    }
    if (together.isEmpty()) {
      return Figure.unknown(WaterSays.NO_WATER.with());
    }
    OptionalDouble pot = pots.mass();
    if (pot.isEmpty()) {
      return Figure.unknown(WaterSays.NO_POT.with());
    }
    double kilograms = together.get().value().value() - pot.getAsDouble();
    Figure mass =
        Budget.of(
                BudgetLine.independent(
                    Influence.WATER_MASS, Math.sqrt(2) * scale(together.get().value())))
            .around(kilograms, Dimension.MASS);
    return checked(mass, together.get());
  }

  private Figure massOf(Given<Quantity> cell) {
    Quantity given = cell.value();
    if (given.dimension() == Dimension.MASS) {
      return Budget.of(BudgetLine.independent(Influence.WATER_MASS, scale(given)))
          .around(given.value(), Dimension.MASS);
    }
    double celsius = context.number(RunsSheet.WATER_START).orElse(ROOM_CELSIUS);
    double density =
        Water.density(Math.max(Water.MIN_CELSIUS, Math.min(Water.MAX_CELSIUS, celsius)));
    double step = Math.max(JUG * given.value(), given.resolution() / ROOT_12);
    return Budget.of(BudgetLine.independent(Influence.WATER_MASS, Math.abs(density * step)))
        .around(given.value() * density, Dimension.MASS);
  }

  private double scale(Quantity mass) {
    return Math.hypot(context.held(Settings.SCALE_UNCERTAINTY), mass.resolution() / ROOT_12);
  }

  private Figure checked(Figure mass, Given<Quantity> cell) {
    double kilograms = mass.orNaN();
    if (kilograms > 0 && kilograms <= MOST_KILOGRAMS) {
      checkLeft(kilograms);
      tellIfCoarse(mass, cell);
      return mass;
    }
    context
        .findings()
        .error(
            cell.place(),
            WaterSays.WOULD_MAKE.with(Argument.cell(cell.written()), grams(kilograms)),
            WaterSays.CHECK.with());
    return Figure.unknown(WaterSays.MASS_GIVEN.with());
  }

  private static Argument grams(double kilograms) {
    return Argument.value(kilograms, 0.002, Dimension.MASS);
  }

  /** Digits as written say how finely it was measured: 1 kg to half a kilogram either way. */
  private void tellIfCoarse(Figure mass, Given<Quantity> cell) {
    double share = mass.budget().combined() / mass.orNaN();
    double ofDigits = cell.value().resolution() / ROOT_12 / cell.value().value();
    if (ofDigits > COARSE && ofDigits > share / 2) {
      context
          .findings()
          .note(
              cell.place(),
              WaterSays.COARSE.with(
                  Argument.cell(cell.written()), Argument.share(Math.rint(100 * share) / 100)),
              WaterSays.TYPE_FINER.with());
    }
  }

  /** Mass of the water left, as weighed. */
  Figure left(Given<Quantity> cell) {
    Figure left = massOf(cell);
    return left.orNaN() > 0 ? left : Figure.unknown(WaterSays.NONE_LEFT.with());
  }

  private void checkLeft(double putOn) {
    Optional<Given<Quantity>> left = context.cell(RunsSheet.WATER_LEFT);
    if (left.isPresent()) {
      complainIfMore(massOf(left.get()).orNaN(), putOn, left.get());
    }
    Optional<Given<Quantity>> before = context.cell(RunsSheet.POT_WITH_WATER);
    Optional<Given<Quantity>> after = context.cell(RunsSheet.POT_WITH_WATER_AFTER);
    if (before.isPresent() && after.isPresent()) {
      complainIfMore(after.get().value().value(), before.get().value().value(), after.get());
    } else if (after.isPresent() && pots.mass().isPresent()) {
      double water = after.get().value().value() - pots.mass().getAsDouble();
      complainIfMore(water, putOn, after.get());
    }
  }

  /** Mass of the water left, kg. */
  Figure left(Figure putOn) {
    Optional<Given<Quantity>> left = context.cell(RunsSheet.WATER_LEFT);
    Optional<Given<Quantity>> after = context.cell(RunsSheet.POT_WITH_WATER_AFTER);
    OptionalDouble pot = pots.mass();
    if (left.isPresent()) {
      return possible(massOf(left.get()), putOn);
    }
    if (after.isEmpty() || pot.isEmpty()) {
      return Figure.unknown(WaterSays.LEFT_NOT_WEIGHED.with());
    }
    Quantity together = after.get().value();
    Figure mass =
        Budget.of(BudgetLine.independent(Influence.WATER_MASS, Math.sqrt(2) * scale(together)))
            .around(together.value() - pot.getAsDouble(), Dimension.MASS);
    return possible(mass, putOn);
  }

  private Figure possible(Figure left, Figure putOn) {
    double slack = 3 * context.held(Settings.SCALE_UNCERTAINTY);
    boolean more = left.orNaN() > putOn.orNaN() + slack;
    return more || left.orNaN() < 0 ? Figure.unknown(WaterSays.LEFT_GIVEN.with()) : left;
  }

  private void complainIfMore(double after, double before, Given<Quantity> cell) {
    double slack = 3 * context.held(Settings.SCALE_UNCERTAINTY);
    if (after < 0) {
      context
          .findings()
          .error(
              cell.place(),
              RunSays.BELOW_ZERO.with(Argument.cell(cell.written())),
              WaterSays.CHECK_NUMBER.with());
    } else if (after > before + slack) {
      context
          .findings()
          .error(
              cell.place(),
              WaterSays.MORE_LEFT.with(grams(after), grams(before)),
              WaterSays.CHECK_BOTH.with());
    }
  }

  /** Temperature of the water at the start, °C: as told, else as its channel shows it. */
  Figure start(PreparedLog log, Timeline timeline, Figure boilingPoint) {
    Optional<Given<Quantity>> cell = context.cell(RunsSheet.WATER_START);
    return cell.isPresent() ? told(cell.get(), boilingPoint) : shown(log, timeline);
  }

  private Figure told(Given<Quantity> cell, Figure boilingPoint) {
    double celsius = cell.value().value();
    double highest =
        boilingPoint.isKnown() ? boilingPoint.orNaN() + ABOVE_BOILING_KELVINS : Water.MAX_CELSIUS;
    if (celsius < -1 || celsius > Math.min(highest, Water.MAX_CELSIUS)) {
      complainOfStart(cell.place(), cell.written(), celsius);
      return Figure.unknown(WaterSays.START_GIVEN.with());
    }
    double u = Math.hypot(THERMOMETER, cell.value().resolution() / ROOT_12);
    return Budget.of(BudgetLine.independent(Influence.WATER_START, u))
        .around(celsius, Dimension.TEMPERATURE);
  }

  private void complainOfStart(Place place, String written, double celsius) {
    Template problem = celsius < 0 ? WaterSays.ICE : WaterSays.BOILED;
    context
        .findings()
        .error(place, problem.with(Argument.cell(written)), RunSays.CHECK_NUMBER.with());
  }

  private static Figure shown(PreparedLog log, Timeline timeline) {
    Optional<PreparedChannel> water = log.channel(Role.WATER);
    OptionalDouble from = timeline.boilTimeStart();
    if (water.isEmpty() || from.isEmpty()) {
      return Figure.unknown(WaterSays.NO_START.with());
    }
    Trace first =
        water.get().trace().between(from.getAsDouble(), from.getAsDouble() + START_SECONDS);
    double celsius = first.median();
    if (!(celsius >= Water.MIN_CELSIUS && celsius <= Water.MAX_CELSIUS)) {
      return Figure.unknown(WaterSays.NO_START_IN_LOG.with());
    }
    double warmed = warmed(water.get(), from.getAsDouble());
    Probe probe = water.get().probe();
    return Budget.of(
            BudgetLine.shared(Influence.WATER_START, probe.tolerance(celsius), probe.key()),
            BudgetLine.independent(Influence.WATER_START, Math.abs(warmed) / ROOT_12))
        .around(celsius - warmed, Dimension.TEMPERATURE);
  }

  /**
   * By how much the water warmed until the middle of its first readings, as its probe shows it: on
   * a slope r that begins with the heating, a probe of first order shows r (t − τ (1 − exp(−t/τ))).
   */
  private static double warmed(PreparedChannel water, double from) {
    Trace next = water.trace().between(from + START_SECONDS, from + SLOPE_SECONDS);
    double middle = START_SECONDS / 2;
    double lag = water.lag().map(Lag::seconds).orElse(0.0);
    double behind = lag > 0 ? lag * (1 - Math.exp(-middle / lag)) : 0;
    return next.slope().orElse(0) * (middle - behind);
  }
}
