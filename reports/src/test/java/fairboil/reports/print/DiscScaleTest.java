package fairboil.reports.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.ingest.choice.Surface;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.RingsSheet;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A base disc measured as if by a rule on the paper: rendered at 600 dpi. */
class DiscScaleTest {

  private static final Offset<Double> TENTH = within(0.1);
  private static final double RADIUS = 40;

  /** Eight holes, two of them level with each other above the centre, two beside it. */
  private static Sheets base() {
    return Sheets.study()
        .ring(
            "floor",
            8,
            r ->
                r.put(RingsSheet.SURFACE, Surface.BASE)
                    .put(RingsSheet.CIRCLE, Sheets.mm(RADIUS))
                    .put(RingsSheet.WRAP, Sheets.mm(380))
                    .put(RingsSheet.DIAMETER, Sheets.mm(6))
                    .put(RingsSheet.START, Quantity.of(67.5, Unit.DEGREE)));
  }

  private static byte[] pdf(Paper paper) {
    return Prints.of(base().read(), paper).files().stream()
        .filter(file -> file.name().startsWith("base-disc"))
        .findFirst()
        .orElseThrow()
        .pdf();
  }

  /**
   * The chord between neighbours of a bolt circle is 2 R sin(180° / n); handbooks tabulate sin(180°
   * / 8) as .382683 (common practice).
   */
  @ParameterizedTest
  @EnumSource(Paper.class)
  void holesAreAChordApart(Paper paper) {
    double chord = 2 * RADIUS * 0.382683;
    Page page = Page.of(pdf(paper), 0);
    double x0 = centreX(paper);
    double y0 = centreY(paper);
    double far = RADIUS * Math.cos(Math.PI / 8);
    double half = chord / 2 + 6;
    List<Double> level = page.linesAcross(y0 - far - 0.05, 0.1, x0 - half, x0 + half);
    assertThat(middleOfLast(level) - middleOfFirst(level)).isEqualTo(chord, TENTH);
    List<Double> upright = page.linesDown(x0 + far - 0.05, 0.1, y0 - half, y0 + half);
    assertThat(middleOfLast(upright) - middleOfFirst(upright)).isEqualTo(chord, TENTH);
  }

  /** A scan through the middle of a hole meets its outline, its cross and its outline again. */
  private static double middleOfFirst(List<Double> lines) {
    assertThat(lines.get(2) - lines.get(0)).as("diameter").isEqualTo(6, TENTH);
    return (lines.get(0) + lines.get(2)) / 2;
  }

  private static double middleOfLast(List<Double> lines) {
    int last = lines.size() - 1;
    assertThat(lines.get(last) - lines.get(last - 2)).as("diameter").isEqualTo(6, TENTH);
    return (lines.get(last) + lines.get(last - 2)) / 2;
  }

  @Test
  void rimIsWhatTheWrapMakesIt() {
    Page page = Page.of(pdf(Paper.A4), 0);
    double x0 = centreX(Paper.A4);
    double y = centreY(Paper.A4) + 0.8;
    List<Double> lines = page.linesAcross(y, 0.1, x0 - 75, x0 + 75);
    double diameter = lines.get(lines.size() - 1) - lines.get(0);
    assertThat(diameter).isEqualTo(380 / Math.PI, TENTH);
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void barsLieBothWays(Paper paper) {
    Page page = Page.of(pdf(paper), 0);
    double below = paper.longSide() - Booklet.MARGIN - Booklet.FOOT - CheckBars.HEIGHT + 3;
    List<Double> across = page.linesAcross(below + 0.05, 0.15, 5, paper.shortSide() - 5);
    assertThat(across).hasSize(2);
    assertThat(across.get(1) - across.get(0)).isEqualTo(100, TENTH);
    List<Double> down = page.linesDown(Booklet.MARGIN + 1.05, 0.15, 30, 250);
    assertThat(down.get(1) - down.get(0)).isEqualTo(100, TENTH);
    assertThat(down.get(3) - down.get(2)).isEqualTo(101.6, TENTH);
  }

  @Test
  void discLargerThanThePaperIsCutIntoEqualPieces() {
    List<RingPlan> plans = new ArrayList<>();
    Sheets.study()
        .ring(
            "drum",
            12,
            r -> r.put(RingsSheet.SURFACE, Surface.BASE).put(RingsSheet.CIRCLE, Sheets.mm(200)))
        .read()
        .rings()
        .forEach(ring -> RingPlan.of(ring, new ArrayList<>()).ifPresent(plans::add));
    Disc disc = Disc.of(plans, new ArrayList<>()).orElseThrow();
    DiscTiles tiles = DiscFile.tiles(disc, Paper.LETTER);
    DiscTiles.Row across = tiles.across();
    DiscTiles.Row down = tiles.down();
    assertThat(tiles.tiles()).hasSize(across.pieces() * down.pieces()).hasSizeGreaterThan(4);
    for (DiscTiles.Tile tile : tiles.tiles()) {
      assertThat(tiles.centreX(tile) + tile.column() * tiles.width())
          .isEqualTo(across.centre(), within(1e-9));
    }
    for (DiscTiles.Row row : List.of(across, down)) {
      assertThat(row.centre()).isGreaterThanOrEqualTo(disc.radius());
      assertThat(row.pieces() * row.length() - row.centre()).isGreaterThanOrEqualTo(disc.radius());
    }
  }

  /** Of a hole in the middle of two pieces each piece would show one half. */
  @Test
  void joinsKeepClearOfTheHoles() {
    DiscTiles.Row row = DiscTiles.Row.of(100, 173, List.of(-70.0, 0.0, 70.0));
    assertThat(row.pieces()).isEqualTo(2);
    assertThat(row.clearance(List.of(-70.0, 0.0, 70.0))).isGreaterThanOrEqualTo(12);
    assertThat(row.centre()).isBetween(100.0, 2 * 161 - 100.0);
    // as far as the paper allows, where it is nearly full
    DiscTiles.Row full = DiscTiles.Row.of(158, 173, List.of(0.0));
    assertThat(full.clearance(List.of(0.0))).isBetween(1.5, 3.0);
  }

  /** The disc fills two pieces to the last millimetre, so the join runs through its centre hole. */
  @Test
  void aHoleOnAJoinIsWholeOnThePieceWithTheTab() {
    Paper paper = Paper.A4;
    double room = paper.shortSide() - 2 * Booklet.MARGIN - 10;
    double radius = room - DiscTiles.TAB - 0.5;
    Sheets sheets =
        Sheets.study()
            .ring(
                "floor",
                1,
                r ->
                    r.put(RingsSheet.SURFACE, Surface.BASE)
                        .put(RingsSheet.CIRCLE, Sheets.mm(0))
                        .put(RingsSheet.WRAP, Sheets.mm(2 * Math.PI * radius))
                        .put(RingsSheet.DIAMETER, Sheets.mm(8)));
    RingPlan plan = RingPlan.of(sheets.read().rings().get(0), new ArrayList<>()).orElseThrow();
    Disc disc = Disc.of(List.of(plan), new ArrayList<>()).orElseThrow();
    DiscTiles tiles = DiscFile.tiles(disc, paper);
    assertThat(tiles.across().clearance(List.of(0.0))).isLessThan(0.1);
    byte[] pdf =
        Prints.of(sheets.read(), paper).files().stream()
            .filter(file -> file.name().startsWith("base-disc"))
            .findFirst()
            .orElseThrow()
            .pdf();
    List<DiscTiles.Tile> all = tiles.tiles();
    int index =
        all.indexOf(
            all.stream()
                .filter(tile -> tile.column() == 0)
                .filter(tile -> tiles.centreY(tile) > 0 && tiles.centreY(tile) < tiles.height())
                .findFirst()
                .orElseThrow());
    double x = DiscFile.left(tiles, paper) + tiles.centreX(all.get(index));
    double y = DiscFile.top() + tiles.centreY(all.get(index));
    List<Double> lines = Page.of(pdf, index).linesAcross(y + 0.7, 0.2, x - 4.5, x + 4.5);
    double chord = 2 * Math.sqrt(4 * 4 - 0.8 * 0.8);
    assertThat(lines.get(lines.size() - 1) - lines.get(0)).isEqualTo(chord, TENTH);
  }

  private static double centreX(Paper paper) {
    DiscTiles tiles = tiles(paper);
    return DiscFile.left(tiles, paper) + tiles.width() / 2;
  }

  private static double centreY(Paper paper) {
    return DiscFile.top() + tiles(paper).height() / 2;
  }

  private static DiscTiles tiles(Paper paper) {
    RingPlan plan = RingPlan.of(base().read().rings().get(0), new ArrayList<>()).orElseThrow();
    return DiscFile.tiles(Disc.of(List.of(plan), new ArrayList<>()).orElseThrow(), paper);
  }
}
