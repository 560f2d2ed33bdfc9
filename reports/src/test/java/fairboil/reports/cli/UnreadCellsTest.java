package fairboil.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person wrote and the program cannot read is never drawn or judged as if left empty. */
class UnreadCellsTest {

  private static final String HEAD =
      "ring,surface,datum,holes,divisions,skipped,wrap,circle,start,height,diameter\n";
  private static final String GOOD = "upper,wall,bottom rim,4,,,200 mm,,,13 mm,6 mm\n";
  private static final String SAID =
      "rings.csv, line 2, column datum: error: “botom rmi” is not one of the answers here, so this"
          + " row is not used";

  @TempDir Path temp;
  private Path study;

  /** How a command line ended. */
  private record Ended(int status, String out, String err) {}

  private static Ended run(String... typed) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), typed);
    return new Ended(status, out.toString(), err.toString());
  }

  @BeforeEach
  void makeStudy() throws IOException {
    study = Files.createDirectory(temp.resolve("study"));
    write("runs.csv", "run,build\n1,K1\n");
    write("builds.csv", "build,design\nK1,two-wall\n");
  }

  private void write(String file, String text) throws IOException {
    Files.writeString(study.resolve(file), text);
  }

  private Ended print() {
    return run("print", study.toString(), "--out", temp.resolve("prints").toString());
  }

  private String text(String file) throws IOException {
    Path pdf = temp.resolve("prints").resolve(file);
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  @Test
  void aRingThatCanBeReadIsDrawnAndNothingIsSaid() throws IOException {
    write("rings.csv", HEAD + GOOD);
    Ended ended = print();
    assertThat(ended.status()).isZero();
    assertThat(ended.err()).isEqualToIgnoringNewLines("Nothing to find fault with.");
    for (String paper : new String[] {"a4", "letter"}) {
      assertThat(text("strip-upper-" + paper + ".pdf"))
          .contains("this edge along the bottom rim", "Piece 1 of")
          .doesNotContain("Not drawn", "assumed");
    }
  }

  @Test
  void aMisspeltDatumIsNotTheUsualOne() throws IOException {
    write("rings.csv", HEAD + GOOD.replace("bottom rim", "botom rmi"));
    Ended ended = print();
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.err())
        .contains(SAID, "ring upper is not drawn, because this cell could not be read", "2 errors");
    for (String paper : new String[] {"a4", "letter"}) {
      assertThat(text("strip-upper-" + paper + ".pdf"))
          .contains("Not drawn: ring upper for build K1", "nothing was guessed", SAID)
          .doesNotContain("this edge along", "Piece 1 of", "top rim (");
      assertThat(text("hole-form-" + paper + ".pdf"))
          .contains("Without a form: ring upper", SAID)
          .doesNotContain("from the top rim");
    }
  }

  @Test
  void everyCellOfTheGeometryCounts() throws IOException {
    String[] given = {"wall", "top rim", "4", "4", "", "200 mm", "", "", "13 mm", "6 mm"};
    String[] unread = {"roof", "rmi", "four", "4x", "one", "200", "5", "30", "13..5 mm", "6"};
    for (int column = 0; column < given.length; column++) {
      String[] cells = given.clone();
      cells[column] = unread[column];
      write("rings.csv", HEAD + "upper," + String.join(",", cells) + "\n");
      Ended ended = print();
      assertThat(ended.status()).as(unread[column]).isEqualTo(1);
      assertThat(ended.err()).contains("ring upper is not drawn");
      assertThat(text("strip-upper-a4.pdf"))
          .as(unread[column])
          .contains("Not drawn: ring upper")
          .doesNotContain("Piece 1 of");
    }
  }

  @Test
  void aDatumThatWasNotGivenIsSaidToBeAssumed() throws IOException {
    write("rings.csv", HEAD + GOOD.replace("bottom rim", ""));
    Ended ended = print();
    assertThat(ended.status()).isZero();
    assertThat(ended.err())
        .contains("rings.csv, line 2, column datum: warning: ring upper has a height but no datum");
    assertThat(text("strip-upper-a4.pdf"))
        .contains("this edge along the top rim (assumed: no datum given)")
        .contains("from the top rim (assumed: no datum given)");
  }

  @Test
  void aDiscLeavesOutWhatCouldNotBeReadAndSaysSo() throws IOException {
    write(
        "rings.csv",
        HEAD + "floor,base,,6,,,,25 mm,30,,5 mm\n" + "centre,base,,1,,,,0 mm,,,6 mm\n");
    Ended ended = print();
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.err()).contains("rings.csv, line 2, column start: error: “30” has no unit");
    assertThat(text("base-disc-a4.pdf"))
        .contains("NOT DRAWN: ring floor, which could not be read", "ring centre", "column start")
        .doesNotContain("ring floor, 6 holes", "25.0 mm");
    write("rings.csv", HEAD + "floor,base,,6,,,,25 mm,30,,5 mm\n");
    assertThat(print().status()).isEqualTo(1);
    assertThat(text("base-disc-a4.pdf"))
        .contains("Not drawn: ring floor", "column start")
        .doesNotContain("protractor", "Intended places");
  }

  /** Rows of one name on a base number their holes on: the second cannot do without the first. */
  @Test
  void circlesOfOneRingAreDrawnTogetherOrNotAtAll() throws IOException {
    write(
        "rings.csv",
        HEAD
            + "floor,base,,six,,,,25 mm,,,5 mm\n"
            + "floor,base,,4,,,,10 mm,,,5 mm\n"
            + "centre,base,,1,,,,0 mm,,,6 mm\n");
    assertThat(print().status()).isEqualTo(1);
    assertThat(text("base-disc-a4.pdf"))
        .contains("ring centre")
        .doesNotContain("4 holes of", "radius 10.0 mm");
  }

  /** A row for one build goes before one for its design, even if it cannot be read. */
  @Test
  void aRowThatCannotBeReadIsNotReplacedByAnother() throws IOException {
    write(
        "rings.csv",
        """
        ring,build,design,datum,holes,wrap,height
        upper,,two-wall,top rim,4,200 mm,13 mm
        upper,K1,,botom rmi,8,200 mm,13 mm
        """);
    assertThat(print().status()).isEqualTo(1);
    assertThat(text("hole-form-a4.pdf"))
        .contains("Without a form: ring upper")
        .doesNotContain("4 holes");
    assertThat(text("strip-upper-k1-a4.pdf")).contains("Not drawn: ring upper for build K1");
  }

  @Test
  void aSettingThatTheRunSheetFollowsIsSaid() throws IOException {
    write("study.csv", "setting,value\nstopwatch started at,match\n");
    Ended ended = print();
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.err()).contains("so the usual value, lit, was used");
    assertThat(text("run-sheet-a4.pdf"))
        .contains("Mend this before you use the sheet", "“match” is not one of the answers here");
  }

  @Test
  void holesAreNotJudgedAgainstAGuess() throws IOException {
    String holes =
        """
        build,ring,hole,along,height
        K1,upper,1,0 mm,13 mm
        K1,upper,2,50 mm,14 mm
        K1,upper,3,101 mm,13 mm
        K1,upper,4,150 mm,13 mm
        """;
    write("holes.csv", holes);
    write("rings.csv", HEAD + GOOD);
    Path out = temp.resolve("report");
    assertThat(run("report", study.toString(), "--out", out.toString()).err())
        .doesNotContain("could not be read");
    assertThat(out.resolve("tables/hole_error.csv")).content().contains("upper");
    write("rings.csv", HEAD + GOOD.replace("bottom rim", "botom rmi"));
    Ended ended = run("report", study.toString(), "--out", out.toString());
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.err())
        .contains(SAID, "the holes measured in ring upper are not judged")
        .doesNotContain("no ring upper");
    assertThat(out.resolve("tables/hole_error.csv")).content().doesNotContain("upper");
    assertThat(out.resolve("index.html")).content().doesNotContain("No holes were measured");
    assertThat(run("check", study.toString()).out())
        .contains(SAID, "the holes measured in ring upper are not judged");
  }

  @Test
  void aClaimOfWhichAPartCannotBeReadIsNotTested() throws IOException {
    write("runs.csv", "run,build,water\n1,K1,1 kg\n2,K1,1 kg\n3,K1,1 kg\n");
    write("stopwatch.csv", "run,pot on,boil\n1,0:00,8:15\n2,0:00,8:40\n3,0:00,8:01\n");
    write(
        "claims.csv",
        """
        claim,text,measure,relation,value,holds for
        C1,It boils.,boil time,at most,9 min,most burns ever
        """);
    Path out = temp.resolve("report");
    Ended ended = run("report", study.toString(), "--out", out.toString());
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.err()).contains("claims.csv, line 2, column holds for: error");
    assertThat(out.resolve("tables/claims.csv"))
        .content()
        .contains("“most burns ever” in its row could not be read")
        .doesNotContain("supported");
  }

  @Test
  void aPlanTellsOfASettingThatCouldNotBeRead() throws IOException {
    write("study.csv", "setting,value\nconfidence,ninety\n");
    Path out = temp.resolve("plan");
    Ended ended =
        run(
            "plan",
            study.toString(),
            "--burn-sd",
            "10 K",
            "--stove-sd",
            "20 K",
            "--difference",
            "40 K",
            "--out",
            out.toString());
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.err())
        .contains("study.csv, line 2, column value: error: confidence:")
        .contains("so the usual value, 95 %, was used", "2 errors");
    assertThat(out.resolve("index.html")).content().contains("the usual value, 95 %, was used");
  }

  @Test
  void aGroupsCopyKeepsWhatCouldNotBeRead() throws IOException {
    write("rings.csv", HEAD + GOOD.replace("bottom rim", "botom rmi"));
    Path copy = temp.resolve("copy");
    Ended ended = run("new", copy.toString(), "--from", study.toString(), "--site", "North");
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.err()).contains(SAID);
    assertThat(Files.readString(copy.resolve("rings.csv"))).contains(",botom rmi,");
  }
}
