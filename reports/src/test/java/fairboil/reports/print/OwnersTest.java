package fairboil.reports.print;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.ingest.choice.Surface;
import fairboil.ingest.sheet.RingsSheet;
import java.util.List;
import org.junit.jupiter.api.Test;

class OwnersTest {

  private static final Owners OWNERS =
      new Owners(
          Sheets.study()
              .build("K1", "two-wall")
              .build("K2", "two-wall")
              .build("M1", "one-wall")
              .ring("upper", 16, r -> r)
              .ring("upper", 12, r -> r.put(RingsSheet.DESIGN, "two-wall"))
              .ring("upper", 8, r -> r.put(RingsSheet.BUILD, "K2"))
              .ring("lower", 8, r -> r.put(RingsSheet.DESIGN, "drawn only"))
              .ring("floor", 6, r -> r.put(RingsSheet.SURFACE, Surface.BASE))
              .ring("middle", 1, r -> r.put(RingsSheet.SURFACE, Surface.BASE))
              .ring(
                  "floor",
                  9,
                  r -> r.put(RingsSheet.SURFACE, Surface.BASE).put(RingsSheet.DESIGN, "drawn only"))
              .read());

  @Test
  void theClosestRowOfARingIsTheOneOfABuild() {
    assertThat(OWNERS.walls())
        .extracting(Owners.Group::words)
        .containsExactly("build M1", "design two-wall (build K1)", "build K2", "design drawn only");
  }

  @Test
  void ringsOnOneBaseShareOneDisc() {
    List<Owners.Group> bases = OWNERS.bases();
    assertThat(bases)
        .extracting(Owners.Group::words)
        .containsExactly("builds K1, K2 and M1", "design drawn only");
    assertThat(bases.get(0).rings()).hasSize(2);
  }
}
