package fairboil.reports.page;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.Results;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.fault.Faults;
import fairboil.analysis.measure.Measure;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.reports.SampleResults;
import fairboil.reports.chart.ChartKey;
import fairboil.reports.chart.Picture;
import fairboil.reports.page.view.FigureView;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A chart stands with what it is of, in whatever order and number charts come. */
class ChartKeysTest {

  private static final Results RESULTS = SampleResults.typical(DisplayUnits.METRIC);

  private static Materials with(List<Picture> pictures) {
    return new Materials(
        new PageModel(RESULTS, pictures, run -> Optional.empty(), "0.0-test"), new Faults());
  }

  /** Of each effect but the first, the last first. */
  private static List<Picture> pictures(Picture.Kind kind) {
    List<Picture> pictures = new ArrayList<>();
    for (HoleEffect effect : drawn()) {
      pictures.add(0, SamplePages.picture(ChartKey.of(kind, effect), name(effect)));
    }
    return pictures;
  }

  private static List<HoleEffect> drawn() {
    return RESULTS.holeEffects().subList(1, RESULTS.holeEffects().size());
  }

  private static String name(HoleEffect effect) {
    return effect.ring() + "-" + effect.response().name();
  }

  @Test
  void effectsHaveTheirOwnCharts() {
    Materials from = with(pictures(Picture.Kind.HOLE_EFFECT));

    assertThat(drawn()).isNotEmpty();
    assertThat(EffectCharts.of(from, RESULTS.holeEffects().get(0))).isEmpty();
    for (HoleEffect effect : drawn()) {
      assertThat(EffectCharts.of(from, effect).map(Picture::name)).contains(name(effect));
    }
  }

  /** With the answer stands a chart with its own numbers, not those of the first effect. */
  @Test
  void theChartOfTheAnswerHasItsOwnNumbers() {
    HoleEffect last = RESULTS.holeEffects().get(RESULTS.holeEffects().size() - 1);

    FigureView figure =
        AnswerSection.of(with(pictures(Picture.Kind.HOLE_EFFECT))).chart().orElseThrow();

    assertThat(figure.id()).isEqualTo("chart-" + name(last));
    assertThat(figure.data().orElseThrow().caption())
        .contains("ring " + last.ring())
        .contains(last.response().label());
  }

  @Test
  void chartsOfOneKindAreToldApartByMeasureRingAndRun() {
    HoleEffect effect = RESULTS.holeEffects().get(0);
    List<ChartKey> keys = new ArrayList<>();
    keys.add(ChartKey.of(Picture.Kind.RUN));
    keys.add(ChartKey.of(Picture.Kind.RUN, Measure.BOIL_TIME));
    keys.add(ChartKey.of(Picture.Kind.RUN, Measure.NORMALISED_BOIL_TIME));
    keys.add(ChartKey.of(Picture.Kind.RUN, effect));
    keys.add(ChartKey.ofRing(Picture.Kind.RUN, effect.ring()));
    keys.add(ChartKey.ofRing(Picture.Kind.RUN, effect.ring() + " "));
    RESULTS.runs().forEach(run -> keys.add(ChartKey.ofRun(Picture.Kind.RUN, run.run().key())));
    keys.add(ChartKey.ofRun(Picture.Kind.BUDGET, RESULTS.runs().get(0).run().key()));

    assertThat(keys).doesNotHaveDuplicates();
    assertThat(ChartKey.of(Picture.Kind.RUN, effect))
        .isEqualTo(ChartKey.of(Picture.Kind.RUN, effect))
        .hasSameHashCodeAs(ChartKey.of(Picture.Kind.RUN, effect));
  }
}
