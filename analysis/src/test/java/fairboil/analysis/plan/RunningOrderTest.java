package fairboil.analysis.plan;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.model.Chance;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RunningOrderTest {

  private static final List<String> BUILDS = List.of("K1", "K2", "K3", "K4", "K5");

  private static RunningOrder order(int seed, int runs, List<String> sites) {
    return RunningOrder.of(BUILDS, runs, sites, Chance.stream(seed, "plan", "running order"));
  }

  @Test
  void eachBuildComesOnceInEachBlock() {
    for (int seed = 0; seed < 50; seed++) {
      RunningOrder order = order(seed, 7, List.of());
      assertThat(order.blocks()).hasSize(7);
      assertThat(order.blocks())
          .allSatisfy(block -> assertThat(block.builds()).hasSameElementsAs(BUILDS).hasSize(5));
    }
  }

  @Test
  void noBuildHasAPlaceTwiceInAsManyBlocksAsBuilds() {
    List<RunningOrder.Block> blocks = order(3, 5, List.of()).blocks();
    for (int place = 0; place < 5; place++) {
      int at = place;
      assertThat(blocks.stream().map(block -> block.builds().get(at))).doesNotHaveDuplicates();
    }
  }

  @Test
  void theSameSeedGivesTheSameOrderAndAnotherAnother() {
    assertThat(order(1, 3, List.of())).isEqualTo(order(1, 3, List.of()));
    assertThat(order(1, 3, List.of())).isNotEqualTo(order(2, 3, List.of()));
  }

  /** Over seeds each place is as likely for each build: χ² of 4 degrees of freedom at 0.1 %. */
  @Test
  void placesAreBalanced() {
    int seeds = 2000;
    for (String build : BUILDS) {
      double[] counts = new double[5];
      IntStream.range(0, seeds)
          .forEach(
              seed -> counts[order(seed, 1, List.of()).blocks().get(0).builds().indexOf(build)]++);
      double squares = 0;
      for (double count : counts) {
        squares += Math.pow(count - seeds / 5.0, 2) / (seeds / 5.0);
      }
      assertThat(squares).isLessThan(18.47);
    }
  }

  @Test
  void stovesGoRoundAllSites() {
    List<RunningOrder.Block> blocks = order(1, 2, List.of("yard", "barn")).blocks();
    assertThat(blocks).hasSize(4);
    assertThat(blocks.get(0).site()).isEqualTo(blocks.get(1).site());
    assertThat(blocks.get(2).site()).isEqualTo(blocks.get(3).site());
    assertThat(blocks.get(0).site()).isNotEqualTo(blocks.get(2).site());
  }
}
