package fairboil.distribution;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is in {@code fairboil.jar}, and that it runs by itself. */
class JarIT {

  /** One library of the list: {@code (licence) name (group:artifact:version - address)}. */
  private static final Pattern LIBRARY =
      Pattern.compile("^\\s*\\((.+?)\\) .* \\(([^:()]+):([^:]+):[^:]+ - .*\\)$");

  private static JarFile jar;

  @BeforeAll
  static void open() throws IOException {
    jar = new JarFile(Program.JAR.toFile());
  }

  @AfterAll
  static void close() throws IOException {
    jar.close();
  }

  @Test
  void holdsNoLibraryOfTheTests() {
    assertThat(names())
        .noneMatch(
            name ->
                Stream.of(
                        "org/junit/",
                        "org/opentest4j/",
                        "org/assertj/",
                        "net/jqwik/",
                        "com/tngtech/archunit/",
                        "org/openjdk/jmh/",
                        "org/openqa/selenium/",
                        "nu/validator/",
                        "com/fasterxml/jackson/databind/",
                        "fairboil/browser/",
                        "fairboil/architecture/",
                        "fairboil/distribution/")
                    .anyMatch(name::contains));
  }

  @Test
  void holdsNoTemplateCompiler() {
    assertThat(names()).noneMatch(name -> name.startsWith("gg/jte/compiler/"));
  }

  @Test
  void carriesOurLicenceAndTheNoticesOfAll() throws IOException {
    assertThat(text("META-INF/LICENSE")).contains("Apache License", "Version 2.0, January 2004");
    assertThat(text("META-INF/NOTICE"))
        .contains("fairboil", "Apache Commons Statistics", "Hipparchus");
  }

  /** Apache-2.0 asks for its own text once; the others ask for the copyright line of each work. */
  @Test
  void carriesTheLicenceOfEveryLibraryThatAsksForItsOwn() throws IOException {
    List<Matcher> libraries =
        text("META-INF/THIRD-PARTY.txt")
            .lines()
            .map(LIBRARY::matcher)
            .filter(Matcher::find)
            .toList();
    assertThat(libraries).extracting(library -> library.group(3)).contains("xchart", "slf4j-api");
    assertThat(libraries)
        .filteredOn(library -> !library.group(1).equals("Apache-2.0"))
        .allSatisfy(
            library ->
                assertThat(names())
                    .anyMatch(
                        name ->
                            name.startsWith("META-INF/third-party/" + library.group(3) + "-jar/")
                                && name.contains("LICENSE")));
  }

  @Test
  void namesItsMainClassAndVersion() throws IOException {
    Attributes manifest = jar.getManifest().getMainAttributes();
    assertThat(manifest.getValue("Main-Class")).isEqualTo("fairboil.reports.cli.Main");
    assertThat(manifest.getValue("Implementation-Version"))
        .isEqualTo(System.getProperty("fairboil.version"));
  }

  @Test
  void runsByItself(@TempDir Path elsewhere) {
    String java = Program.JAVA_HOME.resolve("bin/java").toString();
    Program program =
        Program.run(
            elsewhere, Map.of(), List.of(java, "-jar", Program.JAR.toString(), "--version"));
    assertThat(program.printed())
        .isEqualToIgnoringNewLines("fairboil " + System.getProperty("fairboil.version"));
    assertThat(program.exitCode()).isZero();
  }

  private static List<String> names() {
    return jar.stream().map(ZipEntry::getName).toList();
  }

  private static String text(String name) throws IOException {
    ZipEntry entry = jar.getEntry(name);
    assertThat(entry).as(name).isNotNull();
    try (InputStream in = jar.getInputStream(entry)) {
      return new String(in.readAllBytes(), UTF_8);
    }
  }
}
