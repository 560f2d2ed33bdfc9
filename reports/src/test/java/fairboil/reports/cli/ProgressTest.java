package fairboil.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** What a terminal is shown of long work, and that nothing else is shown anything. */
class ProgressTest {

  private final ByteArrayOutputStream shown = new ByteArrayOutputStream();
  private final PrintStream terminal = new PrintStream(shown, true, StandardCharsets.UTF_8);

  @Test
  void longWorkIsCountedOnOneLineWhichGoesAway() {
    try (Progress progress = new Progress(Optional.of(terminal), "Runs", 4, 0)) {
      for (int i = 0; i < 4; i++) {
        progress.step();
      }
    }
    String text = shown.toString(StandardCharsets.UTF_8);
    assertThat(text).contains("Runs 100%", "4/4").doesNotContain("\n", "\u001b");
    assertThat(text.strip().split("\r")).allMatch(line -> line.length() <= 78);
    assertThat(text).endsWith("\r" + " ".repeat(78) + "\r");
  }

  @Test
  void shortWorkShowsNothing() {
    try (Progress progress =
        new Progress(Optional.of(terminal), "Runs", 4, TimeUnit.HOURS.toNanos(1))) {
      progress.step();
    }
    assertThat(shown.size()).isZero();
  }

  @Test
  void withoutATerminalNothingIsShown() {
    try (Progress progress = new Progress(Optional.empty(), "Runs", 4, 0)) {
      progress.step();
    }
    assertThat(shown.size()).isZero();
  }
}
