package fairboil.analysis.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

/**
 * In which order to burn: block after block, each build once in each block. A block is a day, or
 * days that follow each other, at one site.
 *
 * @param blocks the blocks in order; unmodifiable
 */
public record RunningOrder(List<Block> blocks) {

  /**
   * One block.
   *
   * @param number from 1
   * @param site where, if there are several sites
   * @param builds the builds in the order in which to burn them; unmodifiable
   */
  public record Block(int number, Optional<String> site, List<String> builds) {

    /** Copies the builds. */
    public Block {
      builds = List.copyOf(builds);
    }
  }

  /** Copies the blocks. */
  public RunningOrder {
    blocks = List.copyOf(blocks);
  }

  /**
   * A random order. Blocks are rows of random Latin squares: in as many blocks as there are builds,
   * no build has the same place twice.
   *
   * @param builds at least one
   * @param runs of each build, at each site
   * @param sites where the builds go round to, in a random order; empty for one place
   * @param random makes the order
   */
  public static RunningOrder of(
      List<String> builds, int runs, List<String> sites, RandomGenerator random) {
    List<String> places = shuffled(sites, random);
    int stays = Math.max(1, places.size());
    List<List<String>> orders = orders(builds, runs * stays, random);
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < orders.size(); i++) {
      Optional<String> site =
          places.isEmpty() ? Optional.empty() : Optional.of(places.get(i / runs));
      blocks.add(new Block(i + 1, site, orders.get(i)));
    }
    return new RunningOrder(blocks);
  }

  private static List<List<String>> orders(List<String> builds, int count, RandomGenerator random) {
    int size = builds.size();
    List<List<String>> orders = new ArrayList<>();
    while (orders.size() < count) {
      List<String> named = shuffled(builds, random);
      List<Integer> columns = shuffled(IntStream.range(0, size).boxed().toList(), random);
      for (int row : shuffled(IntStream.range(0, size).boxed().toList(), random)) {
        if (orders.size() < count) {
          orders.add(columns.stream().map(column -> named.get((row + column) % size)).toList());
        }
      }
    }
    return orders;
  }

  /** The same things in a random order. */
  static <T> List<T> shuffled(List<T> things, RandomGenerator random) {
    List<T> shuffled = new ArrayList<>(things);
    for (int i = shuffled.size() - 1; i > 0; i--) {
      Collections.swap(shuffled, i, random.nextInt(i + 1));
    }
    return shuffled;
  }

  /** How many runs there are. */
  public int runs() {
    return blocks.stream().mapToInt(block -> block.builds().size()).sum();
  }
}
