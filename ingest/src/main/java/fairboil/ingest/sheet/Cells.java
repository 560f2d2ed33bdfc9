package fairboil.ingest.sheet;

import fairboil.ingest.choice.Choice;
import fairboil.ingest.choice.YesNo;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.quantity.Amount;
import fairboil.ingest.quantity.ClockTime;
import fairboil.ingest.quantity.DateText;
import fairboil.ingest.quantity.MomentText;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.QuantityText;
import fairboil.ingest.quantity.Reading;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** How the cells of each kind of column are read. */
final class Cells {

  private static final Pattern DASHES = Pattern.compile("[-\\u2010-\\u2015\\u2212]+");
  private static final Pattern LIST = Pattern.compile("[,;]");
  private static final Pattern NUMBERS = Pattern.compile("[,;\\s]+");
  private static final Pattern WHOLE = Pattern.compile("[+]?(\\d{1,9})(?:[.,]0+)?");
  private static final Pattern CONDITIONS = Pattern.compile("[;\\n]");

  private static final int LONGEST_LIST = 100;

  private Cells() {}

  /** Words as they are; a lone dash says nothing. */
  static CellReader<String> text() {
    return (text, context) ->
        DASHES.matcher(text).matches() ? new Reading.Missing<>() : Reading.Read.of(text);
  }

  /** A reason for doing something; {@code no} is none, {@code yes} lacks one. */
  static CellReader<String> reason() {
    ChoiceText<YesNo> answers = new ChoiceText<>(YesNo.class);
    return (text, context) -> {
      if (!(answers.read(text) instanceof Reading.Read<YesNo> answer)) {
        return Reading.isNothing(text) ? new Reading.Missing<>() : Reading.Read.of(text);
      }
      return answer.value() == YesNo.NO
          ? new Reading.Missing<>()
          : new Reading.Read<>(text, Optional.empty(), Optional.of(CellSays.REASON_MISSING));
    };
  }

  static CellReader<List<String>> texts() {
    return (text, context) -> {
      List<String> items =
          LIST.splitAsStream(text).map(String::strip).filter(item -> !item.isEmpty()).toList();
      return items.size() <= LONGEST_LIST
          ? Reading.Read.of(items)
          : new Reading.Refused<>(
              CellSays.LISTS_TOO_MUCH.with(Argument.count(LONGEST_LIST)), CellSays.LIST_LESS);
    };
  }

  static CellReader<Integer> whole() {
    return (text, context) -> whole(text);
  }

  private static Reading<Integer> whole(String text) {
    if (Reading.isNothing(text)) {
      return new Reading.Missing<>();
    }
    var matcher = WHOLE.matcher(text);
    return matcher.matches()
        ? Reading.Read.of(Integer.valueOf(matcher.group(1)))
        : new Reading.Refused<>(CellSays.NOT_WHOLE.with(Argument.cell(text)), CellSays.TYPE_WHOLE);
  }

  static CellReader<List<Integer>> wholes() {
    return (text, context) -> {
      if (Reading.isNothing(text)) {
        return new Reading.Missing<>();
      }
      List<Integer> numbers = new ArrayList<>();
      for (String item : NUMBERS.splitAsStream(text).filter(part -> !part.isEmpty()).toList()) {
        if (!(whole(item) instanceof Reading.Read<Integer> read)) {
          return new Reading.Refused<>(
              CellSays.NOT_WHOLE.with(Argument.cell(item)), CellSays.LIST_WHOLE);
        }
        numbers.add(read.value());
      }
      return Reading.Read.of(List.copyOf(numbers));
    };
  }

  static <E extends Enum<E> & Choice> CellReader<E> choice(Class<E> choices) {
    ChoiceText<E> reader = new ChoiceText<>(choices);
    return (text, context) -> reader.read(text);
  }

  static CellReader<Quantity> quantity(List<Dimension> dimensions) {
    return (text, context) -> QuantityText.read(text, dimensions, context.unit(), context.mark());
  }

  /** A plain number that other numbers are multiplied with. */
  static CellReader<Quantity> factor() {
    return (text, context) ->
        QuantityText.amount(text, context.unit(), context.mark())
            .then(
                read ->
                    read.value()
                        .as(Dimension.RATIO)
                        .map(factor -> (Reading<Quantity>) Reading.Read.of(factor))
                        .orElseGet(
                            () ->
                                new Reading.Refused<>(
                                    CellSays.NOT_PLAIN.with(Argument.cell(text)),
                                    CellSays.TYPE_FACTOR)));
  }

  static CellReader<Amount> amount() {
    return (text, context) -> QuantityText.amount(text, context.unit(), context.mark());
  }

  static CellReader<ClockTime> moment() {
    return (text, context) -> MomentText.read(text, context.unit(), context.mark());
  }

  static CellReader<ClockTime> timeOfDay() {
    return (text, context) -> MomentText.readTimeOfDay(text);
  }

  static CellReader<LocalDate> date() {
    return (text, context) -> DateText.read(text);
  }

  /** An empty mass if it reads as one, else a name. */
  static CellReader<PotGiven> pot() {
    CellReader<Quantity> mass = quantity(List.of(Dimension.MASS));
    return (text, context) -> {
      Reading<Quantity> reading = mass.read(text, context);
      return reading instanceof Reading.Refused<Quantity>
          ? Reading.Read.of(new PotGiven.Named(text))
          : reading.then(Cells::emptyMass);
    };
  }

  private static Reading<PotGiven> emptyMass(Reading.Read<Quantity> read) {
    return new Reading.Read<>(new PotGiven.EmptyMass(read.value()), read.unit(), read.remark());
  }

  static CellReader<Wind> wind() {
    return WindText::read;
  }

  static CellReader<Selection> selection() {
    return (text, context) ->
        text.indexOf('=') < 0 ? Reading.Read.of(new Selection.Named(text)) : where(text);
  }

  private static Reading<Selection> where(String text) {
    Map<String, String> cells = new LinkedHashMap<>();
    for (String condition : CONDITIONS.splitAsStream(text).filter(c -> !c.isBlank()).toList()) {
      int equals = condition.indexOf('=');
      String column = equals < 0 ? "" : condition.substring(0, equals).strip();
      String value = condition.substring(equals + 1).strip();
      if (column.isEmpty() || value.isEmpty() || value.indexOf('=') >= 0) {
        return new Reading.Refused<>(
            CellSays.NO_CONDITION.with(Argument.cell(condition)), CellSays.WRITE_CONDITION);
      }
      cells.put(column, value);
    }
    return new Reading.Read<>(new Selection.Where(cells), Optional.empty(), Optional.empty());
  }
}
