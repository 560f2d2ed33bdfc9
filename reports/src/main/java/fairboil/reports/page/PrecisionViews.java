package fairboil.reports.page;

import fairboil.analysis.precision.Flag;
import fairboil.analysis.precision.Round;
import fairboil.analysis.precision.Round.AtSite;
import fairboil.analysis.protocol.RunProtocol;
import fairboil.ingest.dimension.Dimension;
import fairboil.reports.page.view.CellView;
import fairboil.reports.page.view.ColumnView;
import fairboil.reports.page.view.TableView;
import fairboil.reports.words.ProtocolWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Sites beside each other, and runs beside what was agreed. */
final class PrecisionViews {

  private PrecisionViews() {}

  static TableView rounds(Materials from) {
    List<List<CellView>> rows = new ArrayList<>();
    for (Round round : from.results().precision().rounds()) {
      round.sites().forEach(at -> rows.add(row(from, round, at)));
    }
    return TableView.list(
        "rounds",
        "What each " + from.results().precision().repeated().word() + " found of the same stove",
        List.of(
            ColumnView.words("measure"),
            ColumnView.words("stove"),
            ColumnView.words("by"),
            ColumnView.numbers("runs"),
            ColumnView.numbers("mean"),
            ColumnView.numbers("standard deviation"),
            ColumnView.numbers("h"),
            ColumnView.numbers("k"),
            ColumnView.words("marked")),
        rows);
  }

  private static List<CellView> row(Materials from, Round round, AtSite at) {
    Dimension dimension = round.measure().dimension();
    double coarseness = at.sd().orElse(0) / 5;
    return List.of(
        CellView.of(round.measure().label()),
        CellView.of(round.stove().name()),
        CellView.of(at.site()),
        FigureCells.count(at.runs()),
        CellView.number(from.display().value(at.mean(), coarseness, dimension), at.mean()),
        at.sd().isPresent()
            ? CellView.number(
                from.display().value(at.sd().getAsDouble(), coarseness, dimension.ofDifference()),
                at.sd().getAsDouble())
            : CellView.of(""),
        statistic(at.h()),
        statistic(at.k()),
        CellView.of(marks(round, at)));
  }

  private static CellView statistic(OptionalDouble value) {
    return value.isPresent()
        ? CellView.number(
            String.format(Locale.ROOT, "%.2f", value.getAsDouble()).replace('-', '−'),
            value.getAsDouble())
        : CellView.of("");
  }

  private static String marks(Round round, AtSite at) {
    List<String> marks =
        Stream.of(
                mark(at.hFlag(), "h"),
                mark(at.kFlag(), "k"),
                mark(at.grubbs(), "Grubbs"),
                cochran(round, at))
            .filter(mark -> !mark.isEmpty())
            .toList();
    return marks.isEmpty() ? "no" : String.join(", ", marks);
  }

  /** Cochran's test is of the largest scatter: it marks that site. */
  private static String cochran(Round round, AtSite at) {
    double largest =
        round.sites().stream().mapToDouble(each -> each.sd().orElse(0)).max().orElse(0);
    return at.sd().orElse(-1) == largest ? mark(round.cochranFlag(), "Cochran") : "";
  }

  private static String mark(Flag flag, String statistic) {
    return flag == Flag.NONE ? "" : flag.label() + " by " + statistic;
  }

  static TableView notWithin(Materials from) {
    return TableView.list(
        "not-within",
        "Runs that are not within protocol, and why",
        List.of(ColumnView.words("run"), ColumnView.words("why")),
        from.results().protocol().stream()
            .filter(run -> !run.isWithin())
            .map(PrecisionViews::row)
            .toList());
  }

  private static List<CellView> row(RunProtocol run) {
    return List.of(CellView.of(run.run().name()), CellView.of(ProtocolWords.reasons(run)));
  }
}
