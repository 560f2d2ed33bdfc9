package fairboil.ingest.sheet;

import fairboil.ingest.quantity.ClockTime;
import java.util.List;

/** The columns of {@code stopwatch.csv}. */
public final class StopwatchSheet {

  /** Run that the mark belongs to. */
  public static final Column<String> RUN =
      Column.text("run", "run that the mark belongs to", "K1-1").required();

  /** Build, where run names repeat over builds. */
  public static final Column<String> BUILD =
      Column.text("build", "build, where run names repeat over builds", "K1");

  /** What happened. */
  public static final Column<String> EVENT =
      Column.text("event", "what happened", "pot on").required();

  /** When, on the stopwatch or the clock. */
  public static final Column<ClockTime> TIME =
      Column.moment("time", "when, on the stopwatch or the clock", "1:30").required();

  /** Who saw it. */
  public static final Column<String> BY = Column.text("by", "who saw it", "Ida");

  /** The sheet. */
  public static final SheetSchema SCHEMA =
      new SheetSchema("stopwatch.csv", "a mark", List.of(RUN, BUILD, EVENT, TIME, BY));

  private StopwatchSheet() {}
}
