package fairboil.analysis.run;

import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.fuel.WoodFuel;
import fairboil.ingest.choice.Feed;
import fairboil.ingest.choice.WeighedAt;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The fuel of a run: what was weighed of it, its moisture and its heating value. */
final class FuelFinder {

  private static final double ROOT_12 = Math.sqrt(12);

  /** Standard uncertainty of a moisture told, as a share: a judgement of meters and of bags. */
  private static final double MOISTURE = 0.01;

  /** Fuel wetter than this, wet basis, does not burn: a judgement. */
  private static final double MOST_MOISTURE = 0.7;

  /** Two moistures of one fuel may differ by so much, as a share. */
  private static final double MOISTURES_AGREE = 0.01;

  /** Relative standard uncertainty of a heating value told: a judgement. */
  private static final double TOLD_HEATING_VALUE = 0.01;

  /** About the heating value of dry wood, J/kg: common practice, no source. */
  private static final double DRY_WOOD = 19e6;

  private static final double LEAST_HEATING_VALUE = 5e6;
  private static final double MOST_HEATING_VALUE = 50e6;

  private final RunContext context;
  private final double slack;

  FuelFinder(RunContext context) {
    this.context = context;
    this.slack = 3 * context.held(Settings.SCALE_UNCERTAINTY);
  }

  /** Moist fuel burnt, kg: put in and added, less what was left unburnt. */
  Figure moist() {
    Figure loaded = weighed(RunsSheet.FUEL_LOADED, FuelSays.NO_LOADED);
    Figure added = weighed(RunsSheet.REFUELLED, FuelSays.NO_ADDED);
    Figure left = weighed(RunsSheet.FUEL_LEFT, FuelSays.NO_LEFT);
    if (!loaded.isKnown()) {
      return loaded;
    }
    boolean fed = context.value(RunsSheet.FEED).filter(Feed.FED::equals).isPresent();
    if (!added.isKnown() && (fed || isTold(RunsSheet.REFUELLED))) {
      return added;
    }
    boolean burntOut = context.value(RunsSheet.WEIGHED_AT).filter(this::isBurntOut).isPresent();
    if (!left.isKnown() && (!burntOut || isTold(RunsSheet.FUEL_LEFT))) {
      return left;
    }
    return burnt(loaded, orNone(added), orNone(left));
  }

  private boolean isBurntOut(WeighedAt when) {
    return when == WeighedAt.BURNT_OUT;
  }

  private boolean isTold(Column<?> column) {
    return context.cell(column).isPresent();
  }

  private static Figure orNone(Figure mass) {
    return mass.isKnown() ? mass : Budget.NONE.around(0, Dimension.MASS);
  }

  private Figure burnt(Figure loaded, Figure added, Figure left) {
    double putIn = loaded.orNaN() + added.orNaN();
    double burnt = putIn - left.orNaN();
    Figure rest = charLeft();
    double remained = left.orNaN() + orNone(rest).orNaN();
    if (remained > putIn + slack) {
      boolean byFuel = left.orNaN() > putIn + slack;
      return complain(
          byFuel ? RunsSheet.FUEL_LEFT : RunsSheet.CHAR_LEFT,
          FuelSays.MORE_LEFT.with(grams(remained), grams(putIn)),
          FuelSays.CHECK_WEIGHINGS,
          FuelSays.MORE_THAN_PUT_IN);
    }
    return burnt <= 0
        ? Figure.unknown(FuelSays.NONE_BURNT.with())
        : loaded.budget().and(added.budget()).and(left.budget()).around(burnt, Dimension.MASS);
  }

  private static Argument grams(double kilograms) {
    return Argument.value(kilograms, 0.002, Dimension.MASS);
  }

  /** Char left, kg. */
  Figure charLeft() {
    return weighed(RunsSheet.CHAR_LEFT, FuelSays.NO_CHAR);
  }

  private Figure weighed(Column<Quantity> column, Template missing) {
    Optional<Given<Quantity>> cell = context.cell(column);
    if (cell.isEmpty()) {
      return Figure.unknown(missing.with());
    }
    Quantity mass = cell.get().value();
    if (mass.value() < 0) {
      return complain(
          column,
          RunSays.BELOW_ZERO.with(Argument.cell(cell.get().written())),
          FuelSays.CHECK,
          FuelSays.MASS_GIVEN);
    }
    double u = Math.hypot(context.held(Settings.SCALE_UNCERTAINTY), mass.resolution() / ROOT_12);
    return Budget.of(BudgetLine.independent(Influence.SCALE, u))
        .around(mass.value(), Dimension.MASS);
  }

  private Figure complain(Column<?> column, Message problem, Template remedy, Template reason) {
    context.findings().error(context.place(column), problem, remedy.with());
    return Figure.unknown(reason.with());
  }

  /** Water in the fuel as a share of moist fuel: told so, or as a share of dry fuel. */
  Figure moisture() {
    Figure wet = moisture(RunsSheet.MOISTURE_WET_BASIS);
    Figure dry = moisture(RunsSheet.MOISTURE_DRY_BASIS);
    if (wet.isKnown() && dry.isKnown() && Math.abs(wet.orNaN() - dry.orNaN()) > MOISTURES_AGREE) {
      return complain(
          RunsSheet.MOISTURE_DRY_BASIS,
          FuelSays.TWO_MOISTURES.with(Argument.share(dry.orNaN()), Argument.share(wet.orNaN())),
          FuelSays.KEEP_ONE,
          FuelSays.MOISTURES_GIVEN);
    }
    boolean dryCounts = isTold(RunsSheet.MOISTURE_DRY_BASIS) && (!dry.isKnown() || !isWetTold());
    return dryCounts ? dry : wet;
  }

  private boolean isWetTold() {
    return isTold(RunsSheet.MOISTURE_WET_BASIS);
  }

  /** The moisture that a column tells, on wet basis: {@code w = d / (1 + d)}. */
  private Figure moisture(Column<Quantity> column) {
    Optional<Given<Quantity>> cell = context.cell(column);
    if (cell.isEmpty()) {
      return Figure.unknown(FuelSays.NO_MOISTURE.with());
    }
    double told = cell.get().value().value();
    double wet = column == RunsSheet.MOISTURE_DRY_BASIS ? told / (1 + told) : told;
    if (!(told >= 0 && wet <= MOST_MOISTURE)) {
      return complain(
          column,
          FuelSays.TOO_WET.with(Argument.cell(cell.get().written())),
          FuelSays.CHECK_BASIS,
          FuelSays.MOISTURE_GIVEN);
    }
    double u = Math.hypot(MOISTURE, cell.get().value().resolution() / ROOT_12);
    return Budget.of(moistureLine(u)).around(wet, Dimension.RATIO);
  }

  /** A batch of fuel has one moisture, whether it was measured once or for each run. */
  private BudgetLine moistureLine(double u) {
    return context
        .value(RunsSheet.FUEL_BATCH)
        .map(batch -> BudgetLine.shared(Influence.MOISTURE, u, key("fuel batch " + batch)))
        .orElseGet(() -> BudgetLine.independent(Influence.MOISTURE, u));
  }

  private Key key(String name) {
    return new Key(context.run().key().study(), name);
  }

  /** Lower heating value of the dry fuel, J/kg: of the run, of the study, else by its kind. */
  Figure heatingValue() {
    Optional<Given<Quantity>> cell =
        context
            .cell(RunsSheet.HEATING_VALUE)
            .or(() -> context.study().settings().cell(Settings.HEATING_VALUE));
    return cell.map(this::told).orElseGet(this::byKind);
  }

  private Figure told(Given<Quantity> cell) {
    double value = cell.value().value();
    if (!(value >= LEAST_HEATING_VALUE && value <= MOST_HEATING_VALUE)) {
      context
          .findings()
          .error(
              cell.place(),
              FuelSays.NO_SUCH_HEAT.with(Argument.cell(cell.written())),
              FuelSays.CHECK_HEAT.with(
                  Argument.value(
                      DRY_WOOD, TOLD_HEATING_VALUE * DRY_WOOD, Dimension.SPECIFIC_ENERGY)));
      return Figure.unknown(FuelSays.HEAT_GIVEN.with());
    }
    double u = Math.hypot(TOLD_HEATING_VALUE * value, cell.value().resolution() / ROOT_12);
    return heatingValue(value, u);
  }

  private Figure heatingValue(double value, double u) {
    String fuel = context.value(RunsSheet.FUEL).orElse("fuel").strip().toLowerCase(Locale.ROOT);
    return Budget.of(BudgetLine.shared(Influence.HEATING_VALUE, u, key("fuel " + fuel)))
        .around(value, Dimension.SPECIFIC_ENERGY);
  }

  private Figure byKind() {
    String fuel = context.value(RunsSheet.FUEL).orElse("");
    String form = context.value(RunsSheet.FUEL_FORM).map(each -> each.label()).orElse("");
    Optional<WoodFuel> kind = WoodFuel.named(fuel + " " + form);
    if (kind.isPresent()) {
      return heatingValue(kind.get().heatingValue(), kind.get().uncertainty());
    }
    if (fuel.isBlank()) {
      return Figure.unknown(FuelSays.NO_FUEL.with());
    }
    context
        .findings()
        .note(
            context.place(RunsSheet.FUEL),
            FuelSays.UNKNOWN_FUEL.with(Argument.cell(fuel)),
            FuelSays.TYPE_HEAT.with(RunSays.RUNS));
    return Figure.unknown(FuelSays.NO_HEAT.with());
  }

  /** Lower heating value of char, J/kg. */
  Figure charHeatingValue() {
    return Budget.of(
            BudgetLine.shared(Influence.HEATING_VALUE, WoodFuel.CHAR_UNCERTAINTY, key("char")))
        .around(WoodFuel.CHAR, Dimension.SPECIFIC_ENERGY);
  }

  /** Whether nothing at all was written of the fuel's mass. */
  boolean isNotWeighed() {
    return List.of(RunsSheet.FUEL_LOADED, RunsSheet.FUEL_LEFT, RunsSheet.CHAR_LEFT).stream()
        .noneMatch(this::isTold);
  }
}
