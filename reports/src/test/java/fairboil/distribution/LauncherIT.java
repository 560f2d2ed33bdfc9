package fairboil.distribution;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The shell script beside the jar, in a folder whose name has blanks. */
@DisabledOnOs(OS.WINDOWS)
class LauncherIT {

  private static final String VERSION = "fairboil " + System.getProperty("fairboil.version");
  private static final Map<String, String> TOOLS = Map.of("PATH", "/usr/bin:/bin");

  @TempDir private static Path installed;
  private static Path home;
  private static Path launcher;

  @TempDir private Path temp;

  @BeforeAll
  static void install() throws IOException {
    home = Files.createDirectories(installed.resolve("a folder with blanks * and stars"));
    launcher = copyLauncher(home);
    Files.copy(Program.JAR, home.resolve("fairboil.jar"));
  }

  private static Path copyLauncher(Path folder) throws IOException {
    return Files.copy(
        Program.LAUNCHER, folder.resolve("fairboil"), StandardCopyOption.COPY_ATTRIBUTES);
  }

  @Test
  void runsFromItsOwnFolder() {
    assertPrintsVersion(run(home, ours(), "./fairboil", "--version"));
  }

  @Test
  void runsFromAnotherFolder() {
    assertPrintsVersion(run(temp, ours(), launcher.toString(), "--version"));
  }

  @Test
  void runsThroughLinksToLinks() throws IOException {
    Path bin = Files.createDirectories(installed.resolve("bin"));
    Files.createSymbolicLink(bin.resolve("absolute"), launcher);
    Files.createSymbolicLink(bin.resolve("relative"), Path.of("absolute"));
    assertPrintsVersion(run(bin, ours(), "./relative", "--version"));
    assertPrintsVersion(run(home, ours(), bin.resolve("relative").toString(), "--version"));
  }

  @Test
  void runsAsAnArgumentOfTheShell() {
    assertPrintsVersion(run(home, ours(), "/bin/sh", "fairboil", "--version"));
  }

  @Test
  void runsTheJavaOnThePath() throws IOException {
    Path bin = fakeJava("17", "#!/bin/sh\necho from the path\n").resolve("bin");
    Map<String, String> environment = Map.of("PATH", bin + ":/usr/bin:/bin");
    assertThat(run(home, environment, "./fairboil").printed()).startsWith("from the path");
  }

  @Test
  void passesItsArgumentsOnUnchanged() {
    Program program = run(home, ours(), "./fairboil", "no such command", "*");
    assertThat(program.exitCode()).isEqualTo(2);
    assertThat(program.printed()).contains("“no such command”", "“*”");
  }

  @Test
  void limitsMemoryUnlessToldOtherwise() throws IOException {
    Path java = fakeJava("17.0.15", "#!/bin/sh\nprintf '%s\\n' \"$@\"\n");
    assertThat(run(home, with(java), "./fairboil", "report", "my study").printed().lines())
        .contains(
            "-Xmx512m",
            "-XX:+UseParallelGC",
            "-jar",
            home.toRealPath().resolve("fairboil.jar").toString())
        .endsWith("report", "my study");
    Map<String, String> more =
        Map.of(
            "PATH", "/usr/bin:/bin", "JAVA_HOME", java.toString(), "FAIRBOIL_JAVA_OPTS", "-a -*");
    assertThat(run(home, more, "./fairboil").printed().lines())
        .contains("-a", "-*")
        .doesNotContain("-Xmx512m");
  }

  @ParameterizedTest
  @CsvSource({"1, true", "2, true", "3, false", "16, false"})
  void compilesOneAtATimeWhereThereAreFewProcessors(String processors, boolean one)
      throws IOException {
    Path java = fakeJava("17", "#!/bin/sh\nprintf '%s\\n' \"$@\"\n");
    Path bin = Files.createDirectory(temp.resolve("fake-bin"));
    script(bin.resolve("getconf"), "#!/bin/sh\necho " + processors + "\n");
    Map<String, String> environment =
        Map.of("PATH", bin + ":/usr/bin:/bin", "JAVA_HOME", java.toString());
    assertThat(
            run(home, environment, "./fairboil")
                .printed()
                .lines()
                .anyMatch("-XX:CICompilerCount=1"::equals))
        .isEqualTo(one);
  }

  @Test
  void saysWhenThereIsNoJava() {
    Program program = run(home, Map.of("PATH", temp.toString()), "./fairboil", "--version");
    assertFailsWith(program, "there is no Java here; install Java 17 or newer");
  }

  @Test
  void saysWhenJavaHomeHoldsNoJava() {
    Program program = run(home, with(temp), "./fairboil", "--version");
    assertFailsWith(program, "JAVA_HOME is " + temp + ", but there is no Java in it");
  }

  @Test
  void saysWhenJavaIsTooOld() throws IOException {
    for (String version : List.of("1.8.0_392", "11.0.21", "16")) {
      Path java = fakeJava(version, "#!/bin/sh\nexit 99\n");
      assertFailsWith(run(home, with(java), "./fairboil"), "is Java " + version + "; install");
    }
  }

  @Test
  void takesNewerJava() throws IOException {
    Path java = fakeJava("26-ea", "#!/bin/sh\necho started\n");
    assertThat(run(home, with(java), "./fairboil").printed()).startsWith("started");
  }

  @Test
  void saysWhenTheJarIsNotBesideIt() throws IOException {
    Path alone = copyLauncher(temp);
    assertFailsWith(run(home, ours(), alone.toString()), "there is no fairboil.jar in " + temp);
  }

  private static Program run(Path folder, Map<String, String> environment, String... command) {
    return Program.run(folder, environment, List.of(command));
  }

  private static Map<String, String> ours() {
    return with(Program.JAVA_HOME);
  }

  private static Map<String, String> with(Path javaHome) {
    return Map.of("PATH", TOOLS.get("PATH"), "JAVA_HOME", javaHome.toString());
  }

  /** A Java folder of the given version, whose program is a script. */
  private Path fakeJava(String version, String script) throws IOException {
    Path folder = Files.createDirectories(temp.resolve("java " + version));
    Path java = Files.createDirectories(folder.resolve("bin")).resolve("java");
    script(java, script);
    Files.writeString(
        folder.resolve("release"),
        "IMPLEMENTOR=\"Somebody\"\nJAVA_VERSION=\"" + version + "\"\nJAVA_VERSION_DATE=\"2020\"\n");
    return folder;
  }

  private static void script(Path file, String text) throws IOException {
    Files.writeString(file, text);
    assertThat(file.toFile().setExecutable(true)).isTrue();
  }

  private static void assertPrintsVersion(Program program) {
    assertThat(program.printed()).isEqualToIgnoringNewLines(VERSION);
    assertThat(program.exitCode()).isZero();
  }

  private static void assertFailsWith(Program program, String message) {
    assertThat(program.printed()).startsWith("fairboil: ").contains(message).hasLineCount(1);
    assertThat(program.exitCode()).isEqualTo(1);
  }
}
