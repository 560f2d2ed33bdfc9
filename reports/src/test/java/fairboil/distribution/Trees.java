package fairboil.distribution;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What stands in a folder, as hashes that can be compared. */
final class Trees {

  private Trees() {}

  /** Relative name to SHA-256 of every file. */
  static SortedMap<String, String> hashes(Path folder) throws IOException {
    SortedMap<String, String> hashes = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        hashes.put(folder.relativize(file).toString(), sha256(file));
      }
    }
    return hashes;
  }

  /** Whether the folder holds just the files of its own list, each as it was written. */
  static boolean isWhole(Path folder) throws IOException {
    SortedMap<String, String> listed = new TreeMap<>();
    List<String> lines = Files.readAllLines(folder.resolve(".fairboil"));
    for (String line : lines.subList(1, lines.size())) {
      listed.put(line.substring(66), line.substring(0, 64));
    }
    SortedMap<String, String> found = hashes(folder);
    found.remove(".fairboil");
    return !listed.isEmpty() && listed.equals(found);
  }

  private static String sha256(Path file) throws IOException {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
