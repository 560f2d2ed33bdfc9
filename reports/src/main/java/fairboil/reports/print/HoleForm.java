package fairboil.reports.print;

import fairboil.analysis.layout.IntendedRing;
import fairboil.ingest.Study;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.sheet.Build;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.HolesSheet;
import fairboil.ingest.sheet.Ring;
import fairboil.ingest.sheet.RingsSheet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The forms for reading holes: for each build its rings, a row for each hole. */
final class HoleForm {

  private static final double NUMBER = 12;
  private static final double PLACE = 20;
  private static final double ROW = 6.6;

  /** More rows than anybody fills in by hand. */
  private static final int MOST = 1000;

  private static final List<Column<?>> ON_WALL =
      List.of(HolesSheet.ALONG, HolesSheet.GAP, HolesSheet.HEIGHT, HolesSheet.DIAMETER);

  private static final List<Column<?>> ON_BASE =
      List.of(HolesSheet.X, HolesSheet.Y, HolesSheet.ANGLE, HolesSheet.RADIUS, HolesSheet.DIAMETER);

  private final Booklet booklet;
  private final FormHead head;
  private final Study study;
  private final Owners owners;

  private HoleForm(Booklet booklet, FormHead head, Study study) {
    this.booklet = booklet;
    this.head = head;
    this.study = study;
    this.owners = new Owners(study);
  }

  /** The forms of all builds that have rings, or empty if none has. */
  static Optional<byte[]> of(FormHead head, Study study, Typefaces typefaces) {
    Owners owners = new Owners(study);
    List<Build> builds =
        study.builds().stream().filter(build -> !owners.of(build).isEmpty()).toList();
    if (builds.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        Booklet.of(
            head, typefaces, booklet -> builds.forEach(new HoleForm(booklet, head, study)::draw)));
  }

  private void draw(Build build) {
    Flow flow =
        new Flow(
            booklet,
            head,
            "build " + build.key().name(),
            "Read each hole twice, the strip or disc laid on anew. Type a row for each hole and"
                + " reading into holes.csv, with units. On a wall, give along or gap; on a base,"
                + " x and y, or angle and radius.");
    RingWords.blanks(flow, List.of("read by", "date", "read with", "bar as measured (mm)"));
    flow.paragraph(PrintWords.FACTOR, Type.SMALL);
    Map<String, Integer> before = new HashMap<>();
    Undrawn undrawn = Undrawn.of(study, owners.of(build));
    for (Ring ring : owners.of(build)) {
      if (!undrawn.has(ring.name())) {
        ring(flow, ring, before);
      }
    }
    if (!undrawn.isEmpty()) {
      flow.heading("Without a form: " + undrawn.names());
      undrawn
          .sentences("build " + build.key().name())
          .forEach(text -> flow.paragraph(text, Type.BODY));
    }
  }

  private static void ring(Flow flow, Ring ring, Map<String, Integer> before) {
    List<Finding> toldElsewhere = new ArrayList<>();
    Optional<RingPlan> plan = RingPlan.of(ring, toldElsewhere);
    int holes = Math.min(ring.row().get(RingsSheet.HOLES), MOST);
    int first = before.merge(ring.name(), Math.max(holes, 0), Integer::sum) - Math.max(holes, 0);
    flow.heading("Ring " + ring.name());
    plan.ifPresent(told -> flow.paragraph(words(told), Type.SMALL));
    boolean base = IntendedRing.isOnBase(ring);
    List<List<String>> rows = new ArrayList<>();
    List<Column<?>> columns = base ? ON_BASE : ON_WALL;
    for (int hole = 1; hole <= holes; hole++) {
      List<String> row = new ArrayList<>();
      row.add(String.valueOf(first + hole));
      row.add(intended(plan, hole));
      columns.forEach(column -> row.addAll(List.of("", "")));
      rows.add(row);
    }
    flow.table(new Table(columns(columns, flow.width()), ROW, rows));
  }

  private static String words(RingPlan plan) {
    String place = plan.isOnBase() ? "In the base. " : RingWords.height(plan) + " ";
    OptionalDouble wrap = plan.wrap();
    String length = wrap.isPresent() ? "Wrap " + Lengths.both(wrap.getAsDouble()) + "." : "";
    return RingWords.holes(plan) + ". " + place + length;
  }

  private static String intended(Optional<RingPlan> plan, int hole) {
    if (plan.isEmpty()) {
      return "";
    }
    int division = plan.get().intended().used().get(hole - 1) + 1;
    if (plan.get().isOnBase()) {
      return Lengths.angle(plan.get().angle(division));
    }
    OptionalDouble wrap = plan.get().wrap();
    return wrap.isEmpty()
        ? ""
        : Lengths.mm(wrap.getAsDouble() * (division - 1) / plan.get().divisions());
  }

  private static List<Table.Column> columns(List<Column<?>> columns, double width) {
    double each = (width - NUMBER - PLACE) / (2 * columns.size());
    List<Table.Column> heads = new ArrayList<>();
    heads.add(new Table.Column("hole", "", NUMBER));
    boolean base = columns.equals(ON_BASE);
    heads.add(new Table.Column("intended", base ? "angle" : "along, mm", PLACE));
    for (int reading = 1; reading <= 2; reading++) {
      for (Column<?> column : columns) {
        heads.add(new Table.Column(column.name(), "reading " + reading, each));
      }
    }
    return heads;
  }
}
