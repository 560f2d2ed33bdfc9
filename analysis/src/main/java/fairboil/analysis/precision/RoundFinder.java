package fairboil.analysis.precision;

import fairboil.analysis.measure.Measure;
import fairboil.analysis.precision.Round.AtSite;
import fairboil.ingest.sheet.Key;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Puts side by side what the sites found of a stove that went round. */
final class RoundFinder {

  private static final double STRAGGLES = 0.05;
  private static final double LIES_OUT = 0.01;

  /** With fewer sites, h cannot but be the same for each. */
  private static final int FEWEST_FOR_H = 3;

  private final List<String> names = new ArrayList<>();
  private final List<double[]> values = new ArrayList<>();
  private final double[] means;
  private final double centre;
  private final double spread;
  private final double squares;
  private final int size;

  private final Flag[] grubbs;

  private RoundFinder(Map<String, double[]> sites) {
    sites.forEach(
        (name, some) -> {
          names.add(name);
          values.add(some);
        });
    this.means = values.stream().mapToDouble(RoundFinder::mean).toArray();
    this.centre = mean(means);
    this.spread = Math.sqrt(variance(means));
    this.squares = withSeveral().mapToDouble(RoundFinder::variance).sum();
    this.size = commonSize();
    this.grubbs = grubbs();
  }

  /** What sites found of one stove; the values of each site. */
  static Round of(Measure measure, Key stove, Map<String, double[]> sites) {
    RoundFinder finder = new RoundFinder(sites);
    List<AtSite> rows = new ArrayList<>();
    for (int i = 0; i < finder.means.length; i++) {
      rows.add(finder.row(i));
    }
    double largest = finder.withSeveral().mapToDouble(RoundFinder::variance).max().orElse(0);
    boolean told = finder.groups() >= 2 && finder.squares > 0;
    double share = largest / finder.squares;
    return new Round(
        measure,
        stove,
        rows,
        told ? OptionalDouble.of(share) : OptionalDouble.empty(),
        told ? finder.cochran(share) : Flag.NONE);
  }

  private java.util.stream.Stream<double[]> withSeveral() {
    return values.stream().filter(some -> some.length > 1);
  }

  private int groups() {
    return (int) withSeveral().count();
  }

  /**
   * The number of runs that most sites made: the tables are for equal numbers (ISO 5725-2, 7.3).
   */
  private int commonSize() {
    Map<Integer, Long> counts =
        withSeveral()
            .collect(
                Collectors.groupingBy(
                    some -> some.length, LinkedHashMap::new, Collectors.counting()));
    return counts.entrySet().stream()
        .max(
            Map.Entry.<Integer, Long>comparingByValue()
                .thenComparing(Map.Entry.<Integer, Long>comparingByKey().reversed()))
        .map(Map.Entry::getKey)
        .orElse(0);
  }

  private Flag cochran(double share) {
    return Flag.of(
        share,
        OutlierTests.cochran(groups(), size, STRAGGLES),
        OutlierTests.cochran(groups(), size, LIES_OUT));
  }

  private AtSite row(int i) {
    double[] own = values.get(i);
    boolean several = own.length > 1;
    boolean hasH = hasH();
    boolean hasK = several && groups() >= 2 && squares > 0;
    double h = (means[i] - centre) / spread;
    double k = Math.sqrt(variance(own) * groups() / squares);
    return new AtSite(
        names.get(i),
        own.length,
        means[i],
        several ? OptionalDouble.of(Math.sqrt(variance(own))) : OptionalDouble.empty(),
        hasH ? OptionalDouble.of(h) : OptionalDouble.empty(),
        hasH ? flagOfH(h) : Flag.NONE,
        hasK ? OptionalDouble.of(k) : OptionalDouble.empty(),
        hasK ? flagOfK(k) : Flag.NONE,
        grubbs[i]);
  }

  private boolean hasH() {
    return means.length >= FEWEST_FOR_H && spread > 0;
  }

  /** Grubbs's test of each mean, and where it finds no outlier, of the two on either side. */
  private Flag[] grubbs() {
    Flag[] flags = new Flag[means.length];
    if (!hasH()) {
      Arrays.fill(flags, Flag.NONE);
      return flags;
    }
    for (int i = 0; i < flags.length; i++) {
      flags[i] = grubbs((means[i] - centre) / spread);
    }
    boolean outlier = Arrays.asList(flags).contains(Flag.OUTLIER);
    if (!outlier) {
      List<Integer> order =
          IntStream.range(0, means.length)
              .boxed()
              .sorted(Comparator.comparingDouble(i -> means[i]))
              .toList();
      markPair(order.subList(0, Math.min(2, order.size())), flags);
      markPair(order.subList(Math.max(0, order.size() - 2), order.size()), flags);
    }
    return flags;
  }

  private void markPair(List<Integer> pair, Flag[] flags) {
    OutlierTests.grubbsPair(means.length)
        .ifPresent(
            limits -> {
              Flag flag = Flag.of(-left(pair), -limits.fivePercent(), -limits.onePercent());
              pair.forEach(i -> flags[i] = flag == Flag.NONE ? flags[i] : flag);
            });
  }

  /** The share of the squares about their mean that is left without a pair of means. */
  private double left(List<Integer> pair) {
    double[] others =
        IntStream.range(0, means.length)
            .filter(i -> !pair.contains(i))
            .mapToDouble(i -> means[i])
            .toArray();
    return variance(others) * (others.length - 1) / (spread * spread * (means.length - 1));
  }

  private Flag flagOfH(double h) {
    return Flag.of(
        Math.abs(h),
        OutlierTests.mandelH(means.length, STRAGGLES),
        OutlierTests.mandelH(means.length, LIES_OUT));
  }

  private Flag flagOfK(double k) {
    return Flag.of(
        k,
        OutlierTests.mandelK(groups(), size, STRAGGLES),
        OutlierTests.mandelK(groups(), size, LIES_OUT));
  }

  /** The deviation of a mean in standard deviations is Grubbs's statistic as well as Mandel's. */
  private Flag grubbs(double h) {
    return Flag.of(
        Math.abs(h),
        OutlierTests.grubbs(means.length, STRAGGLES),
        OutlierTests.grubbs(means.length, LIES_OUT));
  }

  private static double mean(double[] some) {
    return Arrays.stream(some).average().orElse(Double.NaN);
  }

  private static double variance(double[] some) {
    double mean = mean(some);
    return Arrays.stream(some).map(x -> (x - mean) * (x - mean)).sum() / (some.length - 1);
  }
}
