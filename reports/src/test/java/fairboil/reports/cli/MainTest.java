package fairboil.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.EOFException;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is typed, what is said and how it ends: from 0 done to 4 not written. */
class MainTest {

  @TempDir private Path temp;

  private record Ended(int status, String out, String err) {}

  @Test
  void helpAndVersionGoToTheOutput() {
    assertThat(run("--help").out()).contains("5 done, but a fault of the program");
    assertThat(run("--help").out()).contains("new", "check", "report", "print", "carbon monoxide");
    assertThat(run("report", "--help").out()).contains("--out", "Example:");
    assertThat(run("--version")).satisfies(e -> assertThat(e.out()).startsWith("fairboil "));
  }

  @Test
  void wrongUsageIsOneSentence() {
    for (String[] typed : new String[][] {{}, {"bake"}, {"report", "x"}, {"check"}}) {
      Ended ended = run(typed);
      assertThat(ended.status()).isEqualTo(2);
      assertThat(ended.err()).startsWith("fairboil: ").doesNotContain("Exception");
      assertThat(ended.out()).isEmpty();
    }
  }

  @Test
  void aMistypedCommandIsToldTheLikelyOne() {
    assertThat(run("reprt", "study").err()).contains("“reprt”", "did you mean report");
    assertThat(run("check", "study", "--frob").err()).contains("“--frob” is no command or option");
  }

  @Test
  void eachCommandAloneAnswersForItself() {
    for (String command : new String[] {"new", "check", "report", "plan", "print"}) {
      assertThat(run(command, "--help").out()).startsWith("Usage: fairboil " + command);
      assertThat(run("--help").out()).contains("  " + command + " ");
    }
  }

  @Test
  void aFolderThatIsNoStudyIsSaidToBe() {
    Ended ended = run("check", temp.resolve("nowhere").toString());
    assertThat(ended.status()).isEqualTo(3);
    assertThat(ended.err()).contains("there is no such folder");
  }

  /** An output that does what nobody expects of one. */
  private static final class Broken extends StringWriter {
    @Override
    public void write(String text, int from, int length) {
      throw new IllegalStateException("unforeseen");
    }
  }

  @Test
  void aCrashOutsideOfAllPartsIsASentenceAndATraceInAFile() throws IOException {
    String study = temp.resolve("study").toString();
    assertThat(run("new", study).status()).isZero();
    StringWriter err = new StringWriter();
    int status = Main.run(new PrintWriter(new Broken()), new PrintWriter(err), "check", study);
    assertThat(status).isEqualTo(4);
    assertThat(err.toString().lines()).hasSize(1);
    String said = err.toString().strip();
    assertThat(said).startsWith("fairboil: the program failed at the whole of “check”");
    Path trace = Path.of(said.substring(said.indexOf(" is in ") + 7, said.length() - 1));
    assertThat(trace).content().contains("IllegalStateException: unforeseen");
    Files.delete(trace);
  }

  @Test
  void newIsCheckedAndNeverOverwrites() {
    String study = temp.resolve("study").toString();
    assertThat(run("new", study).status()).isZero();
    Ended check = run("check", study);
    assertThat(check.status()).isEqualTo(1);
    assertThat(check.out()).contains("there are no burns in runs.csv yet");
    Ended again = run("new", study);
    assertThat(again.status()).isEqualTo(4);
    assertThat(again.err()).contains("holds files already");
  }

  @Test
  void aReportOfOneRunIsWrittenWithItsFaultsTold() throws IOException {
    Path study = Files.createDirectory(temp.resolve("study"));
    Files.writeString(study.resolve("runs.csv"), "run,build,water\n1,A,1000\n");
    Files.writeString(study.resolve("stopwatch.csv"), "run,pot on,boil\n1,0:00,8:15\n");
    Path out = temp.resolve("report");
    Ended ended = run("report", study.toString(), "--out", out.toString());
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.err()).contains("runs.csv, line 2, column water: error: “1000” has no unit");
    assertThat(ended.out()).contains("index.html");
    assertThat(out.resolve("index.html")).content().contains("8:15");
    assertThat(out.resolve("tables/runs.csv")).content().contains("495");
    assertThat(out.resolve("tables/datapackage.json"))
        .content()
        .contains("\"bytes\" : " + Files.size(out.resolve("tables/runs.csv")))
        .contains("sha256:" + sha256(out.resolve("tables/runs.csv")));
  }

  @Test
  void aReportIntoTheStudyIsRefusedAndNothingIsWritten() throws IOException {
    Path study = Files.createDirectory(temp.resolve("study"));
    Files.writeString(study.resolve("runs.csv"), "run,build\n1,A\n");
    Ended ended = run("report", study.toString(), "--out", study.resolve("out").toString());
    assertThat(ended.status()).isEqualTo(4);
    assertThat(ended.err()).contains("may not lie in, on or above its study");
    assertThat(study).isDirectoryNotContaining("glob:**out");
  }

  @Test
  void printsAreWritten() throws IOException {
    Path study = Files.createDirectory(temp.resolve("study"));
    Files.writeString(study.resolve("runs.csv"), "run,build\n1,A\n");
    Files.writeString(study.resolve("rings.csv"), "ring,holes,wrap (mm)\nupper,16,311\n");
    Path out = temp.resolve("prints");
    Ended ended = run("print", study.toString(), "--out", out.toString());
    assertThat(ended.status()).isZero();
    assertThat(out.resolve("strip-upper-a4.pdf")).isNotEmptyFile();
    assertThat(ended.out()).contains("strip-upper-letter.pdf");
  }

  private static String sha256(Path file) throws IOException {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new AssertionError(e);
    }
  }

  /** A study without a useful run is planned from what is stated; R says 17 of each, once burnt. */
  @Test
  void aPlanFromWhatIsStated() throws IOException {
    Path study = Files.createDirectory(temp.resolve("study"));
    Files.writeString(study.resolve("runs.csv"), "run,build\nK1-1,K1\n");
    String[] typed = {
      "plan",
      study.toString(),
      "--burn-sd",
      "0 K",
      "--stove-sd",
      "20 K",
      "--difference",
      "20 K",
      "--out",
      temp.resolve("plan").toString()
    };
    Ended ended = run(typed);
    assertThat(ended.err()).doesNotContain("Exception");
    assertThat(ended.out()).contains("17 stoves of each design");
    Path plan = temp.resolve("plan");
    assertThat(plan.resolve("index.html")).content().contains("carbon monoxide", "as stated");
    assertThat(plan.resolve("index.html"))
        .content()
        .contains("takes 17 stoves of each design burnt once each");
    assertThat(plan.resolve("charts/power-1.png")).isNotEmptyFile();
    assertThat(plan.resolve("tables/needs.csv")).content().contains("upper 80 % limit,1,17");
    String sheet = Files.readString(plan.resolve("sheets/runs.csv"));
    assertThat(sheet).doesNotContain("K1-1,").contains("# block 1");
    byte[] page = Files.readAllBytes(plan.resolve("index.html"));
    assertThat(run(typed).status()).isEqualTo(ended.status());
    assertThat(plan.resolve("index.html")).hasBinaryContent(page);
    assertThat(Files.readString(plan.resolve("sheets/runs.csv"))).isEqualTo(sheet);
    // the sheet is one that the program itself reads
    Path next = Files.createDirectory(temp.resolve("next"));
    Files.writeString(next.resolve("runs.csv"), sheet);
    assertThat(run("check", next.toString()).out()).doesNotContain("error: “");
  }

  @Test
  void aPlanTellsWhatMustBeStated() throws IOException {
    Path study = Files.createDirectory(temp.resolve("study"));
    Files.writeString(study.resolve("runs.csv"), "run,build\n1,A\n");
    String out = temp.resolve("plan").toString();
    Ended ended = run("plan", study.toString(), "--difference", "20 K", "--out", out);
    assertThat(ended.status()).isEqualTo(2);
    assertThat(ended.err()).contains("give it with --burn-sd");
    assertThat(run("plan", study.toString(), "--difference", "20", "--out", out).err())
        .contains("--difference: “20” has no unit");
    assertThat(temp.resolve("plan")).doesNotExist();
  }

  @Test
  void anExceptionOfJavaThatSaysNothingIsNamed() {
    assertThat(Main.said(new EOFException())).isEqualTo("java.io.EOFException");
    assertThat(Main.said(new IOException("the disk is full"))).isEqualTo("the disk is full");
  }

  private static Ended run(String... typed) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), typed);
    return new Ended(status, out.toString(), err.toString());
  }
}
