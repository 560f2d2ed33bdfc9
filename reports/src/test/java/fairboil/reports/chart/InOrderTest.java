package fairboil.reports.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class InOrderTest {

  private static List<Supplier<Integer>> tasks(int count, AtomicInteger started) {
    return IntStream.range(0, count)
        .mapToObj(
            i ->
                (Supplier<Integer>)
                    () -> {
                      started.incrementAndGet();
                      return i;
                    })
        .toList();
  }

  @Test
  void resultsComeInTheOrderOfTheTasks() throws IOException {
    for (int threads : new int[] {1, 2, 7}) {
      List<Integer> taken = new ArrayList<>();
      InOrder.run(tasks(100, new AtomicInteger()), threads, taken::add);

      assertThat(taken).containsExactlyElementsOf(IntStream.range(0, 100).boxed().toList());
    }
  }

  @Test
  void onlyAFewAreDoneAhead() throws IOException {
    AtomicInteger started = new AtomicInteger();
    InOrder.run(
        tasks(100, started),
        2,
        result -> assertThat(started.get()).isLessThanOrEqualTo(result + 8));
  }

  @Test
  void aFailureOfATaskOrOfTheTakerReachesTheCaller() {
    List<Supplier<Integer>> bad =
        List.of(
            () -> 1,
            () -> {
              throw new IllegalStateException("broken");
            });

    assertThatThrownBy(() -> InOrder.run(bad, 2, result -> {}))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("broken");
    assertThatThrownBy(
            () ->
                InOrder.run(
                    tasks(9, new AtomicInteger()),
                    2,
                    result -> {
                      throw new IOException("disk full");
                    }))
        .isInstanceOf(IOException.class)
        .hasMessage("disk full");
  }
}
