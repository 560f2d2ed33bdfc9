package fairboil.reports.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.ingest.sheet.RingsSheet;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class CutsTest {

  @Property(tries = 300)
  void piecesFitAndCoverTheWrapOnce(
      @ForAll @DoubleRange(min = 40, max = 5000) double wrap,
      @ForAll @IntRange(min = 1, max = 40) int holes,
      @ForAll Paper paper) {
    RingPlan plan = plan(wrap, holes);
    StripLayout.Area area = StripFile.area(paper);
    StripLayout layout = StripLayout.of(plan, wrap, area);
    List<Piece> pieces = layout.pieces();
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      assertThat(piece.length()).isPositive().isLessThanOrEqualTo(area.width() - StripLayout.TAB);
      assertThat(piece.y() + layout.width()).isLessThanOrEqualTo(area.top() + area.height());
      if (i > 0) {
        assertThat(piece.from()).isEqualTo(pieces.get(i - 1).to());
      }
    }
    double length = pieces.get(pieces.size() - 1).to() - pieces.get(0).from();
    assertThat(length).isEqualTo(wrap, within(1e-9));
    for (RingMark mark : layout.marks()) {
      assertThat(pieces.stream().filter(piece -> piece.has(mark.along()))).hasSize(1);
      double clear = Math.min(layout.spacing() / 2 - 0.51, 11);
      for (Piece piece : pieces) {
        assertThat(Math.abs(piece.from() - mark.along())).isGreaterThanOrEqualTo(clear);
      }
    }
  }

  private static RingPlan plan(double wrap, int holes) {
    Sheets sheets = Sheets.study().ring("r", holes, r -> r.put(RingsSheet.WRAP, Sheets.mm(wrap)));
    return RingPlan.of(sheets.read().rings().get(0), new ArrayList<>()).orElseThrow();
  }
}
