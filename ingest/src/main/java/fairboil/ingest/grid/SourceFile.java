package fairboil.ingest.grid;

/**
 * A file that was read, with its fingerprint.
 *
 * @param name its name relative to the study folder, with forward slashes
 * @param bytes its size
 * @param sha256 its SHA-256, 64 lower-case hexadecimal digits
 */
public record SourceFile(String name, long bytes, String sha256) {

  /** The same file, named from outside the folder that holds it. */
  public SourceFile in(String folder) {
    return new SourceFile(folder + "/" + name, bytes, sha256);
  }
}
