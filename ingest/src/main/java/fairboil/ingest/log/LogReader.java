package fairboil.ingest.log;

import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.grid.FileKind;
import fairboil.ingest.grid.SourceFile;
import fairboil.ingest.grid.SourceText;
import fairboil.ingest.grid.StudyFolder;
import fairboil.ingest.grid.UnreadableException;
import fairboil.ingest.grid.workbook.Tab;
import fairboil.ingest.grid.workbook.Workbook;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Sensor;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Opens the logs of one study. A log is recognised by what it holds, never by its name: separator,
 * decimal mark, header, times, units. What it leaves unsaid is answered by {@code sensors.csv}, or
 * asked for. Safe for several threads.
 */
public final class LogReader implements LogOpener {

  private static final Template OF_LOG = Template.of("{name}: {clause}");
  private static final Template UNREADABLE = Template.of("the log could not be read");
  private static final Template CUT_SHORT = Template.of("the log could not be read to its end");
  private static final Template COPY_AGAIN = Template.of("copy it again");
  private static final Template NO_TAB = Template.of("this workbook has no tab with cells");
  private static final Template SAVE_AS_CSV = Template.of("save the log as CSV");
  private static final Template FIRST_TAB =
      Template.of("the log was read from the first of {count|tab}, {cell}");
  private static final Template SAVE_ANOTHER =
      Template.of("save another tab as CSV if the log is there");

  private static final String WORKBOOK = ".xlsx";

  /** A workbook is packed to about this part of its text. */
  private static final long PACKED = 10;

  private final StudyFolder folder;
  private final List<Sensor> sensors;

  /**
   * Opens the logs of a study.
   *
   * @param folder where the logs are
   * @param study the name of the study, whose sensors alone are heeded
   * @param sensors what {@code sensors.csv} tells
   */
  public LogReader(StudyFolder folder, String study, List<Sensor> sensors) {
    this.folder = folder;
    this.sensors = sensors.stream().filter(sensor -> sensor.study().equals(study)).toList();
  }

  /**
   * Whether a text, in the unit column of {@code sensors.csv}, is one that logs are read in.
   *
   * @param role what the column holds: times have units of their own, such as {@code m:ss}
   * @param text the unit as written
   */
  public static boolean readsUnit(Role role, String text) {
    return switch (role) {
      case TIME -> TimeWord.of(text).isPresent();
      case FLAME, WATER, AMBIENT, COLD_JUNCTION -> UnitWords.ofReading(text).isPresent();
      case OTHER -> true;
    };
  }

  @Override
  public OpenedLog open(Run run) {
    String name = name(run);
    return name.isEmpty()
        ? new OpenedLog(Optional.empty(), Optional.empty(), List.of())
        : open(run, name, run.row().value(RunsSheet.LOG).isPresent());
  }

  @Override
  public long bytes(Run run) {
    String name = name(run);
    long bytes = name.isEmpty() ? 0 : folder.bytes(name);
    return isWorkbook(name) ? bytes * PACKED : bytes;
  }

  /** The name of a run's log, as told or as found; empty if there is none. */
  private String name(Run run) {
    return run.row()
        .value(RunsSheet.LOG)
        .map(written -> written.strip().replace('\\', '/'))
        .or(() -> folder.find("logs/" + run.key().name() + ".csv"))
        .or(() -> folder.find("logs/" + run.key().name() + WORKBOOK))
        .orElse("");
  }

  private static boolean isWorkbook(String name) {
    return name.toLowerCase(Locale.ROOT).endsWith(WORKBOOK);
  }

  private OpenedLog open(Run run, String name, boolean given) {
    Remarks remarks = new Remarks(Place.of(name.isBlank() ? "." : name));
    try (SourceText text = text(name, remarks)) {
      return read(text, run, remarks);
    } catch (UnreadableException e) {
      remarks.add(given ? ofCell(e.finding(), name, run) : e.finding());
    } catch (IOException e) {
      remarks.error(remarks.file(), UNREADABLE.with(), COPY_AGAIN.with());
    }
    return new OpenedLog(Optional.empty(), Optional.empty(), remarks.sorted());
  }

  // A file that cannot be opened is a fault of the cell that names it.
  private static Finding ofCell(Finding finding, String name, Run run) {
    return Finding.error(
        run.row().place(RunsSheet.LOG),
        OF_LOG.with(Argument.name(name), Argument.clause(finding.problem())),
        finding.remedy());
  }

  private SourceText text(String name, Remarks remarks) throws UnreadableException {
    return isWorkbook(name) ? firstTab(name, remarks) : folder.open(name, FileKind.LOG);
  }

  private SourceText firstTab(String name, Remarks remarks) throws UnreadableException {
    try (Workbook workbook = Workbook.open(folder, name)) {
      List<Tab> tabs = workbook.tabs();
      if (tabs.isEmpty()) {
        throw new UnreadableException(
            Finding.error(remarks.file(), NO_TAB.with(), SAVE_AS_CSV.with()));
      }
      List<Finding> findings = new ArrayList<>();
      SourceText text = workbook.text(tabs.get(0), findings);
      remarks.addAll(findings);
      if (tabs.size() > 1) {
        remarks.note(
            remarks.file(),
            FIRST_TAB.with(Argument.count(tabs.size()), Arguments.cell(tabs.get(0).name())),
            SAVE_ANOTHER.with());
      }
      return text;
    } catch (UnreadableException e) {
      throw e;
    } catch (IOException e) {
      throw new UnreadableException(
          Finding.error(remarks.file(), UNREADABLE.with(), COPY_AGAIN.with()));
    }
  }

  private OpenedLog read(SourceText text, Run run, Remarks remarks) {
    Optional<ParsedLog> parsed = Optional.empty();
    Optional<SourceFile> source = Optional.empty();
    try {
      parsed = new LogParser(text, run, sensors, remarks).parse();
      source = Optional.of(text.source());
      remarks.addAll(text.notes());
    } catch (UnreadableException e) {
      remarks.add(e.finding());
    } catch (IOException e) {
      remarks.error(remarks.file(), CUT_SHORT.with(), COPY_AGAIN.with());
    }
    Optional<Log> log =
        source.isEmpty() || parsed.isEmpty()
            ? Optional.empty()
            : Optional.of(parsed.get().from(source.get()));
    return new OpenedLog(log, source, remarks.sorted());
  }
}
