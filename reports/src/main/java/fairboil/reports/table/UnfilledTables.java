package fairboil.reports.table;

import static fairboil.reports.table.TableColumn.number;
import static fairboil.reports.table.TableColumn.text;

import java.util.List;
import java.util.OptionalDouble;

/**
 * {@code comparisons.csv} and {@code repeatability.csv}: their headers. Nothing compares builds or
 * designs or works out repeatability yet, so that they have no rows.
 */
final class UnfilledTables {

  /** What a row will be made from. */
  private record Nothing() {}

  static final TableSchema<?> COMPARISONS =
      new TableSchema<Nothing>(
          "comparisons.csv",
          "a comparison of two builds or groups in one measure",
          List.of(
              words("measure", "measure that is compared"),
              words("level", "what is compared: builds, designs or a column"),
              words("a", "the one"),
              words("b", "the other"),
              value("difference", "a less b, in the unit of the measure"),
              value("std_error", "its standard error"),
              value("df", "its degrees of freedom"),
              value("ci_low", "lower end of its interval"),
              value("ci_high", "upper end of its interval"),
              value("p_value", "two-sided p-value against no difference"),
              value("p_adjusted", "the same, allowing for how many were compared"),
              words("method", "how it was worked out"),
              words("verdict", "what the interval says")));

  static final TableSchema<?> REPEATABILITY =
      new TableSchema<Nothing>(
          "repeatability.csv",
          "a source of scatter of one measure",
          List.of(
              words("measure", "measure that scatters"),
              words("level", "from run to run, or from build to build"),
              value("sd", "standard deviation, in the unit of the measure"),
              value("ci_low", "lower end of its interval"),
              value("ci_high", "upper end of its interval"),
              value("df", "its degrees of freedom")));

  private UnfilledTables() {}

  private static TableColumn<Nothing> words(String name, String meaning) {
    return text(name, meaning, row -> "");
  }

  private static TableColumn<Nothing> value(String name, String meaning) {
    return number(name, TableUnit.NONE, meaning, row -> OptionalDouble.empty());
  }
}
