package fairboil.distribution;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The class-data archive speeds a run up; spoilt in whatever way, it neither ends nor soils one.
 */
@DisabledOnOs(OS.WINDOWS)
class ArchiveIT {

  private static final String VERSION = "fairboil " + System.getProperty("fairboil.version") + "\n";

  @TempDir private Path temp;
  private Path home;
  private Path archive;

  @BeforeEach
  void install() throws IOException {
    home = Files.createDirectory(temp.resolve("with blanks"));
    archive = home.resolve("fairboil.jsa");
    Files.copy(Program.JAR, home.resolve("fairboil.jar"), StandardCopyOption.COPY_ATTRIBUTES);
    Files.copy(Program.LAUNCHER, home.resolve("fairboil"), StandardCopyOption.COPY_ATTRIBUTES);
    Path study = SmallStudy.write(temp.resolve("study"));
    Path maker = Path.of("src/main/archive/make-archive").toAbsolutePath();
    run("sh", maker.toString(), home.toString(), study.toString());
    assertThat(archive).isNotEmptyFile();
  }

  @Test
  void whole() {
    assertThat(version("fairboil")).isEqualTo(VERSION);
  }

  @Test
  void moved() throws IOException {
    Path elsewhere = Files.move(home, temp.resolve("elsewhere"));
    assertThat(run(elsewhere.resolve("fairboil").toString(), "--version").printed())
        .isEqualTo(VERSION);
  }

  @Test
  void withTheJarTouched() throws IOException {
    Files.setLastModifiedTime(home.resolve("fairboil.jar"), FileTime.fromMillis(0));
    assertThat(version("fairboil")).isEqualTo(VERSION);
  }

  @Test
  void cutShort() throws IOException {
    assertThat(archive.toFile().setWritable(true)).isTrue();
    try (FileChannel channel = FileChannel.open(archive, StandardOpenOption.WRITE)) {
      channel.truncate(channel.size() / 2);
    }
    assertThat(version("fairboil")).isEqualTo(VERSION);
  }

  @Test
  void withoutItsSize() throws IOException {
    Files.delete(home.resolve("fairboil.jsa.size"));
    assertThat(version("fairboil")).isEqualTo(VERSION);
  }

  private String version(String launcher) {
    return run(home.resolve(launcher).toString(), "--version").printed();
  }

  private Program run(String... command) {
    Map<String, String> environment =
        Map.of("PATH", "/usr/bin:/bin", "JAVA_HOME", Program.JAVA_HOME.toString());
    return Program.run(temp, environment, List.of(command));
  }
}
