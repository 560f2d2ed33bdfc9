package fairboil.ingest.log;

import fairboil.ingest.choice.Role;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Template;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Asks which part of a log is the run, where the log seems to hold several. */
final class SeveralRuns {

  private static final Template SEVERAL =
      Template.of(
          "this log holds {count|run} (the clock starts again, or hours are missing, on this line):"
              + " {list}");
  private static final Template SAY_WHICH =
      Template.of("in {sheet}, type in log from and log to which of them is the run");
  private static final Template NEW_WATER =
      Template.of(
          "the water is colder by more than {value} at once, {value} after the start: another"
              + " potful, or another run in the same log");
  private static final Template IF_ANOTHER =
      Template.of(
          "if it is another run, type in log from and log to of {sheet} which part is this one");

  /** Water that is colder by more than this from one reading to the next was changed, in K. */
  private static final double CHANGE = 30;

  private static final int AROUND = 5;

  private final Timeline timeline;
  private final LineNumbers lines;
  private final RunCut cut;
  private final Remarks remarks;

  SeveralRuns(Timeline timeline, LineNumbers lines, RunCut cut, Remarks remarks) {
    this.timeline = timeline;
    this.lines = lines;
    this.cut = cut;
    this.remarks = remarks;
  }

  /** Asks if the clock was restarted or stood still for hours; whether it did. */
  boolean ask() {
    if (timeline.starts().isEmpty()) {
      return false;
    }
    List<double[]> parts = parts();
    double[] longest =
        parts.stream().reduce((a, b) -> b[1] - b[0] > a[1] - a[0] ? b : a).orElseThrow();
    List<Argument> spans =
        parts.stream().limit(12).map(part -> Argument.clause(cut.span(part[0], part[1]))).toList();
    remarks.error(
        remarks.line(lines.of(timeline.starts().get(0))),
        SEVERAL.with(
            Argument.count(parts.size()), new Argument.Listed(spans, Argument.Joining.SEMICOLON)),
        SAY_WHICH.with(Arguments.RUNS),
        cut.fix(longest[0], longest[1]));
    return true;
  }

  private List<double[]> parts() {
    double[] seconds = timeline.seconds();
    List<double[]> parts = new ArrayList<>();
    int from = 0;
    for (int start : timeline.starts()) {
      parts.add(new double[] {seconds[from], seconds[start - 1]});
      from = start;
    }
    parts.add(new double[] {seconds[from], seconds[seconds.length - 1]});
    return parts;
  }

  /** Warns if the water grew cold at once and stayed so: another potful, or another run. */
  void warnOfNewWater(List<Channel> channels, TimeAxis time) {
    channels.stream()
        .filter(channel -> channel.role() == Role.WATER)
        .filter(channel -> channel.unit().dimension() != Dimension.VOLTAGE)
        .findFirst()
        .ifPresent(water -> warn(water, time));
  }

  private void warn(Channel water, TimeAxis time) {
    double[] values = water.values().asDoubleArray();
    int before = -1;
    for (int i = 0; i < values.length; i++) {
      if (Double.isFinite(values[i])) {
        if (before >= 0 && values[before] - values[i] > CHANGE && stays(values, before, i)) {
          warn(water, time.seconds().getDouble(before), time.seconds().getDouble(i));
          return;
        }
        before = i;
      }
    }
  }

  private static boolean stays(double[] values, int before, int from) {
    double earlier = median(values, Math.max(0, before - AROUND + 1), before + 1);
    double later = median(values, from, Math.min(values.length, from + AROUND));
    return earlier - later > CHANGE;
  }

  private static double median(double[] values, int from, int to) {
    double[] finite = Arrays.stream(values, from, to).filter(Double::isFinite).sorted().toArray();
    return finite[finite.length / 2];
  }

  private void warn(Channel water, double before, double after) {
    remarks.warning(
        remarks.file().column(water.name()),
        NEW_WATER.with(
            Argument.value(CHANGE, 2, Dimension.TEMPERATURE_DIFFERENCE), Arguments.seconds(after)),
        IF_ANOTHER.with(Arguments.RUNS),
        cut.fix(0, before));
  }
}
