package fairboil.reports.table;

import static fairboil.reports.table.TableColumn.count;
import static fairboil.reports.table.TableColumn.number;
import static fairboil.reports.table.TableColumn.text;

import fairboil.analysis.measure.Measure;
import fairboil.analysis.precision.Round;
import fairboil.analysis.precision.Round.AtSite;
import fairboil.ingest.dimension.Dimension;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.Function;

/** {@code sites.csv}: what each site found of each stove that went round. */
final class SiteTable {

  /** One site of a round. */
  record SiteRow(Round round, AtSite at) {

    private OptionalDouble held(double value, Dimension dimension) {
      return OptionalDouble.of(TableUnit.of(dimension).of(value));
    }

    private Measure measure() {
      return round.measure();
    }
  }

  static final TableSchema<SiteRow> SCHEMA =
      new TableSchema<>(
          "sites.csv",
          "what one site, or tester, found of one measure of a stove that went round",
          List.of(
              text("measure", "the measure", row -> row.measure().label()),
              text("build", "stove that went round", row -> row.round().stove().name()),
              text("site", "site or tester", row -> row.at().site()),
              count("runs", "runs that count", row -> OptionalLong.of(row.at().runs())),
              plain(
                  "mean",
                  "their mean, in °C, s, W, kg or a share",
                  row -> row.held(row.at().mean(), row.measure().dimension())),
              plain("sd", "their standard deviation, in the same unit", SiteTable::sd),
              plain("h", "Mandel's h: how far its mean lies from the others", row -> row.at().h()),
              text("h_mark", "straggler or outlier by h", row -> row.at().hFlag().label()),
              plain("k", "Mandel's k: its scatter over that of all", row -> row.at().k()),
              text("k_mark", "straggler or outlier by k", row -> row.at().kFlag().label()),
              text(
                  "grubbs_mark",
                  "straggler or outlier by Grubbs",
                  row -> row.at().grubbs().label()),
              plain("cochran", "Cochran's C of the stove's sites", row -> row.round().cochran()),
              text(
                  "cochran_mark",
                  "straggler or outlier by Cochran",
                  row -> row.round().cochranFlag().label())));

  private SiteTable() {}

  private static OptionalDouble sd(SiteRow row) {
    OptionalDouble sd = row.at().sd();
    return sd.isPresent()
        ? row.held(sd.getAsDouble(), row.measure().dimension().ofDifference())
        : sd;
  }

  private static TableColumn<SiteRow> plain(
      String name, String meaning, Function<SiteRow, OptionalDouble> get) {
    return number(name, TableUnit.NONE, meaning, get);
  }

  static List<SiteRow> rows(List<Round> rounds) {
    return rounds.stream()
        .flatMap(round -> round.sites().stream().map(at -> new SiteRow(round, at)))
        .toList();
  }
}
