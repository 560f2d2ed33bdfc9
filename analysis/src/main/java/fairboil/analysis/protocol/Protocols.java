package fairboil.analysis.protocol;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.group.RunColumn;
import fairboil.analysis.protocol.RunProtocol.Departure;
import fairboil.analysis.protocol.RunProtocol.How;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.quantity.Amount;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.ProtocolSheet;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Wind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Holds runs against what the group agreed. */
public final class Protocols {

  private static final Template NOT_WITHIN =
      Template.of("this run is not within protocol: {name} {clause}");
  private static final Template NOTHING =
      Template.of(
          "if it was so, you need do nothing: results are given with and without such runs");
  private static final Template EMPTY = Template.of("is empty");
  private static final Template BELOW = Template.of("{cell} is below {name}");
  private static final Template ABOVE = Template.of("{cell} is above {name}");
  private static final Template NOT_ONE_OF = Template.of("{cell} is not one of: {name}");
  private static final Template NOT_COMPARABLE =
      Template.of("{cell} cannot be compared with {name}");

  private final Study study;

  private Protocols(Study study) {
    this.study = study;
  }

  /**
   * Whether each run kept to the protocol.
   *
   * @param runs all runs
   * @return one result a run, in their order; none if nothing was agreed
   */
  public static List<RunProtocol> of(Study study, List<RunResult> runs) {
    if (study.protocol().isEmpty()) {
      return List.of();
    }
    Protocols protocols = new Protocols(study);
    return runs.stream().map(protocols::of).toList();
  }

  /** What a reader should know: the cells by which runs departed. */
  public static List<Finding> findings(List<RunProtocol> runs) {
    return runs.stream()
        .flatMap(run -> run.departures().stream())
        .map(
            departure ->
                Finding.note(
                    departure.place(),
                    NOT_WITHIN.with(
                        Argument.name(departure.column()), Argument.clause(why(departure))),
                    NOTHING.with()))
        .toList();
  }

  private static Message why(Departure departure) {
    Argument written = Argument.cell(departure.written());
    Argument agreed = Argument.name(departure.agreed());
    return switch (departure.how()) {
      case NOT_TOLD -> EMPTY.with();
      case BELOW -> BELOW.with(written, agreed);
      case ABOVE -> ABOVE.with(written, agreed);
      case NOT_ALLOWED -> NOT_ONE_OF.with(written, agreed);
      case NOT_COMPARABLE -> NOT_COMPARABLE.with(written, agreed);
    };
  }

  private RunProtocol of(RunResult run) {
    List<Departure> departures = new ArrayList<>();
    for (Row agreed : study.protocol()) {
      RunColumn.named(study, agreed.get(ProtocolSheet.COLUMN))
          .flatMap(column -> departure(run, column, agreed))
          .ifPresent(departures::add);
    }
    return new RunProtocol(run.run().key(), departures);
  }

  private static Optional<Departure> departure(RunResult run, RunColumn column, Row agreed) {
    Optional<RunColumn.Cell> cell = column.cell(run);
    if (cell.isEmpty()) {
      Place place = run.run().row().place().column(column.name());
      return Optional.of(new Departure(column.name(), "", How.NOT_TOLD, "", place));
    }
    Given<?> given = cell.get().given();
    return allowed(cell.get(), agreed)
        .or(() -> limit(run, given, agreed.cell(ProtocolSheet.LOW), How.BELOW))
        .or(() -> limit(run, given, agreed.cell(ProtocolSheet.HIGH), How.ABOVE))
        .map(
            found ->
                new Departure(
                    column.name(), given.written(), found.how(), found.agreed(), given.place()));
  }

  /** A departure whose cell is known. */
  private record Found(How how, String agreed) {}

  private static Optional<Found> allowed(RunColumn.Cell cell, Row agreed) {
    Optional<List<String>> texts = agreed.value(ProtocolSheet.ALLOWED);
    boolean kept = texts.isEmpty() || texts.get().stream().anyMatch(cell.text()::equalsIgnoreCase);
    return kept
        ? Optional.empty()
        : Optional.of(new Found(How.NOT_ALLOWED, String.join(", ", texts.get())));
  }

  private static Optional<Found> limit(
      RunResult run, Given<?> given, Optional<Given<Amount>> limit, How how) {
    if (limit.isEmpty()) {
      return Optional.empty();
    }
    String written = limit.get().written() + limitUnit(limit.get());
    OptionalDouble beyond = beyond(run, given.value(), limit.get().value());
    if (beyond.isEmpty()) {
      return Optional.of(new Found(How.NOT_COMPARABLE, written));
    }
    double excess = how == How.ABOVE ? beyond.getAsDouble() : -beyond.getAsDouble();
    return excess > 0 ? Optional.of(new Found(how, written)) : Optional.empty();
  }

  /** The unit of a limit, where it stands in the header and not in the cell. */
  private static String limitUnit(Given<Amount> limit) {
    return limit
        .value()
        .unit()
        .map(unit -> unit.symbol())
        .filter(symbol -> limit.written().matches("[-+\\d.,\\s]*"))
        .map(symbol -> " " + symbol)
        .orElse("");
  }

  /** By how much a value lies above a limit; empty if the two cannot be compared. */
  private static OptionalDouble beyond(RunResult run, Object value, Amount limit) {
    if (value instanceof Quantity quantity) {
      return beyond(run, quantity, limit);
    }
    if (value instanceof Wind.Speed wind) {
      return beyond(run, wind.speed(), limit);
    }
    if (value instanceof Integer whole && limit.unit().isEmpty()) {
      return OptionalDouble.of(whole - limit.number());
    }
    return OptionalDouble.empty();
  }

  private static OptionalDouble beyond(RunResult run, Quantity quantity, Amount limit) {
    Optional<Quantity> same = limit.as(quantity.dimension());
    if (same.isPresent()) {
      double tiny = 1e-9 * Math.abs(same.get().value());
      double beyond = quantity.value() - same.get().value();
      return OptionalDouble.of(Math.abs(beyond) <= tiny ? 0 : beyond);
    }
    // water measured by volume where a mass was agreed
    Optional<Quantity> mass = limit.as(Dimension.MASS);
    Figure water = run.conditions().water();
    boolean isWater =
        run.run()
            .row()
            .cell(RunsSheet.WATER)
            .filter(cell -> cell.value().equals(quantity))
            .isPresent();
    return isWater && mass.isPresent() && water.isKnown()
        ? OptionalDouble.of(water.orNaN() - mass.get().value())
        : OptionalDouble.empty();
  }
}
