package fairboil.ingest;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Template;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Names for the folders of a pool: the shortest ends of their paths that tell them apart. */
final class PoolNames {

  private static final Template TWICE =
      Template.of("The folder {name} is given twice: name each study once, or it counts double");
  private static final Template NO_FOLDER =
      Template.of("There is no folder {name}, or it may not be read: check how it is spelt");

  private PoolNames() {}

  /**
   * The folders by their names, sorted by name: the order in which they were given does not matter.
   *
   * @throws StudyException if a folder is not there, or is given twice
   */
  static SortedMap<String, Path> of(List<Path> folders) throws StudyException {
    List<Path> real = new ArrayList<>();
    for (Path folder : folders) {
      Path found = real(folder);
      if (real.contains(found)) {
        throw new StudyException(TWICE.with(Argument.name(folder.toString())));
      }
      real.add(found);
    }
    SortedMap<String, Path> named = new TreeMap<>();
    real.forEach(path -> named.put(nameIn(real, path), path));
    return named;
  }

  private static Path real(Path folder) throws StudyException {
    try {
      return folder.toRealPath();
    } catch (IOException | SecurityException e) {
      throw new StudyException(NO_FOLDER.with(Argument.name(folder.toString())), e);
    }
  }

  private static String nameIn(List<Path> all, Path path) {
    for (int parts = 1; parts < path.getNameCount(); parts++) {
      String name = end(path, parts);
      int wanted = parts;
      if (all.stream().filter(other -> end(other, wanted).equals(name)).count() == 1) {
        return name;
      }
    }
    return end(path, Math.max(1, path.getNameCount()));
  }

  private static String end(Path path, int parts) {
    int count = path.getNameCount();
    if (count == 0) {
      return "study";
    }
    return path.subpath(Math.max(0, count - parts), count).toString().replace('\\', '/');
  }

  /** The names that more than one of the folders uses. */
  static Set<String> repeated(Iterable<? extends Iterable<String>> namesByFolder) {
    Set<String> seen = new HashSet<>();
    Set<String> repeated = new HashSet<>();
    for (Iterable<String> names : namesByFolder) {
      Set<String> own = new HashSet<>();
      names.forEach(own::add);
      own.stream().filter(name -> !seen.add(name)).forEach(repeated::add);
    }
    return repeated;
  }
}
