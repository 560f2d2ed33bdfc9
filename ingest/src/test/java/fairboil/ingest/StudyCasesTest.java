package fairboil.ingest;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Studies as people make them, each a text file of {@code cases}, of our own invention: what stands
 * under {@code --- runs.csv} is that file of a study, what stands under {@code --- expected} is all
 * that comes of it. To add a case, add a file.
 */
class StudyCasesTest {

  private static final String HEAD = "--- ";
  private static final String EXPECTED = "expected";

  @TempDir Path temp;

  static Stream<Path> studyComesOutAsExpected() throws IOException, URISyntaxException {
    Path folder = Path.of(StudyCasesTest.class.getResource("cases").toURI());
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource
  void studyComesOutAsExpected(Path file) throws IOException {
    Map<String, List<String>> parts = parts(Files.readAllLines(file));
    List<String> expected = parts.remove(EXPECTED);
    Path study = Files.createDirectories(temp.resolve("study"));
    parts.forEach((name, lines) -> write(study.resolve(name), lines));

    assertThat(String.join("\n", outcome(study))).isEqualTo(String.join("\n", expected));
  }

  private static List<String> outcome(Path study) {
    try {
      return StudyText.of(StudyReader.open(study).study());
    } catch (StudyException e) {
      return List.of("cannot be read: " + e.getMessage());
    }
  }

  private static Map<String, List<String>> parts(List<String> lines) {
    Map<String, List<String>> parts = new LinkedHashMap<>();
    List<String> part = new ArrayList<>();
    for (String line : lines) {
      if (line.startsWith(HEAD)) {
        part = parts.computeIfAbsent(line.substring(HEAD.length()), name -> new ArrayList<>());
      } else {
        part.add(line);
      }
    }
    return parts;
  }

  private static void write(Path file, List<String> lines) {
    try {
      Files.createDirectories(file.getParent());
      Files.writeString(file, String.join("\n", lines) + "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
