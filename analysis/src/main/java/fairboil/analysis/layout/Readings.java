package fairboil.analysis.layout;

import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.Hole;
import fairboil.ingest.sheet.HolesSheet;
import fairboil.ingest.sheet.RingsSheet;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/** What first and second readings of holes have in common, on walls and bases. */
final class Readings {

  /** Chance of calling readings too different when they are as uncertain as was said. */
  private static final double FALSE_ALARM = 0.01;

  /** Readings of 0.1 mm scatter by hundredths of a millimetre. */
  private static final double SHOWN = 0.02e-3;

  private static final Template NOT_PLANNED =
      Template.of("ring {name} has no hole {number}: it has {count|hole}, so this one is left out");
  private static final Template NUMBER_IN_ORDER =
      Template.of(
          "number the holes from 1 in order round the ring, or correct the column holes of {sheet}");
  private static final Template TWICE =
      Template.of(
          "hole {number} of ring {name} of build {name} is already in {place}, so this row is left"
              + " out");
  private static final Template OWN_NUMBER =
      Template.of(
          "give the hole its own number, or if it was measured twice, type 2 in the column reading");
  private static final Template TOO_DIFFERENT =
      Template.of(
          "two readings of the same holes differ as if each were uncertain by {value}, but the hole"
              + " reading uncertainty is {value}");
  private static final Template MEASURE_AGAIN =
      Template.of("measure these holes again, or set the hole reading uncertainty to what it is");

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
        NOT_PLANNED.with(
            Argument.name(hole.ring()), Argument.number(hole.number(), 0), Argument.count(planned)),
        NUMBER_IN_ORDER.with(Argument.sheet(RingsSheet.SCHEMA.file())));
  }

  private static Finding twice(Hole hole, Hole before) {
    return Finding.error(
        hole.row().place(HolesSheet.HOLE),
        TWICE.with(
            Argument.number(hole.number(), 0),
            Argument.name(hole.ring()),
            Argument.name(hole.build().name()),
            Argument.place(before.row().place())),
        OWN_NUMBER.with());
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
   * @param reading how uncertain one reading is said to be
   */
  static void check(
      List<Spot[]> pairs, int fitted, ReadingUncertainty reading, List<Finding> findings) {
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
    if (squares / 2 > reading.sigma() * reading.sigma() * limit) {
      double seen = Math.sqrt(squares / 2 / degreesOfFreedom);
      findings.add(tooDifferent(pairs.get(0)[0], seen, reading));
    }
  }

  private static Finding tooDifferent(Spot spot, double seen, ReadingUncertainty reading) {
    return Finding.warning(
            spot.place(),
            TOO_DIFFERENT.with(
                Argument.value(seen, SHOWN, Dimension.LENGTH),
                Argument.value(reading.sigma(), SHOWN, Dimension.LENGTH)),
            MEASURE_AGAIN.with())
        .mendedBy(reading.setTo(seen));
  }
}
