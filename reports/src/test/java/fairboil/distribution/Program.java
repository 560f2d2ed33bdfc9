package fairboil.distribution;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** A finished child process: its exit code and what it printed, output and errors together. */
public record Program(int exitCode, String printed) {

  public static final Path JAR = Path.of(System.getProperty("fairboil.jar"));
  static final Path LAUNCHER = Path.of(System.getProperty("fairboil.launcher"));
  public static final Path JAVA_HOME = Path.of(System.getProperty("java.home"));

  /**
   * Starts a command in a folder, waits for it and gives what came of it.
   *
   * @param environment the whole environment of the child; nothing is inherited
   */
  public static Program run(Path folder, Map<String, String> environment, List<String> command) {
    ProcessBuilder builder =
        new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true);
    builder.environment().clear();
    builder.environment().putAll(environment);
    try {
      Process process = builder.start();
      process.getOutputStream().close();
      String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      if (!process.waitFor(60, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        throw new AssertionError("still running after a minute: " + command);
      }
      return new Program(process.exitValue(), printed);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
