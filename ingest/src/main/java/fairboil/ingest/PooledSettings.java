package fairboil.ingest;

import fairboil.ingest.choice.HoleErrorOrigin;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Settings;
import fairboil.ingest.sheet.Unread;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The settings of several studies as one. What is told of a place or an instrument stays with its
 * folder; what decides how figures are made must be the same, or be set in some folders only, and
 * then holds for all; of words, the first are taken.
 */
final class PooledSettings {

  /** What is told of a group's place and instruments. */
  private static final Set<Column<?>> OF_A_PLACE =
      Set.of(
          Settings.ALTITUDE,
          Settings.LOSS_COEFFICIENT,
          Settings.STOPWATCH_STARTED_AT,
          Settings.SCALE_UNCERTAINTY,
          Settings.STOPWATCH_UNCERTAINTY,
          Settings.HOLE_READING_UNCERTAINTY);

  /** What changes no figure, or none that matters. */
  private static final Set<Column<?>> WORDS =
      Set.of(Settings.TITLE, Settings.QUESTION, Settings.SHOW_UNITS, Settings.SEED);

  private static final List<Column<List<String>>> LISTS =
      List.of(Settings.COMPARE_BY, Settings.COVARIATES);

  private final Map<String, Row> rows;
  private final Row.Builder pooled = Row.at(Place.of(Settings.SCHEMA.file()));
  private final List<Finding> findings = new ArrayList<>();
  private final List<Message> refusals = new ArrayList<>();

  private PooledSettings(Map<String, Row> rows) {
    this.rows = rows;
  }

  /**
   * Settings that hold for several studies together.
   *
   * @param all for all runs
   * @param own those that hold for the runs of each folder
   */
  record Outcome(Row all, Map<String, Row> own, List<Finding> findings) {}

  /**
   * Reconciles settings.
   *
   * @param rows the settings of each folder, their places told from outside it
   * @throws StudyException if the folders set what must be the same differently
   */
  static Outcome of(Map<String, Row> rows) throws StudyException {
    PooledSettings settings = new PooledSettings(rows);
    for (Column<?> column : Settings.SCHEMA.columns()) {
      settings.pool(column);
    }
    if (!settings.refusals.isEmpty()) {
      throw PoolSays.notAsOne(settings.refusals);
    }
    Row all = settings.pooled.build();
    return new Outcome(all, settings.own(all), settings.findings);
  }

  private void pool(Column<?> column) {
    if (OF_A_PLACE.contains(column)) {
      shareIfSame(column);
    } else if (column == Settings.HOLE_ERROR_WAS) {
      originOfHoleError();
    } else if (LISTS.stream().noneMatch(list -> list == column)) {
      agree(column);
    } else {
      LISTS.stream().filter(list -> list == column).forEach(this::join);
    }
  }

  private <T> Map<String, Given<T>> given(Column<T> column) {
    Map<String, Given<T>> given = new LinkedHashMap<>();
    rows.forEach((folder, row) -> row.cell(column).ifPresent(cell -> given.put(folder, cell)));
    return given;
  }

  /** Tells of a place what all places have in common; else it stays with each folder. */
  private <T> void shareIfSame(Column<T> column) {
    Map<String, Given<T>> given = given(column);
    if (given.size() == rows.size() && differing(given).isEmpty()) {
      pooled.put(column, given.values().iterator().next());
    }
  }

  private <T> void agree(Column<T> column) {
    Map<String, Given<T>> given = given(column);
    if (given.isEmpty()) {
      return;
    }
    Optional<Unread> unread =
        rows.values().stream().flatMap(row -> row.unread(column).stream()).findFirst();
    if (unread.isPresent() && !WORDS.contains(column)) {
      refusals.add(refusal(unread.get().finding()));
      return;
    }
    Given<T> first = given.values().iterator().next();
    Optional<Given<T>> other = differing(given);
    if (other.isPresent() && !WORDS.contains(column)) {
      refusals.add(refusal(column, first, other.get()));
      return;
    }
    pooled.put(column, first);
    other.ifPresent(differs -> note(differs.place(), tookFirst(column, first)));
    boolean holdsForAll = other.isEmpty() && given.size() < rows.size();
    if (holdsForAll && !WORDS.contains(column)) {
      note(
          first.place(),
          PoolSays.SET_IN_SOME.with(
              Argument.word(column.name()), Argument.names(List.copyOf(given.keySet()))));
    }
  }

  private static <T> Optional<Given<T>> differing(Map<String, Given<T>> given) {
    T first = given.values().iterator().next().value();
    return given.values().stream()
        .filter(cell -> !SameCells.sameValue(first, cell.value()))
        .findFirst();
  }

  private static Message tookFirst(Column<?> column, Given<?> first) {
    return PoolSays.TOOK_FIRST.with(
        Argument.word(column.name()),
        Argument.name(first.place().file()),
        Argument.cell(first.written()));
  }

  private static Message refusal(Finding unread) {
    return PoolSays.UNREAD_SETTING.with(
        Argument.place(unread.place()),
        Argument.clause(unread.problem()),
        Argument.clause(unread.remedy()));
  }

  private static Message refusal(Column<?> column, Given<?> one, Given<?> other) {
    return PoolSays.SET_DIFFERENTLY.with(
        Argument.word(column.name()),
        Argument.cell(one.written()),
        where(one),
        Argument.cell(other.written()),
        where(other));
  }

  private static Argument where(Given<?> cell) {
    Place place = cell.place();
    return Argument.place(new Place(place.file(), place.line(), Optional.empty()));
  }

  private void join(Column<List<String>> column) {
    Map<String, Given<List<String>>> given = given(column);
    if (given.isEmpty()) {
      return;
    }
    Set<String> all = new LinkedHashSet<>();
    given.values().forEach(cell -> all.addAll(cell.value()));
    Given<List<String>> first = given.values().iterator().next();
    pooled.put(column, Given.of(List.copyOf(all), String.join(", ", all), first.place()));
    if (differing(given).isPresent()) {
      note(first.place(), PoolSays.ALL_USED.with(Argument.word(column.name())));
    }
  }

  /** Drilled on purpose, in random order, only if every group says so. */
  private void originOfHoleError() {
    Map<String, Given<HoleErrorOrigin>> given = given(Settings.HOLE_ERROR_WAS);
    if (given.isEmpty()) {
      return;
    }
    Given<HoleErrorOrigin> first = given.values().iterator().next();
    if (given.size() == rows.size() && differing(given).isEmpty()) {
      pooled.put(Settings.HOLE_ERROR_WAS, first);
    } else {
      note(first.place(), PoolSays.AS_IT_CAME.with(Argument.word(Settings.HOLE_ERROR_WAS.name())));
    }
  }

  private void note(Place place, Message problem) {
    findings.add(
        Finding.note(
            place, problem, PoolSays.WRITE_THE_SAME.with(Argument.sheet(Settings.SCHEMA.file()))));
  }

  private Map<String, Row> own(Row all) {
    Map<String, Row> own = new LinkedHashMap<>();
    rows.forEach(
        (folder, row) -> {
          Row.Builder builder = all.copy();
          OF_A_PLACE.forEach(column -> builder.putFrom(row, column));
          own.put(folder, builder.build());
        });
    return own;
  }
}
