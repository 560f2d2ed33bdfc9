package fairboil.ingest.grid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StudyFolderTest {

  @TempDir Path temp;
  private Path root;
  private StudyFolder folder;

  @BeforeEach
  void makeStudy() throws IOException {
    root = Files.createDirectories(temp.resolve("spring burns"));
    Files.createDirectories(root.resolve("logs"));
    Files.writeString(root.resolve("logs/K1.csv"), "Time,T\n0,20\n");
    Files.writeString(temp.resolve("secret.csv"), "not yours");
    folder = StudyFolder.at(root);
  }

  @Test
  void isNamedAfterItsFolder() {
    assertThat(folder.name()).isEqualTo("spring burns");
  }

  @ParameterizedTest
  @ValueSource(strings = {"logs/K1.csv", "logs\\K1.csv", "./logs/K1.csv", "logs/../logs/K1.csv"})
  void opensFilesInside(String name) throws IOException {
    try (SourceText text = folder.open(name, FileKind.LOG)) {
      assertThat(text.read()).isEqualTo('T');
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../secret.csv",
        "logs/../../secret.csv",
        "..\\secret.csv",
        "/etc/hostname",
        "C:\\runs.csv",
        "link.csv",
        "away/secret.csv"
      })
  void refusesWhatLeadsOutOfTheFolder(String name) throws IOException {
    Files.createSymbolicLink(root.resolve("link.csv"), temp.resolve("secret.csv"));
    Files.createSymbolicLink(root.resolve("away"), temp);

    assertThatThrownBy(() -> folder.open(name, FileKind.LOG))
        .isInstanceOf(UnreadableException.class)
        .hasMessageContaining("leads out of the study folder");
  }

  @Test
  void refusesFoldersAndPipesWithoutOpeningThem() throws IOException, InterruptedException {
    assertThatThrownBy(() -> folder.open("logs", FileKind.LOG))
        .hasMessageContaining("this is a folder");
    Process mkfifo = new ProcessBuilder("mkfifo", root.resolve("pipe.csv").toString()).start();
    Assumptions.assumeTrue(mkfifo.waitFor(10, TimeUnit.SECONDS) && mkfifo.exitValue() == 0);
    Assertions.assertTimeoutPreemptively(
        Duration.ofSeconds(10),
        () ->
            assertThatThrownBy(() -> folder.open("pipe.csv", FileKind.LOG))
                .hasMessageContaining("a pipe or a device"));
  }

  @Test
  void saysWhatIsMissingAndWhatWasMeant() {
    assertThatThrownBy(() -> folder.open("logs/k1.CSV", FileKind.LOG))
        .hasMessage(
            "logs/k1.CSV: error: there is no such file. Did you mean logs/K1.csv? Capital letters"
                + " count.");
    assertThat(folder.find("LOGS/K1.csv")).isEmpty();
    assertThat(folder.find("logs/k1.CSV")).hasValue("logs/K1.csv");
  }

  @Test
  void refusesNamesThatNoFileCanHave() {
    assertThatThrownBy(() -> folder.open("logs/K\0.csv", FileKind.LOG))
        .isInstanceOf(UnreadableException.class);
    assertThatThrownBy(() -> folder.open("x".repeat(5_000), FileKind.LOG))
        .isInstanceOf(UnreadableException.class);
  }

  @Test
  void refusesFilesThatAreTooLarge() throws IOException {
    try (java.io.RandomAccessFile file =
        new java.io.RandomAccessFile(root.resolve("runs.csv").toFile(), "rw")) {
      file.setLength(64_000_001);
    }
    assertThatThrownBy(() -> folder.open("runs.csv", FileKind.SHEET))
        .hasMessageContaining("this sheet is larger than 64 MB");
  }

  // FIPS 180-4: the digest of "abc", example of its companion document.
  @Test
  void takesTheFingerprintOfTheWholeFile() throws IOException {
    Files.write(root.resolve("abc.csv"), "abc".getBytes(StandardCharsets.US_ASCII));
    try (SourceText text = folder.open("abc.csv", FileKind.SHEET)) {
      assertThat(text.source())
          .isEqualTo(
              new SourceFile(
                  "abc.csv",
                  3,
                  "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"));
    }
  }

  @Test
  void aFolderThatIsNotThereIsSaid() throws IOException {
    assertThatThrownBy(() -> StudyFolder.at(temp.resolve("none")))
        .hasMessageContaining("there is no such folder");
    assertThatThrownBy(() -> StudyFolder.at(temp.resolve("secret.csv")))
        .hasMessageContaining("this is a file, not a folder");
  }
}
