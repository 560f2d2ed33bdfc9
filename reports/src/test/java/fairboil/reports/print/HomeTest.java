package fairboil.reports.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Printing looks for no font on the machine and leaves nothing behind. */
class HomeTest {

  @Test
  void nothingIsWrittenBesideTheFilesAndNothingIsSaid(@TempDir Path folder) throws Exception {
    Path home = Files.createDirectory(folder.resolve("home"));
    Path temp = Files.createDirectory(folder.resolve("temp"));
    Path work = Files.createDirectory(folder.resolve("work"));
    Path out = Files.createDirectory(folder.resolve("out"));
    Path said = folder.resolve("said");
    Process program =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-XX:-UsePerfData",
                "-Duser.home=" + home,
                "-Djava.io.tmpdir=" + temp,
                "-cp",
                System.getProperty("java.class.path"),
                Demo.class.getName(),
                out.toString())
            .directory(work.toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    assertThat(program.waitFor()).as(Files.readString(said, StandardCharsets.UTF_8)).isZero();
    assertThat(said).isEmptyFile();
    assertThat(names(out)).hasSize(8);
    assertThat(names(home)).isEmpty();
    assertThat(names(temp)).isEmpty();
    assertThat(names(work)).isEmpty();
  }

  private static Stream<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> !file.equals(folder)).map(Path::toString).toList().stream();
    }
  }
}
