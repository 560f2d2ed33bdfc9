package fairboil.analysis.claim;

import fairboil.analysis.measure.Measure;
import fairboil.ingest.choice.HoldsFor;
import fairboil.ingest.choice.Relation;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.quantity.Amount;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Claim;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Nearest;
import fairboil.ingest.sheet.Unread;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/** Reads what a claim says: its measure, its value and its margin. */
final class ClaimReader {

  /** What people claim of stoves that nothing here measures, and the words by which to know it. */
  private static final List<String> NOT_MEASURED =
      List.of("carbon monoxide", "co", "smoke", "soot", "indoor", "indoors", "emissions", "fumes");

  private final Claim claim;
  private final Consumer<Finding> findings;

  ClaimReader(Claim claim, Consumer<Finding> findings) {
    this.claim = claim;
    this.findings = findings;
  }

  Measure measure() throws Refusal {
    String name = claim.row().get(ClaimsSheet.MEASURE);
    Optional<Measure> measure = Measure.named(name);
    if (measure.isPresent()) {
      return measure.get();
    }
    String plain = name.strip().toLowerCase(Locale.ROOT);
    if (NOT_MEASURED.contains(plain) || plain.contains("monoxide") || plain.contains("smoke")) {
      throw new Refusal("nothing here measures " + name.strip());
    }
    List<String> names = Arrays.stream(Measure.values()).map(Measure::label).toList();
    findings.accept(
        Finding.error(
            claim.row().place(ClaimsSheet.MEASURE),
            "there is no measure "
                + name.strip()
                + Nearest.to(name, names)
                    .map(likely -> "; did you mean " + likely + "?")
                    .orElse(""),
            "name one of: " + String.join(", ", names)));
    throw new Refusal("there is no measure " + name.strip());
  }

  /** A claim of which a part could not be read is not the claim that was written down. */
  void refuseUnread() throws Refusal {
    List<Unread> unread = claim.row().illegible();
    if (!unread.isEmpty()) {
      throw new Refusal("“" + unread.get(0).written() + "” in its row could not be read");
    }
  }

  /**
   * What the claim says of a quantity.
   *
   * @param dimension of the quantity that is judged: that of the measure, or of a difference
   * @param otherwise the value where none is given, if there is one
   */
  Statement statement(Dimension dimension, Optional<Double> otherwise) throws Refusal {
    Relation relation = claim.row().get(ClaimsSheet.RELATION);
    HoldsFor holdsFor = claim.row().get(ClaimsSheet.HOLDS_FOR);
    Optional<Double> value = quantity(ClaimsSheet.VALUE, dimension).or(() -> otherwise);
    if (value.isEmpty()) {
      throw missing(ClaimsSheet.VALUE, "names no value", "type the value with its unit");
    }
    if (relation != Relation.NO_DIFFERENT_FROM) {
      return Statement.of(relation, holdsFor, value.get(), 0);
    }
    Optional<Double> margin = quantity(ClaimsSheet.MARGIN, dimension.ofDifference());
    if (margin.isEmpty() || !(margin.get() > 0)) {
      throw missing(
          ClaimsSheet.MARGIN,
          "names no margin, and nothing is ever exactly equal",
          "type the difference that would not matter, with its unit");
    }
    return Statement.of(relation, holdsFor, value.get(), margin.get());
  }

  private Refusal missing(Column<Amount> column, String what, String remedy) {
    findings.accept(
        Finding.error(claim.row().place(column), "claim " + claim.key() + " " + what, remedy));
    return new Refusal("it " + what);
  }

  private Optional<Double> quantity(Column<Amount> column, Dimension dimension) throws Refusal {
    Optional<Given<Amount>> given = claim.row().cell(column);
    if (given.isEmpty()) {
      return Optional.empty();
    }
    Optional<Double> value = in(given.get().value(), dimension);
    if (value.isEmpty()) {
      findings.accept(
          Finding.error(
              given.get().place(),
              given.get().written() + " is not " + Kind.of(dimension).words,
              "type it with a unit, such as " + Kind.of(dimension).example));
      throw new Refusal("its " + column.name() + " is not " + Kind.of(dimension).words);
    }
    return value;
  }

  /** A slope is written as the change for each millimetre; nothing needs no unit. */
  private static Optional<Double> in(Amount amount, Dimension dimension) {
    if (amount.unit().isEmpty() && amount.number() == 0 && dimension != Dimension.TEMPERATURE) {
      return Optional.of(0.0);
    }
    return switch (dimension) {
      case TEMPERATURE_DIFFERENCE_PER_LENGTH ->
          amount.as(Dimension.TEMPERATURE_DIFFERENCE).map(ClaimReader::perMillimetre);
      case DURATION_PER_LENGTH -> amount.as(Dimension.DURATION).map(ClaimReader::perMillimetre);
      default -> amount.as(dimension).map(Quantity::value);
    };
  }

  private static double perMillimetre(Quantity change) {
    return change.value() / Unit.MILLIMETRE.toHeld(1, Dimension.LENGTH);
  }

  /** What a value should be, in words. */
  private enum Kind {
    TEMPERATURE("a temperature", "640 °C"),
    TEMPERATURE_DIFFERENCE("a difference of temperatures", "10 °C"),
    DURATION("a time", "9 min"),
    POWER("a power", "400 W"),
    MASS("a mass", "60 g"),
    SHARE("a share", "90 %"),
    SLOPE("a change for each millimetre", "-5 °C or 10 s");

    private final String words;
    private final String example;

    Kind(String words, String example) {
      this.words = words;
      this.example = example;
    }

    static Kind of(Dimension dimension) {
      return switch (dimension) {
        case TEMPERATURE -> TEMPERATURE;
        case TEMPERATURE_DIFFERENCE -> TEMPERATURE_DIFFERENCE;
        case DURATION -> DURATION;
        case POWER -> POWER;
        case MASS -> MASS;
        case RATIO -> SHARE;
        case TEMPERATURE_DIFFERENCE_PER_LENGTH, DURATION_PER_LENGTH -> SLOPE;
        default -> throw new IllegalArgumentException("no measure is a value of " + dimension);
      };
    }
  }
}
