package fairboil.analysis.precision;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.group.RunGroup;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.sheet.Key;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * The values of a measure, each with its design, its stove and who burnt it. A cell is one stove at
 * one site.
 */
final class Burned {

  private final List<RunResult> runs = new ArrayList<>();
  private final double[] values;
  private final int[] sites;
  private final int[] stoves;
  private final int[] cells;
  private final int[] designs;

  private Burned(List<RunResult> runs, Measure measure, Repeated by) {
    this.runs.addAll(runs);
    this.values =
        runs.stream()
            .map(measure::counted)
            .flatMap(Optional::stream)
            .mapToDouble(known -> known.measured().value())
            .toArray();
    this.sites = levels(by::key);
    this.stoves = levels(run -> run.build().key());
    this.cells = levels(run -> List.of(run.build().key(), by.key(run)));
    this.designs = levels(run -> run.build().design().orElse(""));
  }

  /** The values that count; stoves of which a mean would hide failures are left out. */
  static Burned of(RunGroup runs, Measure measure, Repeated by) {
    List<RunResult> counted =
        runs.byBuild().values().stream()
            .filter(own -> !own.hidesFailures(measure))
            .flatMap(own -> own.runs().stream())
            .filter(run -> measure.counted(run).map(Figure.Known::measured).isPresent())
            .toList();
    return new Burned(counted, measure, by);
  }

  private int[] levels(Function<RunResult, Object> of) {
    Map<Object, Integer> numbers = new LinkedHashMap<>();
    return runs.stream()
        .mapToInt(run -> numbers.computeIfAbsent(of.apply(run), key -> numbers.size()))
        .toArray();
  }

  int size() {
    return values.length;
  }

  List<RunResult> runs() {
    return runs;
  }

  double[] values() {
    return values;
  }

  /** The values of each stove, stoves in the order of their first run. */
  List<double[]> byStove() {
    return stovesInOrder().stream()
        .map(stove -> valuesWhere(i -> runs.get(i).build().key().equals(stove)))
        .toList();
  }

  /** The values of one stove at each site, in the order of their first run, by name of the site. */
  Map<String, double[]> bySite(Key stove, Repeated by) {
    Map<Integer, String> names = new LinkedHashMap<>();
    for (int i = 0; i < runs.size(); i++) {
      if (runs.get(i).build().key().equals(stove)) {
        names.putIfAbsent(sites[i], by.name(runs.get(i)));
      }
    }
    Map<String, double[]> values = new LinkedHashMap<>();
    names.forEach(
        (site, name) ->
            values.put(
                name,
                valuesWhere(i -> sites[i] == site && runs.get(i).build().key().equals(stove))));
    return values;
  }

  private double[] valuesWhere(IntPredicate which) {
    return IntStream.range(0, values.length).filter(which).mapToDouble(i -> values[i]).toArray();
  }

  List<Key> stovesInOrder() {
    return runs.stream().map(run -> run.build().key()).distinct().toList();
  }

  int siteCount() {
    return (int) Arrays.stream(sites).distinct().count();
  }

  int[] sites() {
    return sites;
  }

  int[] stoves() {
    return stoves;
  }

  int[] cells() {
    return cells;
  }

  int[] designs() {
    return designs;
  }
}
