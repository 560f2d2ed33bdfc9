package fairboil.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What nobody foresaw is caught in one place, so that none of it goes unsaid. */
class CatchesTest {

  private static final Pattern ANYTHING =
      Pattern.compile(
          "catch \\([^)]*\\b(RuntimeException|Exception|Throwable|StackOverflowError)\\b");

  /** What libraries say of broken workbooks and fonts; and a lock that is let go on the way. */
  private static final List<String> ALLOWED =
      List.of(
          "Faults.java",
          "OutputFolder.java",
          "PartCheck.java",
          "TabReader.java",
          "Typeface.java",
          "Workbook.java");

  @Test
  void onlyFaultsCatchesWhatNobodyForesaw() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of(".."))) {
      List<String> catching =
          files
              .filter(file -> file.toString().matches(".*src.main.java.*\\.java"))
              .filter(CatchesTest::catchesAnything)
              .map(file -> file.getFileName().toString())
              .sorted()
              .toList();
      assertThat(catching).isEqualTo(ALLOWED);
    }
  }

  private static boolean catchesAnything(Path file) {
    try {
      return ANYTHING.matcher(Files.readString(file)).find();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
