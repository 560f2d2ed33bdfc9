package fairboil.reports.page;

import fairboil.analysis.run.ChannelLedger;
import fairboil.analysis.run.RunResult;
import fairboil.analysis.trace.SampleFate;
import fairboil.ingest.finding.Ledger;
import fairboil.ingest.grid.SourceFile;
import fairboil.ingest.log.RowFate;
import fairboil.reports.page.view.CellView;
import fairboil.reports.page.view.ColumnView;
import fairboil.reports.page.view.TableView;
import fairboil.reports.page.view.TrustView;
import fairboil.reports.words.Display;
import fairboil.reports.words.FindingGroup;
import fairboil.reports.words.Labels;
import fairboil.reports.words.Plural;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Whether the data can be trusted: what was read, what was used, what was found. */
final class TrustSection {

  private TrustSection() {}

  static TrustView of(Materials from) {
    List<RunResult> runs = from.results().runs();
    return new TrustView(
        counts(from),
        FindingViews.of(from.results().findings(), from.display()),
        logs(runs),
        readings(runs));
  }

  private static List<String> counts(Materials from) {
    List<RunResult> runs = from.results().runs();
    long logs = runs.stream().filter(run -> run.rows().isPresent()).count();
    List<String> counts = new ArrayList<>();
    counts.add(
        Plural.of(runs.size(), "run")
            + ", "
            + (runs.size() - logs == 0
                ? "each with a log."
                : logs + " with a log, " + (runs.size() - logs) + " without."));
    if (logs > 0) {
      counts.add(readingsUsed(runs));
    }
    counts.add(
        from.results().findings().isEmpty()
            ? "Nothing in the sheets or logs called for a remark."
            : Plural.sentence(FindingGroup.counts(from.results().findings())) + ".");
    return counts;
  }

  private static String readingsUsed(List<RunResult> runs) {
    long read = total(runs, false);
    long used = total(runs, true);
    return read == used
        ? "All of the " + Display.whole(read) + " readings in them were used."
        : "Of "
            + Display.whole(read)
            + " readings in them, "
            + Display.whole(used)
            + " were used and "
            + Display.whole(read - used)
            + " set aside, each for a reason that the ledgers give.";
  }

  private static long total(List<RunResult> runs, boolean used) {
    return runs.stream()
        .flatMap(run -> run.samples().stream())
        .map(ChannelLedger::samples)
        .mapToLong(ledger -> used ? ledger.used() : ledger.read())
        .sum();
  }

  private static TableView logs(List<RunResult> runs) {
    List<List<CellView>> rows = new ArrayList<>();
    for (RunResult run : runs) {
      run.rows().ifPresent(ledger -> rows.add(row(run, ledger)));
    }
    return TableView.list(
        "log-lines",
        "Lines of each log: read = used + set aside",
        List.of(
            ColumnView.words("run"),
            ColumnView.words("log"),
            ColumnView.numbers("lines read"),
            ColumnView.numbers("used"),
            ColumnView.words("set aside")),
        rows);
  }

  private static List<CellView> row(RunResult run, Ledger<RowFate> ledger) {
    return List.of(
        CellView.of(run.run().key().name()),
        CellView.of(run.source().map(SourceFile::name).orElse("")),
        FigureCells.count(ledger.read()),
        FigureCells.count(ledger.used()),
        CellView.of(
            ledger.setAside().entrySet().stream()
                .map(entry -> entry.getValue() + " " + Labels.of(entry.getKey()))
                .collect(Collectors.joining(", "))));
  }

  private static TableView readings(List<RunResult> runs) {
    List<ColumnView> columns = new ArrayList<>();
    columns.add(ColumnView.words("run"));
    columns.add(ColumnView.words("channel"));
    columns.add(ColumnView.words("holds"));
    columns.add(ColumnView.numbers("readings"));
    columns.add(ColumnView.numbers("used"));
    for (SampleFate fate : SampleFate.values()) {
      columns.add(ColumnView.numbers(Labels.of(fate)));
    }
    List<List<CellView>> rows = new ArrayList<>();
    for (RunResult run : runs) {
      run.samples().forEach(ledger -> rows.add(row(run, ledger)));
    }
    return TableView.list(
        "channel-readings",
        "Readings of each channel: readings = used + fault + spike + gap",
        columns,
        rows);
  }

  private static List<CellView> row(RunResult run, ChannelLedger ledger) {
    List<CellView> row = new ArrayList<>();
    row.add(CellView.of(run.run().key().name()));
    row.add(CellView.of(ledger.channel()));
    row.add(CellView.of(ledger.role().label()));
    row.add(FigureCells.count(ledger.samples().read()));
    row.add(FigureCells.count(ledger.samples().used()));
    for (SampleFate fate : SampleFate.values()) {
      row.add(FigureCells.count(ledger.samples().setAside(fate)));
    }
    return row;
  }
}
