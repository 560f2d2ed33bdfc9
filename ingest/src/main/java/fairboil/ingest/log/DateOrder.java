package fairboil.ingest.log;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** What the three parts of a date mean, in the order written. */
enum DateOrder {
  YEAR_MONTH_DAY(0, 1, 2),
  DAY_MONTH_YEAR(2, 1, 0),
  MONTH_DAY_YEAR(2, 0, 1);

  private final int year;
  private final int month;
  private final int day;

  DateOrder(int year, int month, int day) {
    this.year = year;
    this.month = month;
    this.day = day;
  }

  /** The date, or empty if there is none of these parts in this order. */
  Optional<LocalDate> date(StampScanner stamp) {
    int y = stamp.datePart(year);
    int digits = stamp.dateDigits(year);
    if (digits == 1 || digits == 3 || stamp.dateDigits(month) > 2 || stamp.dateDigits(day) > 2) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          LocalDate.of(digits < 4 ? 2000 + y : y, stamp.datePart(month), stamp.datePart(day)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** The orders that a date, as written, allows. A dot between the parts means day first. */
  static Set<DateOrder> allowedBy(StampScanner stamp) {
    Set<DateOrder> allowed = EnumSet.noneOf(DateOrder.class);
    for (DateOrder order : values()) {
      if (order.date(stamp).isPresent()) {
        allowed.add(order);
      }
    }
    boolean yearLast = stamp.dateDigits(0) < 4;
    if (yearLast && (stamp.dateMark() == '.' || stamp.isMonthNamed())) {
      allowed.retainAll(EnumSet.of(DAY_MONTH_YEAR));
    }
    if (yearLast && stamp.dateDigits(2) == 4) {
      allowed.remove(YEAR_MONTH_DAY);
    }
    return allowed;
  }
}
