package fairboil.reports.print;

import fairboil.reports.words.Cautions;
import fairboil.reports.words.Cautions.Caution;
import java.util.List;

/** The cautions, chosen for what a sheet of paper is used for. */
final class Safety {

  private Safety() {}

  /** Those about cutting metal and about holes in the wrong place. */
  static List<String> drilling() {
    return Cautions.POINTS.stream()
        .filter(point -> point.topic().equals("Cutting") || point.topic().startsWith("Holes"))
        .map(Caution::text)
        .toList();
  }

  /** All of them. */
  static void all(Flow flow) {
    flow.points(
        Cautions.POINTS.stream().map(Caution::topic).toList(),
        Cautions.POINTS.stream().map(Caution::text).toList(),
        32,
        Type.SMALL_STRONG,
        Type.SMALL);
    flow.paragraph(Cautions.RULE, Type.SMALL_STRONG);
  }
}
