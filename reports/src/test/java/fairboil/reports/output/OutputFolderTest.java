package fairboil.reports.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFolderTest {

  @TempDir Path top;
  private Path target;
  private Path study;

  @BeforeEach
  void makeStudy() throws IOException {
    target = top.resolve("report");
    study = Files.createDirectory(top.resolve("study"));
  }

  @Test
  void committedFolderHoldsWhatWasAddedAndItsList() throws Exception {
    writeReport("one");
    assertThat(target.resolve("index.html")).hasContent("one");
    assertThat(target.resolve("tables/runs.csv")).hasContent("run\n");
    // SHA-256 of "one", by coreutils: printf one | sha256sum
    assertThat(Files.readString(target.resolve(".fairboil")))
        .contains("7692c3ad3540bb803c020b3aee66cd8887123234ea0c6e7143c0add73ff431ed  index.html");
    assertThat(entriesBeside()).containsExactlyInAnyOrder("report", "study");
  }

  @Test
  void secondReportReplacesTheFirst() throws Exception {
    writeReport("one");
    writeReport("two");
    assertThat(target.resolve("index.html")).hasContent("two");
    assertThat(entriesBeside()).containsExactlyInAnyOrder("report", "study");
  }

  @Test
  void uncommittedReportLeavesTheOldOne() throws Exception {
    writeReport("one");
    try (OutputFolder folder = OutputFolder.open(target, List.of(study))) {
      add(folder, "index.html", "two");
    }
    assertThat(target.resolve("index.html")).hasContent("one");
    assertThat(entriesBeside()).containsExactlyInAnyOrder("report", "study");
  }

  @Test
  void emptyFolderIsTaken() throws Exception {
    Files.createDirectory(target);
    writeReport("one");
    assertThat(target.resolve("index.html")).hasContent("one");
  }

  @Test
  void foreignFolderIsRefused() throws Exception {
    Files.createDirectory(target);
    Files.writeString(target.resolve("letter.txt"), "dear");
    refused("holds files that are not a report of ours");
    assertThat(target.resolve("letter.txt")).hasContent("dear");
  }

  @Test
  void addedFileIsRefused() throws Exception {
    writeReport("one");
    Files.writeString(target.resolve("tables/mine.csv"), "1");
    refused("mine.csv was added or changed");
  }

  @Test
  void changedFileIsRefused() throws Exception {
    writeReport("one");
    Files.writeString(target.resolve("index.html"), "mine");
    refused("index.html was added or changed");
  }

  @Test
  void symbolicLinkInTheFolderIsRefused() throws Exception {
    writeReport("one");
    Files.createSymbolicLink(target.resolve("link"), study);
    refused("link was added or changed");
  }

  @Test
  void fileInPlaceOfAFolderIsRefused() throws Exception {
    Files.writeString(target, "x");
    refused("is a file, not a folder");
  }

  @Test
  void studyItselfInsideAndAboveAreRefused() throws Exception {
    for (Path overlapping : List.of(study, study.resolve("report"), top)) {
      assertThatThrownBy(() -> OutputFolder.open(overlapping, List.of(study)))
          .isInstanceOf(OutputException.class)
          .hasMessageContaining("may not lie in, on or above its study");
    }
  }

  @Test
  void studyIsFoundThroughLinksAndDots() throws Exception {
    Path link = Files.createSymbolicLink(top.resolve("alias"), study);
    Path dotted = top.resolve("other").resolve("..").resolve("study").resolve("out");
    for (Path overlapping : List.of(link.resolve("out"), dotted)) {
      assertThatThrownBy(() -> OutputFolder.open(overlapping, List.of(study)))
          .hasMessageContaining("may not lie in, on or above its study");
    }
  }

  @Test
  void secondWriterIsStopped() throws Exception {
    try (OutputFolder first = OutputFolder.open(target, List.of(study))) {
      add(first, "index.html", "one");
      refused("another run is writing");
    }
    writeReport("two");
    assertThat(target.resolve("index.html")).hasContent("two");
  }

  @Test
  void killBetweenTheRenamesIsPutRight() throws Exception {
    writeReport("one");
    Files.move(target, top.resolve(".report.old-4711"));
    Files.createDirectory(top.resolve(".report.new-4711"));
    Files.writeString(top.resolve(".report.new-4711/.fairboil"), "");
    try (OutputFolder folder = OutputFolder.open(target, List.of(study))) {
      assertThat(target.resolve("index.html")).hasContent("one");
      add(folder, "index.html", "two");
      folder.commit();
    }
    assertThat(target.resolve("index.html")).hasContent("two");
    assertThat(entriesBeside()).containsExactlyInAnyOrder("report", "study");
  }

  @Test
  void somebodyElsesHiddenFolderIsLeftAlone() throws Exception {
    Path theirs = Files.createDirectory(top.resolve(".report.new-notes"));
    Files.writeString(theirs.resolve("letter.txt"), "dear");
    writeReport("one");
    assertThat(theirs.resolve("letter.txt")).hasContent("dear");
  }

  @Test
  void namesThatLeaveTheFolderAreRefused() throws Exception {
    try (OutputFolder folder = OutputFolder.open(target, List.of(study))) {
      assertThatThrownBy(() -> add(folder, "../escaped.txt", "x"))
          .isInstanceOf(IllegalArgumentException.class);
    }
    assertThat(top.resolve("escaped.txt")).doesNotExist();
  }

  @Test
  void oneNameCannotBeWrittenTwice() throws Exception {
    try (OutputFolder folder = OutputFolder.open(target, List.of(study))) {
      add(folder, "index.html", "one");
      assertThatThrownBy(() -> add(folder, "index.html", "two"))
          .isInstanceOf(OutputException.class);
    }
  }

  private void refused(String words) {
    assertThatThrownBy(() -> OutputFolder.open(target, List.of(study)))
        .isInstanceOf(OutputException.class)
        .hasMessageContaining(words);
  }

  private void writeReport(String text) throws OutputException {
    try (OutputFolder folder = OutputFolder.open(target, List.of(study))) {
      add(folder, "index.html", text);
      add(folder, "tables/runs.csv", "run\n");
      folder.commit();
    }
  }

  private static void add(OutputFolder folder, String name, String text) throws OutputException {
    folder.add(name, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
  }

  private List<String> entriesBeside() throws IOException {
    try (Stream<Path> entries = Files.list(top)) {
      return entries.map(entry -> entry.getFileName().toString()).toList();
    }
  }
}
