package fairboil.analysis.layout;

import fairboil.analysis.figure.Figure;
import fairboil.ingest.choice.Air;
import fairboil.ingest.choice.Surface;
import fairboil.ingest.sheet.Key;
import java.util.List;
import java.util.Optional;

/**
 * How well the holes of one ring of one build were placed. Lengths in metres, areas in m².
 *
 * @param build the build
 * @param ring the name of the ring
 * @param surface wall or base
 * @param air what its air is for, if told
 * @param extent the wrap of a wall ring, or the radius of a base circle: the scale of a ring map
 * @param holesIntended how many holes were meant
 * @param holes each hole measured, by number; unmodifiable
 * @param rotation the best-fit rotation that was taken out, rad
 * @param rms root mean square of the deviations
 * @param rmsFloor the RMS that the uncertainty of reading alone would give
 * @param largest the largest deviation
 * @param spacingSd standard deviation of the gaps between neighbours along the ring, less their
 *     intended size
 * @param heightOffset mean height error
 * @param openArea area of the holes as measured
 * @param openAreaIntended area of the holes as meant
 */
public record RingResult(
    Key build,
    String ring,
    Surface surface,
    Optional<Air> air,
    double extent,
    int holesIntended,
    List<HoleError> holes,
    Figure rotation,
    Figure rms,
    Figure rmsFloor,
    Figure largest,
    Figure spacingSd,
    Figure heightOffset,
    Figure openArea,
    Figure openAreaIntended) {

  /** Copies the holes. */
  public RingResult {
    holes = List.copyOf(holes);
  }
}
