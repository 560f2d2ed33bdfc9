package fairboil.analysis.layout;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.SheetRow;
import fairboil.ingest.sheet.Hole;
import fairboil.ingest.sheet.HolesSheet;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/** What first and second readings of holes have in common, on walls and bases. */
final class Readings {

  /** Chance of calling readings too different when they are as uncertain as was said. */
  private static final double FALSE_ALARM = 0.01;

  private Readings() {}

  /**
   * Holes by reading and number; a number that stands twice in a reading is a finding, and so is
   * one that the plan does not have.
   */
  static Collection<List<Hole>> sorted(List<Hole> holes, int planned, List<Finding> findings) {
    Map<Integer, Map<Integer, Hole>> byReading = new TreeMap<>();
    for (Hole hole : holes) {
      if (hole.number() < 1 || hole.number() > planned) {
        findings.add(notPlanned(hole, planned));
        continue;
      }
      Map<Integer, Hole> reading =
          byReading.computeIfAbsent(hole.row().get(HolesSheet.READING), key -> new TreeMap<>());
      Hole before = reading.putIfAbsent(hole.number(), hole);
      if (before != null) {
        findings.add(twice(hole, before));
      }
    }
    return byReading.values().stream().map(Map::values).map(List::copyOf).toList();
  }

  private static Finding notPlanned(Hole hole, int planned) {
    return Finding.error(
        hole.row().place(HolesSheet.HOLE),
        "ring " + hole.ring() + " has no hole " + hole.number() + ", it has " + planned,
        "number its holes from 1 in order round the ring, or correct holes in rings.csv;"
            + " this hole is left out");
  }

  private static Finding twice(Hole hole, Hole before) {
    return Finding.error(
        hole.row().place(HolesSheet.HOLE),
        "hole "
            + hole.number()
            + " of ring "
            + hole.ring()
            + " of build "
            + hole.build()
            + " stands in "
            + before.row().place()
            + " already",
        "give the hole its own number, or write 2 in the column reading if it was measured twice;"
            + " this row is left out");
  }

  /** Averages the readings of each hole; all have been laid onto the first. */
  static List<Spot> averaged(List<List<Spot>> readings) {
    Map<Integer, Spot> spots = new TreeMap<>();
    for (List<Spot> reading : readings) {
      for (Spot spot : reading) {
        spots.merge(spot.number(), spot, Spot::averagedWith);
      }
    }
    return new ArrayList<>(spots.values());
  }

  /** The spots that both readings have, first beside second. */
  static List<Spot[]> common(List<Spot> first, List<Spot> second) {
    List<Spot[]> pairs = new ArrayList<>();
    for (Spot spot : first) {
      second.stream()
          .filter(other -> other.number() == spot.number())
          .findFirst()
          .ifPresent(other -> pairs.add(new Spot[] {spot, other}));
    }
    return pairs;
  }

  /**
   * Whether two readings of the same holes differ by more than their uncertainty explains: the sum
   * of squared differences against 2 σ² χ².
   *
   * @param pairs first and second reading, laid onto each other
   * @param fitted how many numbers were fitted to lay them onto each other
   * @param sigma the standard uncertainty of one reading, m
   */
  static void check(List<Spot[]> pairs, int fitted, double sigma, List<Finding> findings) {
    double squares = 0;
    int coordinates = 0;
    for (Spot[] pair : pairs) {
      double a = pair[0].a() - pair[1].a();
      squares += a * a;
      coordinates++;
      double b = pair[0].b() - pair[1].b();
      if (!Double.isNaN(b)) {
        squares += b * b;
        coordinates++;
      }
    }
    int degreesOfFreedom = coordinates - fitted;
    if (degreesOfFreedom < 1) {
      return;
    }
    double limit =
        ChiSquaredDistribution.of(degreesOfFreedom).inverseSurvivalProbability(FALSE_ALARM);
    if (squares / 2 > sigma * sigma * limit) {
      findings.add(tooDifferent(pairs.get(0)[0], Math.sqrt(squares / 2 / degreesOfFreedom), sigma));
    }
  }

  private static Finding tooDifferent(Spot spot, double seen, double sigma) {
    String value = String.format(Locale.ROOT, "%.2f mm", seen * 1e3);
    return Finding.warning(
            spot.place(),
            "two readings of the same holes differ as if each were uncertain by "
                + value
                + ", not by the hole reading uncertainty of "
                + String.format(Locale.ROOT, "%.2f mm", sigma * 1e3),
            "measure these holes again, or set the hole reading uncertainty to what it is")
        .mendedBy(SheetRow.of("study.csv", cells(value)));
  }

  private static Map<String, String> cells(String value) {
    Map<String, String> cells = new LinkedHashMap<>();
    cells.put("setting", "hole reading uncertainty");
    cells.put("value", value);
    return cells;
  }
}
