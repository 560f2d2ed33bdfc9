package fairboil.analysis.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.clock.ClockJoin.Grounds;
import fairboil.analysis.trace.Sighting;
import java.util.List;
import org.junit.jupiter.api.Test;

class ClockJoinTest {

  /** An event marked at 100 s that the log shows later by an offset. */
  private static CommonEvent event(String name, double offset, double ofLog, double ofMark) {
    return new CommonEvent(name, new Sighting(100 + offset, ofLog), new Sighting(100, ofMark));
  }

  @Test
  void noEventTellsNothing() {
    ClockJoin join = ClockJoin.of(List.of());

    assertThat(join.grounds()).isEqualTo(Grounds.NOTHING);
    assertThat(join.shift()).isZero();
  }

  /** Hand-worked: weights 1/25 and 1/100 of 36 and 46 make 38; u = 1/√0.05 = √20. */
  @Test
  void offsetIsTheWeightedMeanOfWhatAgrees() {
    ClockJoin join = ClockJoin.of(List.of(event("lit", 36, 3, 4), event("flame out", 46, 8, 6)));

    assertThat(join.grounds()).isEqualTo(Grounds.AGREEING_EVENTS);
    assertThat(join.offset()).isCloseTo(38, within(1e-9));
    assertThat(join.uncertainty()).isCloseTo(Math.sqrt(20), within(1e-9));
    assertThat(join.shift()).isEqualTo(join.offset());
  }

  /**
   * Hand-worked: 0 ± 5 and 12 ± 5 have the mean 6 and χ² = 2 × 1.2² = 2.88 on 1 degree of freedom,
   * so that u = 5/√2 × √2.88 = 6: half the spread.
   */
  @Test
  void scatterOfTheOffsetsCounts() {
    ClockJoin join = ClockJoin.of(List.of(event("lit", 0, 3, 4), event("flame out", 12, 4, 3)));

    assertThat(join.uncertainty()).isCloseTo(6, within(1e-9));
    assertThat(join.shift()).isZero();
    assertThat(join.uncertaintyLeft()).isCloseTo(Math.sqrt(36 + 12), within(1e-9));
  }

  @Test
  void whatIsWithinItsDoubtMovesNothing() {
    ClockJoin join = ClockJoin.of(List.of(event("lit", 6, 3, 1), event("flame out", 4, 6, 1)));

    assertThat(join.shift()).isZero();
    assertThat(join.joins()).isTrue();
  }

  @Test
  void anEventThatDoesNotAgreeIsLeftOut() {
    ClockJoin join =
        ClockJoin.of(
            List.of(event("lit", 30, 3, 1), event("pot on", 33, 8, 1), event("out", 180, 6, 1)));

    assertThat(join.agreeing()).extracting(CommonEvent::name).containsExactly("lit", "pot on");
    assertThat(join.others()).extracting(CommonEvent::name).containsExactly("out");
    assertThat(join.offset()).isBetween(30.0, 31.0);
  }

  @Test
  void oneEventJoinsWithinAMinute() {
    ClockJoin near = ClockJoin.of(List.of(event("lit", 40, 3, 1)));
    ClockJoin far = ClockJoin.of(List.of(event("lit", 400, 3, 1)));

    assertThat(near.grounds()).isEqualTo(Grounds.ONE_EVENT);
    assertThat(near.shift()).isEqualTo(40);
    assertThat(near.uncertainty()).isGreaterThan(near.agreeing().get(0).uncertainty());
    assertThat(near.joins()).isTrue();
    assertThat(far.isFar()).isTrue();
    assertThat(far.joins()).isFalse();
  }

  @Test
  void eventsThatDisagreeMoveNothing() {
    ClockJoin join = ClockJoin.of(List.of(event("lit", 5, 3, 1), event("flame out", -200, 6, 1)));

    assertThat(join.grounds()).isEqualTo(Grounds.DISAGREEING_EVENTS);
    assertThat(join.shift()).isZero();
    assertThat(join.joins()).isFalse();
  }

  @Test
  void ofTwoReadingsOfTheFirstRiseTheMoreAgreedIsLikelier() {
    ClockJoin byLit = ClockJoin.of(List.of(event("lit", 40, 3, 1), event("flame out", 2, 6, 1)));
    ClockJoin byGas = ClockJoin.of(List.of(event("gas lit", 4, 3, 1), event("flame out", 2, 6, 1)));

    assertThat(ClockJoin.likelier(byLit, byGas)).isEqualTo(byGas);
    assertThat(ClockJoin.likelier(byGas, byLit)).isEqualTo(byGas);
  }
}
