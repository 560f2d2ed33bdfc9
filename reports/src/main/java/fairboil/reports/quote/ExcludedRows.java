package fairboil.reports.quote;

import fairboil.analysis.Results;
import fairboil.analysis.WithExcluded;
import fairboil.analysis.effect.EffectChecks;
import fairboil.analysis.effect.EffectRow;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.group.BuildResult;
import fairboil.analysis.group.Summary;
import fairboil.analysis.measure.Measure;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.sheet.Settings;
import fairboil.reports.words.BuildCaptions;
import fairboil.reports.words.Display;
import fairboil.reports.words.Slopes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Rows of answers as they would be had no run been left out, beside those reported. */
final class ExcludedRows {

  private static final List<Measure> MEASURES =
      List.of(Measure.BOIL_TIME, Measure.NORMALISED_BOIL_TIME, Measure.NORMALISED_PEAK);

  private final Results results;
  private final Display display;

  ExcludedRows(Results results) {
    this.results = results;
    this.display = Display.in(results.study().settings().get(Settings.SHOW_UNITS));
  }

  /** Build, measure, mean without, mean with: of builds of which something was left out. */
  List<List<String>> means() {
    List<BuildResult> all = results.withExcluded().map(WithExcluded::builds).orElse(List.of());
    List<List<String>> rows = new ArrayList<>();
    for (BuildResult without : results.builds()) {
      all.stream()
          .filter(with -> with.build().key().equals(without.build().key()))
          .forEach(with -> add(rows, without, with));
    }
    return rows;
  }

  private void add(List<List<String>> rows, BuildResult without, BuildResult with) {
    for (Measure measure : MEASURES) {
      String reported = mean(without, measure);
      String asIfIncluded = mean(with, measure);
      if (!reported.equals(asIfIncluded)) {
        rows.add(List.of(without.build().key().name(), measure.label(), reported, asIfIncluded));
      }
    }
  }

  private String mean(BuildResult build, Measure measure) {
    String mean = BuildCaptions.in(display, results.confidence()).mean(measure, build);
    return mean
        + Optional.ofNullable(build.summaries().get(measure))
            .flatMap(Summary::interval)
            .map(
                interval ->
                    " ("
                        + display.interval(interval, measure.dimension(), results.confidence())
                        + ")")
            .orElse("");
  }

  /** Response, ring, slope without, slope with. */
  List<List<String>> effects() {
    List<List<String>> rows = new ArrayList<>();
    for (EffectChecks checks : results.effectChecks()) {
      Optional<EffectRow> reported =
          results.holeEffects().stream()
              .filter(effect -> effect.response() == checks.response())
              .filter(effect -> effect.ring().equals(checks.ring()))
              .findFirst()
              .flatMap(HoleEffect::headline);
      if (reported.isPresent() && checks.withExcluded().isPresent()) {
        rows.add(
            List.of(
                checks.response().label(),
                checks.ring(),
                slope(reported.get(), checks),
                slope(checks.withExcluded().get(), checks)));
      }
    }
    return rows;
  }

  private String slope(EffectRow row, EffectChecks checks) {
    Dimension dimension = checks.response().dimension().perLength();
    return Slopes.number(display, row, dimension)
        + " "
        + display.symbol(dimension)
        + " ("
        + Display.percent(checks.confidence())
        + " interval "
        + Slopes.range(display, row, dimension)
        + ")";
  }
}
