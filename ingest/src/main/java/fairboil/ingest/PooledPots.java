package fairboil.ingest;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Pot;
import fairboil.ingest.sheet.PotsSheet;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The pots of several studies: each folder's own, but the reference pot must be one and the same.
 */
final class PooledPots {

  private static final List<Column<?>> WHAT_COUNTS =
      List.of(PotsSheet.MASS, PotsSheet.MATERIAL, PotsSheet.LOSS_COEFFICIENT);

  private final Map<String, Study> studies;
  private final Map<String, Pot> first = new LinkedHashMap<>();
  private final List<Pot> pots = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  private PooledPots(Map<String, Study> studies) {
    this.studies = studies;
  }

  /**
   * Joins pots.
   *
   * @param settings those of all studies together
   * @throws StudyException if the reference pot is not the same in all studies that have it
   */
  static PooledPots of(Map<String, Study> studies, Row settings) throws StudyException {
    PooledPots pooled = new PooledPots(studies);
    Optional<String> reference = settings.value(Settings.REFERENCE_POT);
    for (Study study : studies.values()) {
      for (Pot pot : study.pots()) {
        pooled.add(pot, reference);
      }
    }
    reference.ifPresent(pooled::lend);
    return pooled;
  }

  private void add(Pot pot, Optional<String> reference) throws StudyException {
    pots.add(pot);
    String name = pot.key().name();
    Pot other = first.putIfAbsent(name, pot);
    Optional<Column<?>> differs =
        Optional.ofNullable(other)
            .flatMap(before -> SameCells.difference(before.row(), pot.row(), WHAT_COUNTS));
    if (differs.isEmpty()) {
      return;
    }
    if (reference.filter(name::equals).isPresent()) {
      throw PoolSays.notAsOne(
          List.of(
              PoolSays.REFERENCE_POT.with(
                  Argument.name(name),
                  Argument.word(differs.get().name()),
                  Argument.place(pot.row().place()),
                  Argument.place(other.row().place()))));
    }
    findings.add(
        Finding.warning(
            pot.row().place(differs.get()),
            PoolSays.TWO_POTS.with(
                Argument.name(name),
                Argument.word(differs.get().name()),
                Argument.place(other.row().place())),
            PoolSays.NAME_POTS));
  }

  /** Gives the reference pot to the studies that do not have it. */
  private void lend(String name) {
    Optional.ofNullable(first.get(name))
        .ifPresent(
            pot ->
                studies.values().stream()
                    .map(study -> new Key(study.name(), name))
                    .filter(
                        key ->
                            !Objects.requireNonNull(studies.get(key.study())).pot(key).isPresent())
                    .forEach(key -> pots.add(new Pot(key, pot.row()))));
  }

  List<Pot> pots() {
    return pots;
  }

  List<Finding> findings() {
    return findings;
  }
}
