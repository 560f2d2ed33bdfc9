package fairboil.ingest.grid;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * A file that was read, with its fingerprint.
 *
 * @param name its name relative to the study folder, with forward slashes
 * @param bytes its size
 * @param sha256 its SHA-256, 64 lower-case hexadecimal digits
 */
public record SourceFile(String name, long bytes, String sha256) {

  /** Enough to tell files apart; a record's own is put together at run time. */
  @Override
  public int hashCode() {
    return 31 * sha256.hashCode() + name.hashCode();
  }

  /** The same file, named from outside the folder that holds it. */
  public SourceFile in(String folder) {
    return new SourceFile(folder + "/" + name, bytes, sha256);
  }

  /** The same name without steps on the spot or back, such as {@code logs/a.csv}. */
  public String path() {
    Deque<String> steps = new ArrayDeque<>();
    for (String step : name.split("/", -1)) {
      if (step.equals("..")) {
        steps.pollLast();
      } else if (!step.isEmpty() && !step.equals(".")) {
        steps.addLast(step);
      }
    }
    return String.join("/", steps);
  }
}
