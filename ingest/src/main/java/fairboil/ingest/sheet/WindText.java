package fairboil.ingest.sheet;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.QuantityText;
import fairboil.ingest.quantity.Reading;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads wind: a speed, a number of the Beaufort scale, or the scale's own words for it. */
final class WindText {

  private static final Pattern BEAUFORT =
      Pattern.compile(
          "(?:b|f|bft|bf|beaufort|force)\\.?\\s*(\\d{1,2})|(\\d{1,2})\\s*(?:b|bft|bf|beaufort)\\.?");

  /** WMO Manual on Codes, code table 1100: names of the Beaufort numbers. */
  private static final Map<String, Integer> NAMES =
      Map.of(
          "calm", 0,
          "light air", 1,
          "light breeze", 2,
          "gentle breeze", 3,
          "moderate breeze", 4,
          "fresh breeze", 5,
          "strong breeze", 6);

  private static final int MOST = 12;

  private WindText() {}

  static Reading<Wind> read(String text, CellContext context) {
    String lower = text.toLowerCase(Locale.ROOT).strip();
    Matcher beaufort = BEAUFORT.matcher(lower);
    if (beaufort.matches()) {
      String digits = beaufort.group(1) != null ? beaufort.group(1) : beaufort.group(2);
      return beaufort(text, Integer.parseInt(digits));
    }
    if (NAMES.containsKey(lower)) {
      int number = NAMES.get(lower);
      return new Reading.Read<>(
          new Wind.Beaufort(number),
          Optional.empty(),
          Optional.of(CellSays.BEAUFORT.with(Argument.cell(text), Argument.number(number, 0))));
    }
    if (lower.equals("none") || lower.equals("no")) {
      return new Reading.Refused<>(
          CellSays.CALM_OR_UNKNOWN.with(Argument.cell(text)), CellSays.CALM_OR_EMPTY);
    }
    return speed(text, context);
  }

  private static Reading<Wind> beaufort(String text, int number) {
    return number <= MOST
        ? Reading.Read.of(new Wind.Beaufort(number))
        : new Reading.Refused<>(
            CellSays.BEYOND_BEAUFORT.with(Argument.cell(text)), CellSays.BEAUFORT_OR_SPEED);
  }

  private static Reading<Wind> speed(String text, CellContext context) {
    Reading<Quantity> reading =
        QuantityText.read(text, List.of(Dimension.SPEED), context.unit(), context.mark());
    if (reading instanceof Reading.Refused<Quantity> refused) {
      return new Reading.Refused<>(refused.problem(), CellSays.SPEED);
    }
    return reading.then(
        read -> new Reading.Read<>(new Wind.Speed(read.value()), read.unit(), read.remark()));
  }
}
