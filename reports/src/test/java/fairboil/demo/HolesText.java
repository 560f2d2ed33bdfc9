package fairboil.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Writes {@code holes.csv} of the demonstration: what people with a strip and a rule read. */
final class HolesText {

  /** Standard deviation of one reading of a place, mm, each way. */
  static final double READING = 0.2;

  private final SheetText sheet =
      new SheetText(
          "build",
          "ring",
          "hole",
          "reading",
          "along (mm)",
          "gap (mm)",
          "height (mm)",
          "x (mm)",
          "y (mm)",
          "angle (°)",
          "radius (mm)",
          "diameter (mm)");

  private final long seed;

  private HolesText(long seed) {
    this.seed = seed;
  }

  /** The sheet for some stoves. */
  static SheetText of(List<Stove> stoves, long seed) {
    HolesText text = new HolesText(seed);
    stoves.forEach(text::add);
    return text.sheet;
  }

  private void add(Stove stove) {
    for (RingPlan ring : stove.design().wallRings()) {
      boolean upper = ring.place() == RingPlan.Place.UPPER;
      double rms = upper ? stove.upperRms() : stove.lowerRms();
      wall(stove, ring, drilled(ring, rms, chance(stove, ring.ring())));
    }
    base(stove);
  }

  private Chance chance(Stove stove, String purpose) {
    return Chance.of(seed, "holes " + stove.name() + " " + purpose);
  }

  private static List<Spot> drilled(RingPlan ring, double rms, Chance chance) {
    List<Spot> errors = Drilling.wall(ring.holes(), rms, chance);
    Spot seam = new Spot(chance.between(5, 12), 0);
    return added(ring.intended(), errors).stream().map(seam::plus).toList();
  }

  private static List<Spot> added(List<Spot> places, List<Spot> differences) {
    return IntStream.range(0, places.size())
        .mapToObj(i -> places.get(i).plus(differences.get(i)))
        .toList();
  }

  private void wall(Stove stove, RingPlan ring, List<Spot> drilled) {
    int readings = isReadTwice(stove, ring) ? 2 : 1;
    List<Spot> numbered = numbered(stove, drilled);
    List<String> widths = widths(ring, chance(stove, ring.ring() + " widths"));
    for (int reading = 1; reading <= readings; reading++) {
      Chance chance = chance(stove, ring.ring() + " reading " + reading);
      List<Spot> read = numbered.stream().map(spot -> read(spot, chance)).toList();
      wallRows(stove, ring, read, reading, widths);
    }
  }

  private static boolean isReadTwice(Stove stove, RingPlan ring) {
    return stove.name().endsWith("1") && ring.place() == RingPlan.Place.UPPER;
  }

  /** People number holes from wherever they start, and some of them go the other way round. */
  private static List<Spot> numbered(Stove stove, List<Spot> spots) {
    return switch (stove.name()) {
      case "L4" -> IntStream.range(0, spots.size()).mapToObj(i -> at(spots, -i)).toList();
      case "M2" -> IntStream.range(0, spots.size()).mapToObj(i -> at(spots, i + 7)).toList();
      case "M5" -> IntStream.range(0, spots.size()).mapToObj(i -> at(spots, 4 - i)).toList();
      default -> spots;
    };
  }

  private static Spot at(List<Spot> spots, int index) {
    return spots.get(Math.floorMod(index, spots.size()));
  }

  private static Spot read(Spot spot, Chance chance) {
    return spot.plus(new Spot(chance.gauss(READING), chance.gauss(READING)));
  }

  private static List<String> widths(RingPlan ring, Chance chance) {
    return IntStream.range(0, ring.holes())
        .mapToObj(i -> Decimal.text(ring.diameter() + chance.gauss(0.08), 1))
        .toList();
  }

  private void wallRows(
      Stove stove, RingPlan ring, List<Spot> read, int reading, List<String> widths) {
    boolean gaps = stove.name().equals("L5") && ring.place() == RingPlan.Place.LOWER;
    for (int i = 0; i < read.size(); i++) {
      double along = Decimal.rounded(inWrap(read.get(i).first(), ring), 1);
      double next = Decimal.rounded(inWrap(at(read, i + 1).first(), ring), 1);
      sheet.row(
          stove.name(),
          ring.ring(),
          i + 1,
          reading,
          gaps ? "" : Decimal.text(along, 1),
          gaps ? Decimal.text(inWrap(next - along, ring), 1) : "",
          Decimal.text(read.get(i).second(), 1),
          "",
          "",
          "",
          "",
          widths.get(i));
    }
  }

  private static double inWrap(double along, RingPlan ring) {
    return along - ring.round() * StrictMath.floor(along / ring.round());
  }

  private void base(Stove stove) {
    Chance chance = chance(stove, "base");
    List<Spot> intended = new ArrayList<>();
    stove.design().baseRings().forEach(ring -> intended.addAll(ring.intended()));
    List<Spot> errors = Drilling.base(intended, stove.baseRms(), chance);
    double turn = chance.between(-0.1, 0.1);
    Spot shift = new Spot(chance.gauss(0.6), chance.gauss(0.6));
    List<Spot> read =
        added(intended, errors).stream()
            .map(spot -> read(spot.turned(turn).plus(shift), chance))
            .toList();
    int from = 0;
    for (RingPlan ring : stove.design().baseRings()) {
      baseRows(stove, ring, read.subList(from, from + ring.holes()), chance);
      from += ring.holes();
    }
  }

  private void baseRows(Stove stove, RingPlan ring, List<Spot> read, Chance chance) {
    List<String> widths = widths(ring, chance);
    boolean square = stove.design() == Design.LEEK;
    for (int i = 0; i < read.size(); i++) {
      Spot spot = read.get(i);
      double angle = StrictMath.toDegrees(StrictMath.atan2(spot.second(), spot.first()));
      sheet.row(
          stove.name(),
          ring.ring(),
          i + 1,
          1,
          "",
          "",
          "",
          square ? Decimal.text(spot.first(), 1) : "",
          square ? Decimal.text(spot.second(), 1) : "",
          square ? "" : Decimal.text(angle < 0 ? angle + 360 : angle, 1),
          square ? "" : Decimal.text(StrictMath.sqrt(spot.square()), 1),
          widths.get(i));
    }
  }
}
