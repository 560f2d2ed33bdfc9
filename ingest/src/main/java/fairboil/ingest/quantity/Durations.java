package fairboil.ingest.quantity;

import fairboil.ingest.finding.Argument;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads elapsed times with colons: {@code 5:43}, {@code 1:22.3}, {@code 0:05:43}. */
final class Durations {

  private static final Pattern TWO =
      Pattern.compile("(\\d{1,4}):(\\d{1,2}(?:[.,]\\d{1,9})?)(?: ?(?:m|mins?|minutes?)\\.?)?");
  private static final Pattern THREE =
      Pattern.compile("(\\d{1,4}):(\\d{1,2}):(\\d{1,2}(?:[.,]\\d{1,9})?)");
  private static final Pattern THOUSANDTHS = Pattern.compile("(\\d{1,4}):(\\d{1,2}):(\\d{3})");
  private static final Pattern FOUR =
      Pattern.compile("(\\d{1,4}):(\\d{1,2}):(\\d{1,2}):(\\d{1,3})");

  private Durations() {}

  /** A tidy text that starts as digits and a colon. */
  static Reading<Amount> colons(String tidy) {
    Matcher two = TWO.matcher(tidy);
    Matcher three = THREE.matcher(tidy);
    Matcher thousandths = THOUSANDTHS.matcher(tidy);
    Matcher four = FOUR.matcher(tidy);
    if (tidy.equals("0:0")) {
      return new Reading.Refused<>(
          ReadingSays.START_OR_NEVER.with(Argument.cell(tidy)), ReadingSays.ZERO_OR_EMPTY);
    }
    if (two.matches()) {
      return sum(tidy, "0", two.group(1), two.group(2));
    }
    if (three.matches()) {
      return sum(tidy, three.group(1), three.group(2), three.group(3));
    }
    if (thousandths.matches()) {
      return thousandths(tidy, thousandths);
    }
    if (four.matches() && four.group(4).length() == 3) {
      return sum(tidy, four.group(1), four.group(2), four.group(3) + "." + four.group(4));
    }
    return new Reading.Refused<>(
        ReadingSays.NO_TIME.with(Argument.cell(tidy)), ReadingSays.AS_TIME);
  }

  // A last part above 59 cannot be seconds.
  private static Reading<Amount> thousandths(String tidy, Matcher matcher) {
    if (Integer.parseInt(matcher.group(3)) < 60) {
      return new Reading.Refused<>(
          ReadingSays.THOUSANDTHS_OR_SECONDS.with(Argument.cell(tidy)),
          ReadingSays.AS_THOUSANDTHS.with(
              Argument.name(matcher.group(1)),
              Argument.name(matcher.group(2)),
              Argument.name(matcher.group(3))));
    }
    return sum(tidy, "0", matcher.group(1), matcher.group(2) + "." + matcher.group(3))
        .then(
            read ->
                new Reading.Read<>(
                    read.value(), read.unit(), Optional.of(ReadingSays.THOUSANDTHS)));
  }

  private static Reading<Amount> sum(String tidy, String hours, String minutes, String seconds) {
    String plain = seconds.replace(',', '.');
    double second = Double.parseDouble(plain);
    double minute = Double.parseDouble(minutes);
    boolean hasHours = !hours.equals("0") || tidy.indexOf(':') != tidy.lastIndexOf(':');
    if (second >= 60 || (hasHours && minute >= 60)) {
      return new Reading.Refused<>(
          ReadingSays.SIXTY_OR_MORE.with(Argument.cell(tidy)), ReadingSays.CHECK_TIME);
    }
    double total = Double.parseDouble(hours) * 3600 + minute * 60 + second;
    Amount amount = new Amount(total, WrittenNumber.step(plain), Optional.of(Unit.SECOND));
    return new Reading.Read<>(amount, amount.unit(), Optional.empty());
  }
}
