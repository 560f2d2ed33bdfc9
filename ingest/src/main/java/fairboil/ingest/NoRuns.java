package fairboil.ingest;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import fairboil.ingest.grid.StudyFolder;
import fairboil.ingest.sheet.Nearest;
import fairboil.ingest.sheet.RunsSheet;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Says in one sentence that a study has no sheet of runs, and what may be meant for it. */
final class NoRuns {

  private static final int SHOWN = 20;

  private static final Pattern ANY_WORKBOOK =
      Pattern.compile("[^~.].*\\.(?:xlsx?|xlsm|xlsb|ods|numbers)", Pattern.CASE_INSENSITIVE);

  private static final Pattern NEW_WORKBOOK =
      Pattern.compile(".*\\.xls[xm]", Pattern.CASE_INSENSITIVE);

  private static final Pattern RUN = Pattern.compile("(?i)\\b(?:runs?|burns?|tests?)\\b");

  private static final Argument WORKBOOK = Argument.name(WorkbookTabs.FILE);

  private static final Template NO_SHEET =
      Template.of("There is no {sheet} in {name} ({clause}): {clause}");
  private static final Template NO_TAB =
      Template.of(
          "There is neither {sheet} nor a tab runs in {name} of {name} (its tabs are {clause}):"
              + " {clause}");
  private static final Template HOLDS_NOTHING = Template.of("it holds no files");
  private static final Template HOLDS = Template.of("it holds {clause}");
  private static final Template ALL = Template.of("{list}");
  private static final Template SOME = Template.of("{list} and others");
  private static final Template RENAME_TAB = Template.of("rename {name} to runs");
  private static final Template RENAME_A_TAB = Template.of("rename the tab with the runs to runs");
  private static final Template RENAME_SHEET =
      Template.of("rename {name} to runs.csv if that is the sheet of runs");
  private static final Template MAKE_ONE =
      Template.of("make one with the columns run and build, or give the right folder");
  private static final Template RENAME_WORKBOOK =
      Template.of(
          "rename {name} to {name} and its sheet of runs to runs, or save that as runs.csv");
  private static final Template SAVE_WORKBOOK =
      Template.of(
          "save {name} as an Excel workbook, rename it to {name} and its sheet of runs to runs, or"
              + " save that as runs.csv");

  private NoRuns() {}

  static StudyException in(StudyFolder folder, SheetFiles files) {
    Optional<Finding> unread = files.unreadWorkbook();
    if (unread.isPresent()) {
      return new StudyException(unread.get());
    }
    Argument sheet = Argument.sheet(RunsSheet.SCHEMA.file());
    Argument study = Argument.name(folder.name());
    Argument remedy = Argument.clause(remedy(files));
    return new StudyException(
        files
            .workbook()
            .map(tabs -> NO_TAB.with(sheet, WORKBOOK, study, shown(tabs.names()), remedy))
            .orElseGet(() -> NO_SHEET.with(sheet, study, holds(files), remedy)));
  }

  private static Argument holds(SheetFiles files) {
    return Argument.clause(
        files.names().isEmpty() ? HOLDS_NOTHING.with() : HOLDS.with(shown(files.names())));
  }

  private static Argument shown(List<String> names) {
    Argument some = Argument.list(names.stream().limit(SHOWN).map(Argument::name).toList());
    return Argument.clause((names.size() > SHOWN ? SOME : ALL).with(some));
  }

  private static Message remedy(SheetFiles files) {
    return files
        .workbook()
        .map(tabs -> likelyTab(tabs.names()))
        .or(() -> workbook(files.names()))
        .or(
            () ->
                Nearest.to(RunsSheet.SCHEMA.file(), files.names())
                    .map(likely -> RENAME_SHEET.with(Argument.name(likely))))
        .orElseGet(() -> MAKE_ONE.with());
  }

  private static Message likelyTab(List<String> names) {
    return Nearest.to("runs", names)
        .or(() -> names.stream().filter(name -> RUN.matcher(name).find()).findFirst())
        .or(() -> names.stream().filter(name -> names.size() == 1).findFirst())
        .map(name -> RENAME_TAB.with(Argument.name(name)))
        .orElseGet(() -> RENAME_A_TAB.with());
  }

  private static Optional<Message> workbook(List<String> names) {
    return names.stream()
        .filter(name -> ANY_WORKBOOK.matcher(name).matches())
        .findFirst()
        .map(name -> renaming(name).with(Argument.name(name), WORKBOOK));
  }

  private static Template renaming(String name) {
    return NEW_WORKBOOK.matcher(name).matches() ? RENAME_WORKBOOK : SAVE_WORKBOOK;
  }
}
