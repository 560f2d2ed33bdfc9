package fairboil.reports.print;

import fairboil.ingest.Study;
import fairboil.ingest.choice.Datum;
import fairboil.ingest.choice.Surface;
import fairboil.ingest.sheet.RingsSheet;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A made-up study with something of everything, and a program that prints it into a folder. */
final class Demo {

  private Demo() {}

  static Study study() {
    return Sheets.study()
        .build("K1", "two-wall")
        .build("K2", "two-wall")
        .ring(
            "upper",
            12,
            r ->
                r.put(RingsSheet.WRAP, Sheets.mm(314))
                    .put(RingsSheet.DATUM, Datum.TOP_RIM)
                    .put(RingsSheet.HEIGHT, Sheets.mm(15))
                    .put(RingsSheet.DIAMETER, Sheets.mm(6)))
        .ring(
            "floor",
            6,
            r -> r.put(RingsSheet.SURFACE, Surface.BASE).put(RingsSheet.CIRCLE, Sheets.mm(25)))
        .read();
  }

  public static void main(String[] folder) throws Exception {
    PrintJob job = Prints.of(study(), List.of(Paper.values()));
    for (Printed file : job.files()) {
      Files.write(Path.of(folder[0]).resolve(file.name()), file.pdf());
    }
  }
}
