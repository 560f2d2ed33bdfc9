package fairboil.browser;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.distribution.Program;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** The reports that are looked at, made by the finished program; they stay below target/browser. */
final class Reports {

  // Tests run in several processes at once: each has its own.
  private static final Path FOLDER =
      Path.of("target", "browser", System.getProperty("fairboil.fork", "1")).toAbsolutePath();

  /** Of the demonstration. */
  static final Path DEMO = report("demo", Path.of("..", "data-demo").toAbsolutePath().normalize());

  /** Of a study in which every text is out to do harm. */
  static final Path HOSTILE =
      report("hostile", written(() -> HostileStudy.write(FOLDER.resolve("hostile-study"))));

  private Reports() {}

  /** Of a thousand runs; made only when it is asked for. */
  static final class Large {
    static final Path REPORT =
        report("large", written(() -> LargeStudy.write(FOLDER.resolve("large-study"))));

    private Large() {}
  }

  /** Writes a study and gives its folder. */
  private interface Study {
    Path write() throws IOException;
  }

  private static Path written(Study study) {
    try {
      return study.write();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path report(String name, Path study) {
    Path out = FOLDER.resolve(name);
    try {
      Files.createDirectories(FOLDER);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Program program =
        Program.run(
            FOLDER,
            Map.of("PATH", "/usr/bin:/bin"),
            List.of(
                Program.JAVA_HOME.resolve("bin/java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-jar",
                Program.JAR.toString(),
                "report",
                study.toString(),
                "--out",
                out.toString()));
    assertThat(program.exitCode()).as(program.printed()).isLessThanOrEqualTo(1);
    return out.resolve("index.html");
  }
}
