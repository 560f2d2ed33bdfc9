package fairboil.analysis.run;

import fairboil.analysis.heat.PotMaterial;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Pot;
import fairboil.ingest.sheet.PotGiven;
import fairboil.ingest.sheet.PotsSheet;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.Optional;
import java.util.OptionalDouble;

/** The pot of a run, or the reference pot, and its heat capacity. */
final class PotFinder {

  private static final Template NO_MASS = Template.of("a pot cannot have no mass");
  private static final Template TYPE_MASS =
      Template.of("type the mass of the empty pot with its lid");
  private static final Template UNKNOWN_MATERIAL =
      Template.of("the specific heat of a pot of {cell} is not known here");
  private static final Template MATERIAL_MISSING =
      Template.of("what the pot is made of is not given");
  private static final Template MASS_MISSING =
      Template.of("the mass of the empty pot is not given");
  private static final Template LEFT_OUT =
      Template.of("{clause}, so the heat that warms the pot is left out");
  private static final Template TYPE_BOTH =
      Template.of(
          "in {sheet}, type the pot's mass and its material, such as aluminium, stainless steel or"
              + " titanium");

  /** Share of the water's heat capacity that an unknown pot may have: half-width, a judgement. */
  private static final double UNKNOWN_POT_SHARE = 0.05;

  private final RunContext context;

  PotFinder(RunContext context) {
    this.context = context;
  }

  /**
   * The heat capacity of a pot.
   *
   * @param joulesPerKelvin the capacity; 0 where the pot is not known
   * @param uncertainty its standard uncertainty, J/K
   * @param known whether mass and material are known
   */
  record Capacity(double joulesPerKelvin, double uncertainty, Knowledge known) {}

  /** Whether a pot is known. */
  enum Knowledge {
    /** Mass and material are told. */
    KNOWN,
    /** One of them is missing. */
    UNKNOWN
  }

  /** Mass of the empty pot, kg, if it is told. */
  OptionalDouble mass() {
    Optional<PotGiven> given = context.value(RunsSheet.POT);
    if (given.isPresent() && given.get() instanceof PotGiven.EmptyMass empty) {
      return OptionalDouble.of(empty.mass().value());
    }
    Optional<Quantity> mass = named().flatMap(pot -> pot.row().value(PotsSheet.MASS));
    return mass.isPresent() ? OptionalDouble.of(mass.get().value()) : OptionalDouble.empty();
  }

  private Optional<Pot> named() {
    return context
        .value(RunsSheet.POT)
        .flatMap(
            given -> given instanceof PotGiven.Named named ? pot(named.name()) : Optional.empty());
  }

  private Optional<Pot> pot(String name) {
    return context.study().pot(new Key(context.run().key().study(), name));
  }

  /** The heat capacity of the run's own pot, with a finding where it is not known. */
  Capacity own(double water) {
    Optional<String> material =
        context
            .value(RunsSheet.POT_MATERIAL)
            .or(() -> named().flatMap(pot -> pot.row().value(PotsSheet.MATERIAL)));
    return capacity(mass(), material, water, context.place(RunsSheet.POT));
  }

  /** The heat capacity of the reference pot: the run's own where none is set. */
  Capacity reference(Capacity own, double water) {
    Optional<Pot> pot = context.study().settings().value(Settings.REFERENCE_POT).flatMap(this::pot);
    if (pot.isEmpty()) {
      return own;
    }
    Optional<Quantity> mass = pot.get().row().value(PotsSheet.MASS);
    return capacity(
        mass.isPresent() ? OptionalDouble.of(mass.get().value()) : OptionalDouble.empty(),
        pot.get().row().value(PotsSheet.MATERIAL),
        water,
        pot.get().row().place(PotsSheet.MATERIAL));
  }

  private Capacity capacity(
      OptionalDouble mass, Optional<String> material, double water, Place place) {
    if (mass.isPresent() && mass.getAsDouble() <= 0) {
      context.findings().error(place, NO_MASS.with(), TYPE_MASS.with());
      return unknown(water);
    }
    Optional<PotMaterial> stuff = material.flatMap(PotMaterial::named);
    if (mass.isEmpty() || stuff.isEmpty()) {
      tellUnknown(mass, material, place);
      return unknown(water);
    }
    double capacity = mass.getAsDouble() * stuff.get().specificHeat();
    double scale = context.held(Settings.SCALE_UNCERTAINTY) * stuff.get().specificHeat();
    return new Capacity(
        capacity, Math.hypot(PotMaterial.RELATIVE_UNCERTAINTY * capacity, scale), Knowledge.KNOWN);
  }

  private static Capacity unknown(double water) {
    double half = UNKNOWN_POT_SHARE * water * 4186;
    return new Capacity(0, half / Math.sqrt(3), Knowledge.UNKNOWN);
  }

  private void tellUnknown(OptionalDouble mass, Optional<String> material, Place place) {
    Message problem =
        material.isPresent() && mass.isPresent()
            ? UNKNOWN_MATERIAL.with(Argument.cell(material.get()))
            : (mass.isPresent() ? MATERIAL_MISSING : MASS_MISSING).with();
    context
        .findings()
        .note(place, LEFT_OUT.with(Argument.clause(problem)), TYPE_BOTH.with(RunSays.POTS));
  }
}
