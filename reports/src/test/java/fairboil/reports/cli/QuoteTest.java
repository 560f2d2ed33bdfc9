package fairboil.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code report --quote} as typed: what is packed makes the same report anew. */
class QuoteTest {

  private static final Path DEMO = Path.of("../data-demo").toAbsolutePath().normalize();

  @TempDir private Path temp;

  private static int run(String... args) {
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    return Main.run(nowhere, nowhere, args);
  }

  private static SortedMap<String, String> hashes(Path folder) throws Exception {
    SortedMap<String, String> hashes = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        hashes.put(
            folder.relativize(file).toString().replace('\\', '/'),
            sha256(Files.readAllBytes(file)));
      }
    }
    return hashes;
  }

  private static String sha256(byte[] bytes) throws Exception {
    return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
  }

  /** As a person would: every entry must stay inside the folder. */
  private static void unzip(Path archive, Path folder) throws IOException {
    try (InputStream in = Files.newInputStream(archive);
        ZipInputStream zip = new ZipInputStream(in, StandardCharsets.UTF_8)) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        Path file = folder.resolve(entry.getName()).normalize();
        assertThat(file).startsWithRaw(folder);
        Files.createDirectories(file.getParent());
        Files.write(file, zip.readAllBytes());
      }
    }
  }

  @Test
  void thePackedDataMakeTheSameReportByteForByte() throws Exception {
    Path first = temp.resolve("first");
    Path again = temp.resolve("again");
    Path unpacked = Files.createDirectory(temp.resolve("unpacked"));

    assertThat(run("report", DEMO.toString(), "--out", first.toString(), "--quote")).isZero();
    unzip(first.resolve("quote/data.zip"), unpacked);
    assertThat(
            run(
                "report",
                unpacked.resolve("data-demo").toString(),
                "--out",
                again.toString(),
                "--quote"))
        .isZero();

    assertThat(hashes(again)).isEqualTo(hashes(first));
    assertThat(Files.readString(first.resolve(".fairboil")))
        .contains("  quote/data.zip\n", "  quote/critic.md\n", "-175mm.pdf\n", "-85mm-grey.png\n");
    assertFingerprint(first, unpacked);
    assertThat(Files.readString(first.resolve("quote/critic.md")))
        .contains("a dog knocked the pot off", "before the first burn", "went out")
        .contains("differences between those very stoves,", "Had the run above been counted:");
  }

  /** The fingerprint in the citation is that of the list, and the list is true. */
  private static void assertFingerprint(Path report, Path unpacked) throws Exception {
    String list = Files.readString(unpacked.resolve("hashes.txt"));
    assertThat(Files.readString(report.resolve("quote/citation.txt")))
        .contains(sha256(list.getBytes(StandardCharsets.UTF_8)))
        .doesNotContain("/");
    list.lines()
        .forEach(
            line ->
                assertThat(unpacked.resolve("data-demo").resolve(line.substring(66)))
                    .satisfies(
                        file ->
                            assertThat(sha256(Files.readAllBytes(file)))
                                .isEqualTo(line.substring(0, 64))));
    assertThat(hashes(unpacked.resolve("data-demo"))).hasSize((int) list.lines().count());
  }

  @Test
  void withoutTheOptionThereIsNoKit() throws IOException {
    Path study = Files.createDirectory(temp.resolve("study"));
    Files.writeString(study.resolve("runs.csv"), "run,build,water\n1,A,1000 g\n");
    Files.writeString(study.resolve("stopwatch.csv"), "run,pot on,boil\n1,0:00,8:15\n");
    Path out = temp.resolve("out");

    run("report", study.toString(), "--out", out.toString());
    assertThat(out.resolve("index.html")).exists();
    assertThat(out.resolve("quote")).doesNotExist();
    run("report", study.toString(), "--out", out.toString(), "--quote");
    assertThat(out.resolve("quote/data.zip")).exists();
    run("report", study.toString(), "--out", out.toString());
    assertThat(out.resolve("quote")).doesNotExist();
  }
}
