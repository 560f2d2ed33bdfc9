package fairboil.ingest.log;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.ingest.finding.Severity;
import fairboil.ingest.grid.StudyFolder;
import fairboil.ingest.sheet.Sensor;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every odd log, mutated at random (seeded, so that a failure repeats): whatever comes of it is a
 * log whose account balances, or a finding; never an exception, never a hang.
 */
class LogFuzzTest {

  private static final String CASES = "fairboil/ingest/log/cases";

  private static final byte[][] MORSELS =
      Stream.of(
              ",",
              ";",
              "\t",
              "\n",
              "\r",
              "\"",
              "#",
              "\0",
              "-",
              ":",
              "/",
              "e",
              "NaN",
              "1e999",
              "°C",
              "°F",
              "99:99:99",
              "\ufeff",
              "time (s)",
              "flame",
              "water (°C)",
              "0",
              "9999999999999999",
              "2026-13-45 25:61:61",
              ",,,,,,",
              "\n\n\n",
              "% ",
              "1.234,5",
              "AM",
              "+99:99",
              "''")
          .map(text -> text.getBytes(StandardCharsets.UTF_8))
          .toArray(byte[][]::new);

  @TempDir private Path folder;

  @Test
  @Timeout(120)
  void neverThrows() throws IOException, URISyntaxException {
    mutate(5_000);
  }

  @Test
  @Tag("long")
  @Timeout(1800)
  void neverThrowsForLong() throws IOException, URISyntaxException {
    mutate(100_000);
  }

  private void mutate(int count) throws IOException, URISyntaxException {
    List<byte[]> seeds = seeds();
    List<Sensor> sensors =
        Runs.sensors(
            List.of("column=T1; role=flame; unit=C", "column=#1; role=time; unit=s; log=x"));
    LogReader reader = new LogReader(StudyFolder.at(folder), Runs.STUDY, sensors);
    Random random = new Random(20260314);
    for (int i = 0; i < count; i++) {
      byte[] bytes = mutated(seeds.get(random.nextInt(seeds.size())), random);
      Files.write(folder.resolve("log.csv"), bytes);
      check(reader, bytes, i);
    }
  }

  private static void check(LogReader reader, byte[] bytes, int number) {
    OpenedLog opened;
    try {
      opened = reader.open(Runs.of("log.csv"));
    } catch (RuntimeException e) {
      throw new AssertionError(number + ": " + new String(bytes, StandardCharsets.UTF_8), e);
    }
    if (opened.log().isEmpty()) {
      assertThat(opened.findings()).anyMatch(finding -> finding.severity() == Severity.ERROR);
      return;
    }
    Log log = opened.log().get();
    double[] seconds = log.time().seconds().asDoubleArray();
    assertThat(log.rows().used()).isEqualTo(seconds.length);
    for (int i = 0; i < seconds.length; i++) {
      assertThat(seconds[i]).isGreaterThanOrEqualTo(i == 0 ? 0 : seconds[i - 1]).isFinite();
    }
    for (Channel channel : log.channels()) {
      long missing = Arrays.stream(channel.values().asDoubleArray()).filter(Double::isNaN).count();
      assertThat(channel.values().size()).isEqualTo(seconds.length);
      assertThat(missing).isEqualTo(channel.faults() + channel.empty());
    }
  }

  private static List<byte[]> seeds() throws IOException, URISyntaxException {
    URI here = LogFuzzTest.class.getClassLoader().getResource(CASES).toURI();
    List<byte[]> seeds = new ArrayList<>();
    try (Stream<Path> folders = Files.list(Path.of(here))) {
      for (Path folder : folders.filter(Files::isDirectory).sorted().toList()) {
        seeds.add(Files.readAllBytes(folder.resolve("log.csv")));
      }
    }
    return seeds;
  }

  private static byte[] mutated(byte[] seed, Random random) {
    byte[] bytes = seed;
    for (int n = 1 + random.nextInt(4); n > 0; n--) {
      int at = random.nextInt(bytes.length + 1);
      int length = Math.min(bytes.length - at, random.nextInt(12));
      bytes =
          switch (random.nextInt(5)) {
            case 0 -> spliced(bytes, at, length, new byte[0]);
            case 1 -> spliced(bytes, at, 0, MORSELS[random.nextInt(MORSELS.length)]);
            case 2 -> spliced(bytes, at, 1, new byte[] {(byte) random.nextInt(256)});
            case 3 -> spliced(bytes, at, length, MORSELS[random.nextInt(MORSELS.length)]);
            default -> spliced(bytes, at, 0, Arrays.copyOfRange(bytes, at, at + length));
          };
    }
    return bytes;
  }

  private static byte[] spliced(byte[] bytes, int at, int cut, byte[] put) {
    int rest = Math.min(bytes.length, at + cut);
    byte[] result = new byte[at + put.length + bytes.length - rest];
    System.arraycopy(bytes, 0, result, 0, at);
    System.arraycopy(put, 0, result, at, put.length);
    System.arraycopy(bytes, rest, result, at + put.length, bytes.length - rest);
    return result;
  }
}
