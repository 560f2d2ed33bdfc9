package fairboil.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class InOrderTest {

  private static final List<Integer> HUNDRED = IntStream.range(0, 100).boxed().toList();

  @Test
  void resultsComeInTheOrderOfTheThings() {
    for (int workers : new int[] {1, 2, 7}) {
      List<Integer> taken = new ArrayList<>();
      InOrder.each(HUNDRED, workers, thing -> thing, taken::add);

      assertThat(taken).isEqualTo(HUNDRED);
      assertThat(InOrder.map(HUNDRED, workers, thing -> -thing))
          .isEqualTo(HUNDRED.stream().map(thing -> -thing).toList());
    }
  }

  @Test
  void onlyAFewAreDoneAhead() {
    AtomicInteger started = new AtomicInteger();
    InOrder.each(
        HUNDRED,
        2,
        thing -> {
          started.incrementAndGet();
          return thing;
        },
        result -> assertThat(started.get()).isLessThanOrEqualTo(result + 8));
  }

  @Test
  void aFailureOfTheWorkOrOfTheTakerReachesTheCaller() {
    assertThatThrownBy(() -> InOrder.map(List.of(1, 0), 2, thing -> 1 / thing))
        .isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(
            () ->
                InOrder.each(
                    HUNDRED,
                    2,
                    thing -> thing,
                    result -> {
                      throw new IOException("disk full");
                    }))
        .isInstanceOf(IOException.class)
        .hasMessage("disk full");
  }
}
