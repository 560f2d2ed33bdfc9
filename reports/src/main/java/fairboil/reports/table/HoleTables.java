package fairboil.reports.table;

import static fairboil.reports.table.TableColumn.count;
import static fairboil.reports.table.TableColumn.figure;
import static fairboil.reports.table.TableColumn.number;
import static fairboil.reports.table.TableColumn.text;

import fairboil.analysis.layout.HoleError;
import fairboil.analysis.layout.RingResult;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.ToDoubleFunction;

/** {@code holes.csv} and {@code hole_error.csv}: where the holes are against where they belong. */
final class HoleTables {

  /** A hole of a ring. */
  record HoleRow(RingResult ring, HoleError hole) {}

  static final TableSchema<HoleRow> HOLES =
      new TableSchema<>(
          "holes.csv",
          "a hole",
          List.of(
              text("build", "name of the build", row -> row.ring().build().name()),
              text("ring", "name of the ring", row -> row.ring().ring()),
              count("hole", "number of the hole", row -> OptionalLong.of(row.hole().number())),
              length(
                  "along_error",
                  "measured less intended place along the ring, after best fit",
                  HoleError::alongError),
              length(
                  "height_error",
                  "measured less intended height (on a base: outwards), after best fit",
                  HoleError::heightError),
              length("deviation", "distance from the intended place", HoleError::deviation),
              length("true_position", "twice the deviation", HoleError::truePosition)));

  static final TableSchema<RingResult> HOLE_ERROR =
      new TableSchema<>(
          "hole_error.csv",
          "a ring of a build",
          List.of(
              text("build", "name of the build", ring -> ring.build().name()),
              text("ring", "name of the ring", RingResult::ring),
              count(
                  "holes_intended",
                  "how many holes were meant",
                  ring -> OptionalLong.of(ring.holesIntended())),
              count(
                  "holes_measured",
                  "how many were measured",
                  ring -> OptionalLong.of(ring.holes().size())),
              figure(
                  "rotation",
                  TableUnit.DEGREE,
                  "best-fit rotation that was taken out",
                  RingResult::rotation),
              figure(
                  "rms",
                  TableUnit.MILLIMETRE,
                  "root mean square of the deviations",
                  RingResult::rms),
              figure(
                  "rms_floor",
                  TableUnit.MILLIMETRE,
                  "RMS that the uncertainty of reading alone would give",
                  RingResult::rmsFloor),
              figure("max", TableUnit.MILLIMETRE, "largest deviation", RingResult::largest),
              figure(
                  "spacing_sd",
                  TableUnit.MILLIMETRE,
                  "standard deviation of the gaps between neighbours less their intended size",
                  RingResult::spacingSd),
              figure(
                  "height_offset",
                  TableUnit.MILLIMETRE,
                  "mean height error",
                  RingResult::heightOffset),
              figure(
                  "open_area",
                  TableUnit.SQUARE_MILLIMETRE,
                  "area of the holes as measured",
                  RingResult::openArea),
              figure(
                  "open_area_intended",
                  TableUnit.SQUARE_MILLIMETRE,
                  "area of the holes as meant",
                  RingResult::openAreaIntended)));

  private HoleTables() {}

  static List<HoleRow> holes(List<RingResult> rings) {
    return rings.stream()
        .flatMap(ring -> ring.holes().stream().map(hole -> new HoleRow(ring, hole)))
        .toList();
  }

  private static TableColumn<HoleRow> length(
      String base, String meaning, ToDoubleFunction<HoleError> get) {
    return number(
        TableUnit.MILLIMETRE.name(base),
        TableUnit.MILLIMETRE,
        meaning,
        row -> OptionalDouble.of(get.applyAsDouble(row.hole())));
  }
}
