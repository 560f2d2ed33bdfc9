package fairboil.analysis.run;

import fairboil.analysis.figure.Figure;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.Outcome;
import fairboil.ingest.finding.Place;
import fairboil.ingest.sheet.RunsSheet;
import java.util.Optional;

/** How a run ended: as told, else as the log and the marks show. */
final class OutcomeFinder {

  private final RunContext context;
  private final PreparedLog log;
  private final EventTimes events;
  private final WaterShown water;
  private final Figure boilingPoint;

  OutcomeFinder(
      RunContext context,
      PreparedLog log,
      EventTimes events,
      WaterShown water,
      Figure boilingPoint) {
    this.context = context;
    this.log = log;
    this.events = events;
    this.water = water;
    this.boilingPoint = boilingPoint;
  }

  Optional<Outcome> find() {
    Optional<Outcome> told = context.value(RunsSheet.OUTCOME);
    told.ifPresent(this::check);
    return told.or(this::shown);
  }

  private Optional<Outcome> shown() {
    if (water.seen().isPresent() || marked()) {
      return Optional.of(Outcome.BOILED);
    }
    if (events.isAsked(Event.BOIL)) {
      return Optional.empty(); // somebody saw it boil, or will tell that it did not
    }
    return stayedBelow() ? Optional.of(Outcome.DID_NOT_BOIL) : Optional.empty();
  }

  private boolean marked() {
    return events.at(Event.BOIL).isPresent();
  }

  private boolean stayedBelow() {
    return boilingPoint.isKnown()
        && water.hottest().isKnown()
        && water.hottest().orNaN() < boilingPoint.orNaN() - 2 * water.levelUncertainty();
  }

  private void check(Outcome told) {
    Place place = context.place(RunsSheet.OUTCOME);
    boolean saw = water.seen().isPresent() || marked();
    if (told == Outcome.BOILED && !saw && !log.equals(PreparedLog.UNREAD)) {
      context
          .findings()
          .warning(
              place,
              "the run is told as boiled, but "
                  + (events.isAsked(Event.BOIL)
                      ? "the mark of boil is asked about and "
                      : "no boil was marked and ")
                  + water.whyNot().orElse("the log shows none"),
              "mark the boil in stopwatch.csv, or change the outcome");
    } else if (told != Outcome.BOILED && saw) {
      context
          .findings()
          .warning(
              place,
              "the run is told as “"
                  + told.label()
                  + "”, but "
                  + (marked() ? "the boil was marked" : "the log shows the water boiling"),
              "write “boiled” if it boiled before it ended");
    }
  }
}
