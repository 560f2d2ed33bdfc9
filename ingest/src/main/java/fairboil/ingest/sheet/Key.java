package fairboil.ingest.sheet;

import java.util.Comparator;

/**
 * What identifies a build, a run or a site: its study and its name. Never a bare string, because
 * several studies may be pooled in which the same name means different things.
 *
 * @param study the name of the study, that is of its folder
 * @param name the name as people say it; for a run whose name repeats over builds, build and run
 *     joined by a hyphen, such as {@code A-1}
 */
public record Key(String study, String name) implements Comparable<Key> {

  private static final Comparator<Key> ORDER =
      Comparator.comparing(Key::study).thenComparing(Key::name);

  /** Checks that there is a name. */
  public Key {
    if (name.isBlank()) {
      throw new IllegalArgumentException("a key needs a name");
    }
  }

  /** Sorts by study, then name, code unit by code unit. */
  @Override
  public int compareTo(Key other) {
    return ORDER.compare(this, other);
  }

  // A record's own equality is put together at run time, which takes as long as reading a sheet.

  @Override
  public boolean equals(Object other) {
    return other instanceof Key key && name.equals(key.name) && study.equals(key.study);
  }

  @Override
  public int hashCode() {
    return 31 * study.hashCode() + name.hashCode();
  }

  /** The name alone. */
  @Override
  public String toString() {
    return name;
  }
}
