package fairboil.analysis.run;

import fairboil.ingest.Study;
import fairboil.ingest.choice.Event;
import fairboil.ingest.finding.Place;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A run with what belongs to it.
 *
 * @param study its study
 * @param references the reference conditions
 * @param run the run
 * @param findings where to tell of problems
 */
record RunContext(Study study, References references, Run run, Findings findings) {

  <T> T setting(Column<T> setting) {
    return study.settingsOf(run.key()).get(setting);
  }

  double held(Column<Quantity> setting) {
    return setting(setting).value();
  }

  <T> Optional<Given<T>> cell(Column<T> column) {
    return run.row().cell(column);
  }

  <T> Optional<T> value(Column<T> column) {
    return run.row().value(column);
  }

  OptionalDouble number(Column<Quantity> column) {
    Optional<Quantity> given = value(column);
    return given.isPresent() ? OptionalDouble.of(given.get().value()) : OptionalDouble.empty();
  }

  /**
   * What identifies an instrument of which no id is told: it is taken as the same wherever it has
   * the same name, but each site has its own.
   */
  Key instrument(String name) {
    String study = run.key().study();
    return value(RunsSheet.SITE)
        .map(site -> new Key(study, name + " at " + site))
        .orElseGet(() -> new Key(study, name));
  }

  /** The events of which every mark is asked about: what stands there may mean several times. */
  Set<Event> asked() {
    EnumSet<Event> asked = EnumSet.noneOf(Event.class);
    study.askedOf(run.key()).forEach(mark -> mark.event().ifPresent(asked::add));
    study.marksOf(run.key()).forEach(mark -> mark.event().ifPresent(asked::remove));
    return asked;
  }

  Place place(Column<?> column) {
    return run.row().place(column);
  }
}
