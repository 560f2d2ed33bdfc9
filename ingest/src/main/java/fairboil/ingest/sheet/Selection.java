package fairboil.ingest.sheet;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** What a claim is about: something by its name, or runs by what stands in their columns. */
public sealed interface Selection {

  /**
   * A build or a design.
   *
   * @param name its name
   */
  record Named(String name) implements Selection {}

  /**
   * The runs in which each column holds the given text, as in {@code fuel=pellets; lid=on}.
   *
   * @param cells column name to text, as written; unmodifiable
   */
  record Where(Map<String, String> cells) implements Selection {

    /** Copies the conditions, keeping their order. */
    public Where {
      cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
    }
  }
}
