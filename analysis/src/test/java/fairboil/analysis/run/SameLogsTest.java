package fairboil.analysis.run;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.StudyAnalysis;
import fairboil.ingest.OpenedStudy;
import fairboil.ingest.StudyReader;
import fairboil.ingest.finding.Finding;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SameLogsTest {

  @TempDir Path folder;

  /** A copy under another name, and the same file twice, but not another part of it. */
  @Test
  void runsOnTheSameReadingsAreTold() throws Exception {
    Files.writeString(
        folder.resolve("runs.csv"),
        """
        run,build,log,log from,log to
        1,A,logs/a.csv,,
        2,A,logs/copy.csv,,
        3,A,logs/a.csv,0:00:30,0:01:00
        4,A,logs/b.csv,,
        5,A,logs/copy.csv,0:00:30,0:01:00
        """);
    Files.createDirectory(folder.resolve("logs"));
    String log =
        IntStream.range(0, 90)
            .mapToObj(i -> i + "," + (500 + i) + ".5\n")
            .collect(Collectors.joining("", "time (s),flame (°C)\n", ""));
    Files.writeString(folder.resolve("logs/a.csv"), log);
    Files.writeString(folder.resolve("logs/copy.csv"), log);
    Files.writeString(folder.resolve("logs/b.csv"), log + "90,600.5\n");

    OpenedStudy opened = StudyReader.open(folder);

    assertThat(StudyAnalysis.of(opened.study(), opened.logs()).findings())
        .extracting(Finding::toString)
        .filteredOn(text -> text.contains("reading for reading"))
        .containsExactly(
            "runs.csv, line 3, column log: warning: the log of run 2 is the same as that of run 1,"
                + " reading for reading: one burn counts twice. Give each run its own log, or type"
                + " in the columns log from and log to of runs.csv which part is whose.",
            "runs.csv, line 6, column log: warning: the log of run 5 is the same as that of run 3,"
                + " reading for reading: one burn counts twice. Give each run its own log, or type"
                + " in the columns log from and log to of runs.csv which part is whose.");
  }
}
