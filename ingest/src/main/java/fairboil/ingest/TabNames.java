package fairboil.ingest;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Voice;
import fairboil.ingest.grid.SourceFile;
import fairboil.ingest.log.LogOpener;
import fairboil.ingest.log.OpenedLog;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.SheetSchema;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What a study calls its sheets: a study kept as a workbook is told of its tabs where others are
 * told of files.
 *
 * @param tabs the file names of the sheets that are, or would be, tabs
 */
record TabNames(Set<String> tabs) {

  /** The names for a study that read these files. */
  static TabNames of(List<SourceFile> sources) {
    Set<String> read = sources.stream().map(SourceFile::name).collect(Collectors.toSet());
    if (read.stream().noneMatch(name -> name.startsWith(WorkbookTabs.FILE))) {
      return new TabNames(Set.of());
    }
    return new TabNames(
        StudyReader.SHEETS.stream()
            .map(SheetSchema::file)
            .filter(file -> !read.contains(file))
            .collect(Collectors.toUnmodifiableSet()));
  }

  /** The same finding, telling of tabs. */
  Finding in(Finding finding) {
    return finding.map(
        message -> message.map(this::in), fix -> fix.toSheet(sheet(fix.sheet()).text(Voice.RAW)));
  }

  /** The same findings, their remedies telling of tabs. */
  List<Finding> in(List<Finding> findings) {
    return tabs.isEmpty() ? findings : findings.stream().map(this::in).toList();
  }

  /** The same logs, what is found in them telling of tabs. */
  LogOpener in(LogOpener logs) {
    return tabs.isEmpty() ? logs : new Told(logs, this);
  }

  private Argument in(Argument argument) {
    if (argument instanceof Argument.Sheet sheet) {
      return sheet(sheet.file());
    }
    // TODO: goes with Message.plain, in which sheets are named in words
    return argument instanceof Argument.Word word ? Argument.word(in(word.text())) : argument;
  }

  private Argument sheet(String file) {
    return new Argument.Sheet(
        file, Optional.of(WorkbookTabs.FILE).filter(book -> tabs.contains(file)));
  }

  private String in(String text) {
    String told = text;
    for (String file : tabs) {
      String tab = file.substring(0, file.indexOf('.'));
      told =
          Pattern.compile("(?<![\\w/-])" + Pattern.quote(file))
              .matcher(told)
              .replaceAll("the tab " + tab + " of " + WorkbookTabs.FILE);
    }
    return told;
  }

  private record Told(LogOpener logs, TabNames names) implements LogOpener {

    @Override
    public OpenedLog open(Run run) {
      OpenedLog opened = logs.open(run);
      return new OpenedLog(opened.log(), opened.source(), names.in(opened.findings()));
    }

    @Override
    public long bytes(Run run) {
      return logs.bytes(run);
    }
  }
}
