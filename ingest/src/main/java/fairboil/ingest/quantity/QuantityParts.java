package fairboil.ingest.quantity;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A quantity cut into numbers and the words after them: {@code 1 lb 4 oz} is two parts. Words are
 * not yet units, because {@code m} is a minute beside seconds and a metre beside nothing.
 */
final class QuantityParts {

  private static final Pattern ABOUT =
      Pattern.compile("(?i)(?:~|about\\b|approximately\\b|approx\\b\\.?|circa\\b|ca\\b\\.?) ?");
  private static final Pattern BOUND =
      Pattern.compile("(?i)(?:<=?|>=?|\\u2264|\\u2265|(?:less|more) than\\b|under\\b|over\\b) ?");
  private static final Pattern BRACKETS = Pattern.compile("(?<![/ ]) ?\\(([^()]*)\\)$");
  private static final Pattern WORDS = Pattern.compile("[^\\d]*?(?=(?:(?<![A-Za-z])\\.)?\\d|$)");
  private static final Pattern RANGE =
      Pattern.compile("(?i).*(?:-|\\bto|\\u00B1|\\+/?|\\.\\.|\\bor)$");
  private static final Pattern JOINED = Pattern.compile("(?i)(?: ?,| ?&| and| ?\\+|\\.)$");
  private static final Pattern COLONS = Pattern.compile("\\d+:\\d.*");

  private record Part(WrittenNumber number, String words) {}

  private final List<Part> parts;
  private final Optional<Amount> time;

  private QuantityParts(List<Part> parts, Optional<Amount> time) {
    this.parts = List.copyOf(parts);
    this.time = time;
  }

  /** Cuts a tidy text. */
  static Reading<QuantityParts> of(String tidy, DecimalMark mark) {
    if (WrittenNumber.endOfSimple(tidy, mark) > 0) {
      return WrittenNumber.at(tidy, mark)
          .then(
              number ->
                  Reading.Read.of(
                      new QuantityParts(List.of(new Part(number.value(), "")), Optional.empty())));
    }
    Optional<Message> remark = Optional.empty();
    String rest = tidy;
    Matcher about = ABOUT.matcher(rest);
    Matcher bound = BOUND.matcher(rest);
    if (about.lookingAt()) {
      rest = rest.substring(about.end());
      remark = Optional.of(ReadingSays.ABOUT.with(Argument.name(rest)));
    } else if (bound.lookingAt()) {
      rest = rest.substring(bound.end());
      remark = Optional.of(ReadingSays.BOUND.with(Argument.name(rest)));
    }
    Matcher brackets = BRACKETS.matcher(rest);
    if (brackets.find() && UnitText.meanings(brackets.group(1)).isEmpty()) {
      rest = rest.substring(0, brackets.start());
      remark = remark.or(() -> Optional.of(ReadingSays.BRACKETS));
    }
    return cut(tidy, rest, mark, remark);
  }

  private static Reading<QuantityParts> cut(
      String tidy, String rest, DecimalMark mark, Optional<Message> remark) {
    if (COLONS.matcher(rest).matches()) {
      return Durations.colons(rest)
          .then(
              time -> {
                QuantityParts parts = new QuantityParts(List.of(), Optional.of(time.value()));
                return new Reading.Read<>(parts, Optional.empty(), remark.or(time::remark));
              });
    }
    List<Part> parts = new ArrayList<>();
    int position = 0;
    while (position < rest.length()) {
      String from = rest.substring(position);
      Reading<WrittenNumber> reading = WrittenNumber.at(from, mark);
      if (!(reading instanceof Reading.Read<WrittenNumber> read)) {
        return reading instanceof Reading.Refused<WrittenNumber> refused
            ? refused.of()
            : notANumber(tidy);
      }
      String after = from.substring(read.value().text().length());
      String words = words(after);
      boolean last = words.length() == after.length();
      if (!last && isRange(words)) {
        return range(tidy);
      }
      parts.add(new Part(read.value(), last ? words.strip() : joined(words)));
      position += read.value().text().length() + words.length();
    }
    QuantityParts all = new QuantityParts(parts, Optional.empty());
    return parts.isEmpty() ? notANumber(tidy) : new Reading.Read<>(all, Optional.empty(), remark);
  }

  private static String words(String after) {
    // A unit such as m2 or kg-1 holds a digit of its own.
    if (!UnitText.meanings(after).isEmpty()) {
      return after;
    }
    Matcher words = WORDS.matcher(after);
    return words.lookingAt() ? words.group() : after;
  }

  private static boolean isRange(String words) {
    return RANGE.matcher(words.strip()).matches();
  }

  private static String joined(String words) {
    return JOINED.matcher(words.strip()).replaceFirst("").strip();
  }

  private static <T> Reading<T> notANumber(String tidy) {
    return new Reading.Refused<>(
        ReadingSays.NO_QUANTITY.with(Argument.cell(tidy)), ReadingSays.NUMBER_AND_UNIT);
  }

  private static <T> Reading<T> range(String tidy) {
    return new Reading.Refused<>(
        ReadingSays.RANGE.with(Argument.cell(tidy)), ReadingSays.ONE_VALUE);
  }

  /** Whether it is one number without any words. */
  boolean isBare() {
    return time.isEmpty() && parts.size() == 1 && parts.get(0).words().isEmpty();
  }

  /** The number of a bare one. */
  Amount bare() {
    WrittenNumber number = parts.get(0).number();
    return new Amount(number.value(), number.resolution(), Optional.empty());
  }

  /**
   * The sum of the parts, in the unit of the last, if the words are units of just one of the wanted
   * dimensions.
   */
  Reading<Amount> in(List<Dimension> wanted, String tidy) {
    if (time.isPresent()) {
      return wanted.contains(Dimension.DURATION)
          ? Reading.Read.of(time.get())
          : Suggestions.wrongKind(tidy, Dimension.DURATION, wanted);
    }
    for (Part part : parts) {
      if (part.words().isEmpty()) {
        return unitMissing(tidy, part);
      }
      if (meanings(part).isEmpty()) {
        return Suggestions.unknownUnit(part.words(), wanted);
      }
    }
    List<Dimension> possible = possible(wanted);
    if (possible.isEmpty()) {
      return Suggestions.wrongKind(tidy, meanings(parts.get(0)).get(0).dimension(), wanted);
    }
    return possible.size() > 1
        ? Suggestions.ambiguous(tidy, parts.get(parts.size() - 1).words(), possible)
        : sum(tidy, possible.get(0));
  }

  private static <T> Reading<T> unitMissing(String tidy, Part part) {
    return new Reading.Refused<>(
        ReadingSays.NO_UNIT_AFTER.with(
            Argument.cell(tidy), Argument.name(part.number().text().strip())),
        ReadingSays.UNIT_EACH);
  }

  // A capital C alone is a temperature wherever that is possible; a cup is written small.
  private List<Dimension> possible(List<Dimension> wanted) {
    boolean capitalC = parts.size() == 1 && parts.get(0).words().equals("C");
    return capitalC && wanted.contains(Dimension.TEMPERATURE)
        ? List.of(Dimension.TEMPERATURE)
        : wanted.stream().filter(this::allMeasure).toList();
  }

  private static List<Unit> meanings(Part part) {
    String words = part.words().startsWith("-") ? part.words().substring(1) : part.words();
    return UnitText.meanings(words);
  }

  private boolean allMeasure(Dimension dimension) {
    return parts.stream()
        .allMatch(part -> meanings(part).stream().anyMatch(unit -> unit.measures(dimension)));
  }

  private Reading<Amount> sum(String tidy, Dimension dimension) {
    Unit last = unit(parts.get(parts.size() - 1), dimension);
    double number = 0;
    double before = Double.POSITIVE_INFINITY;
    for (Part part : parts) {
      double size = unit(part, dimension).ratioTo(last);
      if (size >= before || (parts.size() > 1 && dimension.ofDifference() != dimension)) {
        return new Reading.Refused<>(
            ReadingSays.WRONG_ORDER.with(Argument.cell(tidy)),
            ReadingSays.TYPE_ONE.with(Argument.clause(Suggestions.example(dimension))));
      }
      before = size;
      number += part.number().value() * size;
    }
    double step = parts.get(parts.size() - 1).number().resolution();
    Amount amount = new Amount(number, step, Optional.of(last));
    return new Reading.Read<>(amount, amount.unit(), Optional.empty());
  }

  private static Unit unit(Part part, Dimension dimension) {
    return meanings(part).stream()
        .filter(unit -> unit.measures(dimension))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("checked before: " + part));
  }
}
