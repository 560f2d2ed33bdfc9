package fairboil.ingest;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiFunction;

/** Says once, at its first place, what is wrong with a name that many rows give. */
final class Repeats {

  private static final Template MORE_ROWS = Template.of(", here and in {count|more row}");

  private final Map<String, List<Place>> places = new LinkedHashMap<>();

  void add(String name, Place place) {
    places.computeIfAbsent(name, key -> new ArrayList<>()).add(place);
  }

  /**
   * One finding for each name.
   *
   * @param saying makes it of the name and a clause such as ", here and in 3 more rows"
   */
  void forEach(BiFunction<String, Argument, Finding> saying, List<Finding> findings) {
    places.forEach((name, where) -> findings.add(saying.apply(name, rows(where.size()))));
  }

  /** Where a name was given first. */
  Place first(String name) {
    return Objects.requireNonNull(places.get(name)).get(0);
  }

  private static Argument rows(int count) {
    return Argument.clause(count == 1 ? Message.NONE : MORE_ROWS.with(Argument.count(count - 1)));
  }
}
