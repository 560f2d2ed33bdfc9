package fairboil.reports.cli;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.fault.Fault;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.reports.output.OutputFolder;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FaultFileTest {

  private static final List<Fault> ONE =
      List.of(new Fault(Template.of("run A").with(), Place.of("runs.csv", 2), "the trace\n"));

  @TempDir private Path temp;

  private static String told(FaultFile file) {
    StringWriter text = new StringWriter();
    PrintWriter err = new PrintWriter(text);
    file.tell(err);
    err.flush();
    return text.toString();
  }

  private FaultFile written(List<Fault> faults) throws IOException {
    Path out = temp.resolve("report");
    try (OutputFolder folder = OutputFolder.open(out, List.of())) {
      FaultFile file = FaultFile.in(folder, out, faults);
      folder.commit();
      return file;
    }
  }

  @Test
  void aFaultEndsWithFiveAndASentenceThatNamesThePartAndTheFile() throws IOException {
    FaultFile file = written(ONE);
    assertThat(file.status(ExitStatus.LEFT_OUT).code()).isEqualTo(5);
    Path trace = temp.resolve("report").resolve("faults.txt");
    assertThat(told(file)).contains("failed at run A", trace.toString());
    assertThat(told(file).lines()).hasSize(1);
    assertThat(trace).content().contains("run A\nthe trace\n");
  }

  @Test
  void theFolderCanBeReplacedLaterAndWithoutFaultsThereIsNoFile() throws IOException {
    written(ONE);
    FaultFile file = written(List.of());
    assertThat(temp.resolve("report").resolve("faults.txt")).doesNotExist();
    assertThat(file.status(ExitStatus.LEFT_OUT)).isEqualTo(ExitStatus.LEFT_OUT);
    assertThat(told(file)).isEmpty();
  }

  @Test
  void whereNoFolderIsWrittenTheFileIsATemporaryOne() throws IOException {
    FaultFile file = FaultFile.temporary(ONE);
    assertThat(file.status(ExitStatus.DONE)).isEqualTo(ExitStatus.PART_LOST);
    String sentence = told(file).strip();
    Path trace =
        Path.of(sentence.substring(sentence.lastIndexOf(" in ") + 4, sentence.length() - 1));
    assertThat(trace).content().contains("the trace");
    Files.delete(trace);
  }
}
