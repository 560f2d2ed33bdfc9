package fairboil.analysis.layout;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Lengths and lists as findings say them. */
final class Words {

  private Words() {}

  /** {@code 12.3 mm}. */
  static String millimetres(double metres) {
    return String.format(Locale.ROOT, "%.1f mm", metres * 1e3);
  }

  /** {@code hole 3} or {@code holes 3, 5, 6}. */
  static String holes(List<Integer> numbers) {
    return (numbers.size() == 1 ? "hole " : "holes ")
        + numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
  }
}
