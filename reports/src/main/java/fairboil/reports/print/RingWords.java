package fairboil.reports.print;

import fairboil.ingest.sheet.RingsSheet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What is said of a ring. */
final class RingWords {

  private RingWords() {}

  /** {@code 16 holes of 6.0 mm (0.236 in) on 18 divisions (4 and 12 skipped)}. */
  static String holes(RingPlan plan) {
    String holes = plan.holes() == 1 ? "1 hole" : plan.holes() + " holes";
    OptionalDouble diameter = plan.diameter();
    String size = diameter.isPresent() ? " of " + Lengths.both(diameter.getAsDouble()) : "";
    String divisions =
        plan.divisions() == 1 ? " on 1 division" : " on " + plan.divisions() + " divisions";
    return holes + size + divisions + skipped(plan);
  }

  private static String skipped(RingPlan plan) {
    List<String> skipped =
        IntStream.rangeClosed(1, plan.divisions())
            .filter(division -> plan.holeOn(division).isEmpty())
            .mapToObj(String::valueOf)
            .toList();
    if (skipped.isEmpty()) {
      return "";
    }
    return " (" + (skipped.size() > 12 ? skipped.size() + "" : listed(skipped)) + " skipped)";
  }

  /** Where the ring is on the wall. */
  static String height(RingPlan plan) {
    OptionalDouble height = plan.height();
    return height.isEmpty()
        ? "No height was told: draw the line of the holes where the plan has it."
        : "Middle of the holes "
            + Lengths.both(height.getAsDouble())
            + " from the "
            + plan.rim()
            + ".";
  }

  /** What the air through the ring is for, if told: {@code , secondary air}. */
  static String air(RingPlan plan) {
    return plan.ring()
        .row()
        .value(RingsSheet.AIR)
        .map(air -> ", " + air.label() + " air")
        .orElse("");
  }

  /** For which builds or design a ring is. */
  static String owners(List<String> builds, Optional<String> design) {
    String designed = design.map(name -> "design " + name).orElse("");
    if (builds.isEmpty()) {
      return designed.isEmpty() ? "any build" : designed;
    }
    String named = (builds.size() == 1 ? "build " : "builds ") + fewOf(builds);
    return designed.isEmpty() ? named : designed + " (" + named + ")";
  }

  private static String fewOf(List<String> names) {
    return names.size() <= 8
        ? listed(names)
        : String.join(", ", names.subList(0, 7)) + " and " + (names.size() - 7) + " more";
  }

  static String listed(List<String> names) {
    return names.size() == 1
        ? names.get(0)
        : names.stream().limit(names.size() - 1L).collect(Collectors.joining(", "))
            + " and "
            + names.get(names.size() - 1);
  }

  /** Room to write down what the bar measured. */
  static void corrections(Flow flow) {
    blanks(flow, List.of("bar as measured (mm)", "by", "date"));
  }

  /** A line of blanks to fill in. */
  static void blanks(Flow flow, List<String> names) {
    double top = flow.take(9);
    Canvas page = flow.page();
    double base = top + 6;
    double words = names.stream().mapToDouble(n -> page.lettering().width(n, Type.SMALL)).sum();
    double room = (flow.width() - words) / names.size();
    double x = flow.left();
    for (String name : names) {
      page.text(name, x, base, Type.SMALL, Canvas.Side.LEFT);
      double from = x + page.lettering().width(name, Type.SMALL) + 2;
      x += page.lettering().width(name, Type.SMALL) + room;
      page.line(from, base + 0.5, x - 3, base + 0.5, Pen.RULE);
    }
  }
}
