package fairboil.reports.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.ingest.choice.Datum;
import fairboil.ingest.sheet.RingsSheet;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A strip measured as if by a rule on the paper: rendered at 600 dpi. */
class StripScaleTest {

  private static final Offset<Double> TENTH = within(0.1);

  private static Sheets longRing() {
    return Sheets.study()
        .ring(
            "upper",
            36,
            r ->
                r.put(RingsSheet.WRAP, Sheets.mm(1010.3))
                    .put(RingsSheet.HEIGHT, Sheets.mm(18))
                    .put(RingsSheet.DIAMETER, Sheets.mm(6)));
  }

  private static byte[] strip(Sheets sheets, Paper paper) {
    return Prints.of(sheets.read(), paper).files().stream()
        .filter(file -> file.name().startsWith("strip-"))
        .findFirst()
        .orElseThrow()
        .pdf();
  }

  /** 4 in are 101.6 mm: an inch is 25.4 mm by definition (NIST SP 811). */
  @ParameterizedTest
  @EnumSource(Paper.class)
  void barsMeasureWhatTheySay(Paper paper) {
    Page page = Page.of(strip(longRing(), paper), 0);
    double y = paper.shortSide() - Booklet.MARGIN - Booklet.FOOT - CheckBars.HEIGHT + 3;
    List<Double> ends = page.linesAcross(y + 0.05, 0.15, 5, paper.longSide() - 5);
    assertThat(ends).hasSize(4);
    assertThat(ends.get(1) - ends.get(0)).isEqualTo(100, TENTH);
    assertThat(ends.get(3) - ends.get(2)).isEqualTo(101.6, TENTH);
  }

  /** Joined by their edges, the pieces are one strip as long as the wrap, and no hole is lost. */
  @ParameterizedTest
  @EnumSource(Paper.class)
  void piecesJoinWithoutLoss(Paper paper) {
    byte[] pdf = strip(longRing(), paper);
    StripLayout layout = layout(longRing(), paper);
    List<Double> holes = new ArrayList<>();
    double joined = 0;
    for (Piece piece : layout.pieces()) {
      Page page = Page.of(pdf, piece.page());
      List<Double> lines = page.linesAcross(piece.y() + 6, 6.4, 5, paper.longSide() - 5);
      double edge = lines.get(0);
      double join = lines.get(lines.size() - 2);
      for (double line : lines.subList(1, lines.size() - 2)) {
        holes.add(joined + line - edge);
      }
      joined += join - edge;
    }
    assertThat(layout.pieces()).hasSizeGreaterThan(3);
    assertThat(joined).isEqualTo(1010.3, within(0.1 * layout.pieces().size()));
    assertThat(holes).hasSize(36);
    for (int i = 1; i < holes.size(); i++) {
      assertThat(holes.get(i) - holes.get(i - 1)).as("gap " + i).isEqualTo(1010.3 / 36, TENTH);
    }
  }

  @Test
  void holesLieAtTheirHeightFromTheRim() {
    for (Datum datum : Datum.values()) {
      Sheets sheets =
          Sheets.study()
              .ring(
                  "upper",
                  8,
                  r ->
                      r.put(RingsSheet.WRAP, Sheets.mm(250))
                          .put(RingsSheet.DATUM, datum)
                          .put(RingsSheet.HEIGHT, Sheets.mm(23.4)));
      Piece piece = layout(sheets, Paper.A4).pieces().get(0);
      Page page = Page.of(strip(sheets, Paper.A4), 0);
      // Beside the line of the first division only the arms of its cross are dark.
      List<Double> lines = page.linesDown(piece.x(0) + 1, 0.6, piece.y() - 1, piece.y() + 60);
      double rim = datum == Datum.TOP_RIM ? lines.get(0) : lines.get(lines.size() - 1);
      assertThat(lines)
          .as(datum.label())
          .anySatisfy(line -> assertThat(Math.abs(line - rim)).isEqualTo(23.4, TENTH));
    }
  }

  @Test
  void scalesCountMillimetresAndInchesFromDivisionOne() {
    Sheets sheets = Sheets.study().ring("r", 2, r -> r.put(RingsSheet.WRAP, Sheets.mm(160)));
    Piece piece = layout(sheets, Paper.A4).pieces().get(0);
    Page page = Page.of(strip(sheets, Paper.A4), 0);
    double edge = piece.y() + 28;
    List<Double> divisions = page.linesAcross(piece.y() + 4, 4, 5, piece.x(140));
    double zero = divisions.get(1);
    // Ticks of whole centimetres are the only ones that reach 3.6 mm from the edge.
    List<Double> centimetres = page.linesAcross(edge - 3.8, 0.3, zero + 5, zero + 75);
    assertThat(centimetres).hasSize(7);
    for (int i = 0; i < 7; i++) {
      assertThat(centimetres.get(i) - zero).isEqualTo(10.0 * (i + 1), TENTH);
    }
    List<Double> inches = page.linesAcross(edge - 10.8, 0.3, zero + 5, zero + 78);
    assertThat(inches).hasSize(3);
    for (int i = 0; i < 3; i++) {
      assertThat(inches.get(i) - zero).isEqualTo(25.4 * (i + 1), TENTH);
    }
  }

  @Test
  void skippedDivisionsAreMarkedAndKeepTheirNumber() {
    Sheets sheets =
        Sheets.study()
            .ring(
                "r",
                4,
                r -> r.put(RingsSheet.WRAP, Sheets.mm(240)).put(RingsSheet.SKIPPED, List.of(2, 5)));
    byte[] pdf = strip(sheets, Paper.A4);
    assertThat(Page.text(pdf)).contains("2 no hole", "5 no hole", "(2 and 5 skipped)", "hole 4");
  }

  /** 86.5 mm are 3.4055 in, between 3 12/32 and 3 14/32. */
  @Test
  void placesAreInMillimetresAndInFractionsOfAnInch() {
    Sheets sheets = Sheets.study().ring("r", 4, r -> r.put(RingsSheet.WRAP, Sheets.mm(346)));
    assertThat(Page.text(strip(sheets, Paper.A4))).contains("86.5 3 13/32", "173.0 6 13/16");
  }

  @Test
  void heightBeyondTheStripIsTold() {
    Sheets sheets =
        Sheets.study()
            .ring(
                "r",
                4,
                r -> r.put(RingsSheet.WRAP, Sheets.mm(240)).put(RingsSheet.HEIGHT, Sheets.mm(187)));
    assertThat(Page.text(strip(sheets, Paper.A4)))
        .contains("187.0 mm (7.362 in) from the top rim", "Draw the line of the holes");
  }

  private static StripLayout layout(Sheets sheets, Paper paper) {
    RingPlan plan = RingPlan.of(sheets.read().rings().get(0), new ArrayList<>()).orElseThrow();
    return StripLayout.of(plan, plan.wrap().orElseThrow(), StripFile.area(paper));
  }
}
