package fairboil.ingest;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiFunction;

/** Says once, at its first place, what is wrong with a name that many rows give. */
final class Repeats {

  private final Map<String, List<Place>> places = new LinkedHashMap<>();

  void add(String name, Place place) {
    places.computeIfAbsent(name, key -> new ArrayList<>()).add(place);
  }

  /**
   * One finding for each name.
   *
   * @param saying makes it of the name and a clause such as "in this and 3 more rows"
   */
  void forEach(BiFunction<String, String, Finding> saying, List<Finding> findings) {
    places.forEach((name, where) -> findings.add(saying.apply(name, rows(where.size()))));
  }

  /** Where a name was given first. */
  Place first(String name) {
    return Objects.requireNonNull(places.get(name)).get(0);
  }

  private static String rows(int count) {
    return switch (count) {
      case 1 -> "";
      case 2 -> ", here and in one more row";
      default -> ", here and in " + (count - 1) + " more rows";
    };
  }
}
