package fairboil.reports.print;

import fairboil.ingest.choice.*;
import fairboil.ingest.sheet.*;
import java.nio.file.*;
import java.util.*;
import org.junit.jupiter.api.Test;

class LookTest {
  @Test
  void look() throws Exception {
    Sheets s =
        Sheets.study()
            .ring(
                "upper",
                16,
                r ->
                    r.put(RingsSheet.WRAP, Sheets.mm(314))
                        .put(RingsSheet.HEIGHT, Sheets.mm(15))
                        .put(RingsSheet.DIAMETER, Sheets.mm(6))
                        .put(RingsSheet.AIR, Air.SECONDARY))
            .ring(
                "lower",
                10,
                r ->
                    r.put(RingsSheet.WRAP, Sheets.mm(478.5))
                        .put(RingsSheet.SKIPPED, List.of(4, 12))
                        .put(RingsSheet.DATUM, Datum.BOTTOM_RIM)
                        .put(RingsSheet.HEIGHT, Sheets.mm(22)))
            .ring(
                "far",
                48,
                r -> r.put(RingsSheet.WRAP, Sheets.mm(900)).put(RingsSheet.HEIGHT, Sheets.mm(187)));
    Path out = Path.of("/tmp/fbprint");
    Files.createDirectories(out);
    try (Typefaces t = Typefaces.open()) {
      for (Ring ring : s.read().rings()) {
        RingPlan plan = RingPlan.of(ring, new ArrayList<>()).get();
        for (Paper p : Paper.values())
          Files.write(
              out.resolve(ring.name() + "-" + p.slug() + ".pdf"),
              StripFile.of(
                  new Head(p, "Measuring strip: ring " + ring.name(), "made-up"),
                  plan,
                  "builds K1 and K2",
                  t));
      }
    }
  }
}
