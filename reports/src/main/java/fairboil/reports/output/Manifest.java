package fairboil.reports.output;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The list of files that we wrote into a folder, with their SHA-256: how a folder of ours is told
 * from one that holds somebody's own files.
 *
 * @param hashes name relative to the folder, with forward slashes, to SHA-256 in hexadecimal
 */
record Manifest(SortedMap<String, String> hashes) {

  static final String NAME = ".fairboil";

  private static final String TITLE = "# files written by fairboil: SHA-256 and name";

  Manifest {
    hashes = Collections.unmodifiableSortedMap(new TreeMap<>(hashes));
  }

  /** The text of the file {@value #NAME}. */
  String text() {
    StringBuilder text = new StringBuilder(TITLE).append('\n');
    hashes.forEach((name, hash) -> text.append(hash).append("  ").append(name).append('\n'));
    return text.toString();
  }

  /** Reads the list in a folder, or empty if there is none or it is not ours. */
  static Optional<Manifest> in(Path folder) throws IOException {
    Path file = folder.resolve(NAME);
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    String[] lines = new String(Files.readAllBytes(file), StandardCharsets.UTF_8).split("\n", -1);
    if (!lines[0].equals(TITLE)) {
      return Optional.empty();
    }
    SortedMap<String, String> hashes = new TreeMap<>();
    for (int i = 1; i < lines.length; i++) {
      if (lines[i].length() > 66) {
        hashes.put(lines[i].substring(66), lines[i].substring(0, 64));
      }
    }
    return Optional.of(new Manifest(hashes));
  }

  /** The first file in a folder that is not in this list or is not as it was written. */
  Optional<Path> strangerIn(Path folder) throws IOException {
    StrangerFinder finder = new StrangerFinder(folder, this);
    Files.walkFileTree(folder, finder);
    return finder.found;
  }

  private boolean knows(Path folder, Path file, BasicFileAttributes attributes) throws IOException {
    String name = folder.relativize(file).toString().replace('\\', '/');
    if (name.equals(NAME)) {
      return true;
    }
    return attributes.isRegularFile() && Hashing.sha256(file).equals(hashes.get(name));
  }

  private static final class StrangerFinder extends SimpleFileVisitor<Path> {

    private final Path folder;
    private final Manifest manifest;
    private Optional<Path> found = Optional.empty();

    StrangerFinder(Path folder, Manifest manifest) {
      this.folder = folder;
      this.manifest = manifest;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
      if (manifest.knows(folder, file, attributes)) {
        return FileVisitResult.CONTINUE;
      }
      found = Optional.of(file);
      return FileVisitResult.TERMINATE;
    }
  }
}
