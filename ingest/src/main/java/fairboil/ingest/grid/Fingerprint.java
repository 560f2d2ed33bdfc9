package fairboil.ingest.grid;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;
import java.util.Map;
import java.util.stream.Collectors;

/** SHA-256 of files: how anyone can tell whether a file, or a whole study, is the same. */
public final class Fingerprint {

  private Fingerprint() {}

  /**
   * The fingerprints of several files as a list: a line each, {@code SHA-256, two blanks, name},
   * sorted by name. The order and number of repeats of the files given do not matter. The common
   * program sha256sum reads such a list.
   */
  public static String list(Collection<SourceFile> files) {
    return files.stream()
        .collect(Collectors.toMap(SourceFile::path, SourceFile::sha256, (one, same) -> one))
        .entrySet()
        .stream()
        .sorted(Map.Entry.comparingByKey())
        .map(file -> file.getValue() + "  " + oneLine(file.getKey()) + "\n")
        .collect(Collectors.joining());
  }

  /** The fingerprint of several files together: SHA-256 of their {@link #list}, in hexadecimal. */
  public static String of(Collection<SourceFile> files) {
    return hex(sha256().digest(list(files).getBytes(StandardCharsets.UTF_8)));
  }

  private static String oneLine(String name) {
    return name.replaceAll("\\p{Cntrl}", "?");
  }

  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  static String hex(byte[] digest) {
    return HexFormat.of().formatHex(digest);
  }
}
