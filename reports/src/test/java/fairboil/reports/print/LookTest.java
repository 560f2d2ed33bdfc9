package fairboil.reports.print;

import fairboil.ingest.choice.*;
import fairboil.ingest.quantity.*;
import fairboil.ingest.sheet.*;
import java.nio.file.*;
import java.util.*;
import org.junit.jupiter.api.Test;

class LookTest {
  @Test
  void look() throws Exception {
    Sheets s =
        Sheets.study()
            .build("K1", "two-wall")
            .build("K2", "two-wall")
            .build("M1", "one-wall")
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
                r -> r.put(RingsSheet.WRAP, Sheets.mm(900)).put(RingsSheet.HEIGHT, Sheets.mm(187)))
            .ring(
                "tiny",
                40,
                r ->
                    r.put(RingsSheet.WRAP, Sheets.mm(130))
                        .put(RingsSheet.HEIGHT, Sheets.mm(9))
                        .put(RingsSheet.DIAMETER, Sheets.mm(2)))
            .ring(
                "base",
                8,
                r ->
                    r.put(RingsSheet.SURFACE, Surface.BASE)
                        .put(RingsSheet.CIRCLE, Sheets.mm(25))
                        .put(RingsSheet.DIAMETER, Sheets.mm(5))
                        .put(RingsSheet.WRAP, Sheets.mm(314)))
            .ring(
                "base",
                5,
                r ->
                    r.put(RingsSheet.SURFACE, Surface.BASE)
                        .put(RingsSheet.CIRCLE, Sheets.mm(12))
                        .put(RingsSheet.DIAMETER, Sheets.mm(5))
                        .put(RingsSheet.SKIPPED, List.of(2))
                        .put(RingsSheet.START, Quantity.of(15, Unit.DEGREE)))
            .ring(
                "middle",
                1,
                r ->
                    r.put(RingsSheet.SURFACE, Surface.BASE)
                        .put(RingsSheet.CIRCLE, Sheets.mm(0))
                        .put(RingsSheet.DIAMETER, Sheets.mm(5)))
            .ring(
                "floor",
                24,
                r ->
                    r.put(RingsSheet.DESIGN, "drum")
                        .put(RingsSheet.SURFACE, Surface.BASE)
                        .put(RingsSheet.CIRCLE, Sheets.mm(150))
                        .put(RingsSheet.DIAMETER, Sheets.mm(8)));
    Path out = Path.of("/tmp/fbprint");
    Files.createDirectories(out);
    PrintJob job = Prints.of(s.read(), List.of(Paper.A4, Paper.LETTER));
    for (Printed f : job.files()) Files.write(out.resolve(f.name()), f.pdf());
    System.out.println(job);
  }
}
