package fairboil.analysis.run;

import fairboil.analysis.figure.Budget;
import fairboil.analysis.figure.BudgetLine;
import fairboil.analysis.figure.Figure;
import fairboil.analysis.figure.Influence;
import fairboil.analysis.fuel.WoodFuel;
import fairboil.ingest.choice.Feed;
import fairboil.ingest.choice.WeighedAt;
import fairboil.ingest.dimension.Dimension;
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
    Figure loaded = weighed(RunsSheet.FUEL_LOADED, "how much fuel was put in is not told");
    Figure added = weighed(RunsSheet.REFUELLED, "how much fuel was added is not told");
    Figure left = weighed(RunsSheet.FUEL_LEFT, "what was left of the fuel was not weighed");
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
          Findings.words(
              "more was left of the fuel than was put in: %.0f g of %.0f g",
              1000 * remained, 1000 * putIn),
          "check the weighings and their units",
          "more was left of the fuel than was put in");
    }
    return burnt <= 0
        ? Figure.unknown("no fuel was burnt")
        : loaded.budget().and(added.budget()).and(left.budget()).around(burnt, Dimension.MASS);
  }

  /** Char left, kg. */
  Figure charLeft() {
    return weighed(RunsSheet.CHAR_LEFT, "the char was not weighed");
  }

  private Figure weighed(Column<Quantity> column, String missing) {
    Optional<Given<Quantity>> cell = context.cell(column);
    if (cell.isEmpty()) {
      return Figure.unknown(missing);
    }
    Quantity mass = cell.get().value();
    if (mass.value() < 0) {
      return complain(
          column,
          "a mass below nothing: " + cell.get().written(),
          "check the number",
          "a mass of fuel told is not possible");
    }
    double u = Math.hypot(context.held(Settings.SCALE_UNCERTAINTY), mass.resolution() / ROOT_12);
    return Budget.of(BudgetLine.independent(Influence.SCALE, u))
        .around(mass.value(), Dimension.MASS);
  }

  private Figure complain(Column<?> column, String problem, String remedy, String reason) {
    context.findings().error(context.place(column), problem, remedy);
    return Figure.unknown(reason);
  }

  /** Water in the fuel as a share of moist fuel: told so, or as a share of dry fuel. */
  Figure moisture() {
    Figure wet = moisture(RunsSheet.MOISTURE_WET_BASIS);
    Figure dry = moisture(RunsSheet.MOISTURE_DRY_BASIS);
    if (wet.isKnown() && dry.isKnown() && Math.abs(wet.orNaN() - dry.orNaN()) > MOISTURES_AGREE) {
      return complain(
          RunsSheet.MOISTURE_DRY_BASIS,
          Findings.words(
              "the moistures do not go together: this is %.1f %% of moist fuel, and %.1f %% is told",
              100 * dry.orNaN(), 100 * wet.orNaN()),
          "keep the one that was measured, and leave the other empty",
          "the moistures told do not go together");
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
      return Figure.unknown("the moisture of the fuel is not told");
    }
    double told = cell.get().value().value();
    double wet = column == RunsSheet.MOISTURE_DRY_BASIS ? told / (1 + told) : told;
    if (!(told >= 0 && wet <= MOST_MOISTURE)) {
      return complain(
          column,
          "fuel with a moisture of " + cell.get().written() + " does not burn",
          "check the number, and whether it is a share of the moist or of the dry fuel",
          "the moisture told is not possible");
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
              "no dry fuel has a heating value of " + cell.written(),
              "check the number and its unit: dry wood has about 19 MJ/kg");
      return Figure.unknown("the heating value told is not possible");
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
      return Figure.unknown("what was burnt is not told");
    }
    context
        .findings()
        .note(
            context.place(RunsSheet.FUEL),
            "the heating value of “" + fuel + "” is not known here",
            "give the lower heating value of the dry fuel in the column “heating value”");
    return Figure.unknown("the heating value of the fuel is not known");
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
