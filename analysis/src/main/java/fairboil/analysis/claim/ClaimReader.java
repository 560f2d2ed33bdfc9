package fairboil.analysis.claim;

import fairboil.analysis.measure.Measure;
import fairboil.ingest.choice.HoldsFor;
import fairboil.ingest.choice.Relation;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
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
      throw new Refusal(ClaimSays.NOT_MEASURED.with(Argument.name(name.strip())));
    }
    Message unknown = ClaimSays.NO_SUCH_MEASURE.with(Argument.name(name.strip()));
    findings.accept(Finding.error(claim.row().place(ClaimsSheet.MEASURE), unknown, measures(name)));
    throw new Refusal(unknown);
  }

  private static Message measures(String name) {
    List<String> names = Arrays.stream(Measure.values()).map(Measure::label).toList();
    Argument all = Argument.list(names.stream().map(Argument::word).toList());
    return Nearest.to(name, names)
        .map(likely -> ClaimSays.LIKELY_MEASURE.with(Argument.word(likely), all))
        .orElseGet(() -> ClaimSays.MEASURES.with(all));
  }

  /** A claim of which a part could not be read is not the claim that was written down. */
  void refuseUnread() throws Refusal {
    List<Unread> unread = claim.row().illegible();
    if (!unread.isEmpty()) {
      throw new Refusal(ClaimSays.UNREAD.with(Argument.cell(unread.get(0).written())));
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
      findings.accept(missing(ClaimsSheet.VALUE, ClaimSays.NO_VALUE, ClaimSays.TYPE_VALUE));
      throw new Refusal(ClaimSays.IT_HAS_NO_VALUE.with());
    }
    if (relation != Relation.NO_DIFFERENT_FROM) {
      return Statement.of(relation, holdsFor, value.get(), 0);
    }
    Optional<Double> margin = quantity(ClaimsSheet.MARGIN, dimension.ofDifference());
    if (margin.isEmpty() || !(margin.get() > 0)) {
      findings.accept(missing(ClaimsSheet.MARGIN, ClaimSays.NO_MARGIN, ClaimSays.TYPE_MARGIN));
      throw new Refusal(ClaimSays.IT_HAS_NO_MARGIN.with());
    }
    return Statement.of(relation, holdsFor, value.get(), margin.get());
  }

  private Finding missing(Column<Amount> column, Template what, Template remedy) {
    return Finding.error(
        claim.row().place(column), what.with(Argument.name(claim.key().name())), remedy.with());
  }

  private Optional<Double> quantity(Column<Amount> column, Dimension dimension) throws Refusal {
    Optional<Given<Amount>> given = claim.row().cell(column);
    if (given.isEmpty()) {
      return Optional.empty();
    }
    Optional<Double> value = in(given.get().value(), dimension);
    if (value.isEmpty()) {
      Kind kind = Kind.of(dimension);
      findings.accept(
          Finding.error(
              given.get().place(),
              ClaimSays.NOT_OF_KIND.with(Argument.cell(given.get().written()), kind.words()),
              ClaimSays.TYPE_WITH_UNIT.with(kind.examples())));
      throw new Refusal(ClaimSays.ITS_CELL_IS_NOT.with(Argument.word(column.name()), kind.words()));
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
    TEMPERATURE("a temperature", Argument.typed(640, 1, Dimension.TEMPERATURE)),
    TEMPERATURE_DIFFERENCE(
        "a difference of temperatures", Argument.typed(10, 1, Dimension.TEMPERATURE_DIFFERENCE)),
    DURATION("a time", Argument.typed(540, 1, Dimension.DURATION)),
    POWER("a power", Argument.typed(400, 1, Dimension.POWER)),
    MASS("a mass", Argument.typed(0.06, 1e-3, Dimension.MASS)),
    SHARE("a share", Argument.typed(0.9, 0.01, Dimension.RATIO)),
    SLOPE(
        "a change for each millimetre",
        Argument.typed(-5, 1, Dimension.TEMPERATURE_DIFFERENCE),
        Argument.typed(10, 1, Dimension.DURATION));

    private final String words;
    private final List<Argument> examples;

    Kind(String words, Argument... examples) {
      this.words = words;
      this.examples = List.of(examples);
    }

    Argument words() {
      return Argument.word(words);
    }

    Argument examples() {
      return Argument.anyOf(examples);
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
