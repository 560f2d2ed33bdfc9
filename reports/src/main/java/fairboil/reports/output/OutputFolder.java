package fairboil.reports.output;

import java.io.BufferedOutputStream;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A folder that is written whole or not at all.
 *
 * <p>The new content is built as {@code .NAME.new-<pid>} beside the target, forced to disk, and
 * swapped in by two renames when {@link #commit} is called. Killed at any moment, it leaves the old
 * folder or the new one; a kill between the two renames is put right by the next {@link #open}. A
 * lock stops two writers. A target that holds a file that we did not write, or that was changed
 * since, is refused.
 *
 * <p>Files may be added by several threads at once.
 */
public final class OutputFolder implements AutoCloseable {

  private final Siblings siblings;
  private final WriterLock lock;
  private final Path building;
  private final SortedMap<String, String> hashes = new TreeMap<>();
  private final Set<Path> folders = new TreeSet<>();
  private volatile Runnable listener = () -> {};

  private OutputFolder(Siblings siblings, WriterLock lock, Path building) {
    this.siblings = siblings;
    this.lock = lock;
    this.building = building;
    folders.add(building);
  }

  /** Writes the content of one file. */
  @FunctionalInterface
  public interface Content {

    /** Writes everything; the stream is buffered and closed by the caller. */
    void writeTo(OutputStream out) throws IOException;
  }

  /** Writes the text of one file. */
  @FunctionalInterface
  public interface Text {

    /** Writes everything; the writer is buffered and flushed by the caller. */
    void writeTo(Writer writer) throws IOException;
  }

  /**
   * What was written to a file.
   *
   * @param bytes how long it is
   * @param sha256 its SHA-256 in hexadecimal
   */
  public record Written(long bytes, String sha256) {}

  /**
   * Locks the target and prepares to build its new content.
   *
   * @param target the folder to write; it need not exist
   * @param inputs folders that are only read: the target may not be one of them, in one, or above
   *     one
   * @throws OutputException if the target cannot or must not be written; nothing was changed
   */
  public static OutputFolder open(Path target, List<Path> inputs) throws OutputException {
    try {
      Siblings siblings = Siblings.of(target);
      siblings.refuseOverlapWith(inputs);
      Files.createDirectories(siblings.parent());
      WriterLock lock = WriterLock.take(siblings.lock(), target);
      try {
        siblings.recover();
        siblings.refuseStrangers();
        Path building = siblings.building();
        Files.createDirectory(building);
        // Marks the half-built folder as ours, should we be killed now.
        Files.writeString(building.resolve(Manifest.NAME), "");
        return new OutputFolder(siblings, lock, building);
      } catch (IOException | RuntimeException e) {
        lock.close();
        throw e;
      }
    } catch (IOException e) {
      throw cannotWrite(target, e);
    }
  }

  /** Runs something after each file that is added, on the thread that added it. */
  public void afterEach(Runnable then) {
    listener = then;
  }

  /**
   * Adds a file.
   *
   * @param name its name in the folder, with forward slashes, such as {@code tables/runs.csv}
   * @return what was written
   * @throws OutputException if it could not be written, for instance because the disk is full
   */
  public Written add(String name, Content content) throws OutputException {
    Path file = building.resolve(name).normalize();
    if (!file.startsWith(building) || file.equals(building)) {
      throw new IllegalArgumentException("not a name inside the folder: " + name);
    }
    try {
      prepareFolderOf(file);
      String hash = writeWhole(file, content);
      synchronized (hashes) {
        hashes.put(name, hash);
      }
      listener.run();
      return new Written(Files.size(file), hash);
    } catch (IOException e) {
      throw cannotWrite(siblings.target().resolve(name), e);
    }
  }

  /** A file of which only a part could be written is none of ours. */
  private static String writeWhole(Path file, Content content) throws IOException {
    String hash = "";
    try {
      hash = write(file, StandardOpenOption.CREATE_NEW, content);
    } finally {
      if (hash.isEmpty()) {
        Files.deleteIfExists(file);
      }
    }
    return hash;
  }

  /**
   * Takes a file back, if it was added, so that another can be added in its place.
   *
   * @throws OutputException if it could not be deleted
   */
  public void remove(String name) throws OutputException {
    synchronized (hashes) {
      if (hashes.remove(name) == null) {
        return;
      }
    }
    try {
      Files.delete(building.resolve(name));
    } catch (IOException e) {
      throw cannotWrite(siblings.target().resolve(name), e);
    }
  }

  /** As {@link #add}, with a text, which is written as UTF-8. */
  public Written addText(String name, Text text) throws OutputException {
    return add(
        name,
        out -> {
          Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
          text.writeTo(writer);
          writer.flush();
        });
  }

  private void prepareFolderOf(Path file) throws IOException {
    Path folder = file.getParent();
    synchronized (folders) {
      if (folders.add(folder)) {
        Files.createDirectories(folder);
      }
    }
  }

  private static String write(Path file, OpenOption how, Content content) throws IOException {
    MessageDigest digest = Hashing.digest();
    try (FileChannel channel = FileChannel.open(file, how, StandardOpenOption.WRITE);
        OutputStream out =
            new DigestOutputStream(
                new BufferedOutputStream(Channels.newOutputStream(channel), 1 << 16), digest)) {
      content.writeTo(out);
      out.flush();
      channel.force(true);
    }
    return Hashing.hex(digest);
  }

  /**
   * Puts the new content in the place of the old. After it, the folder is finished and nothing more
   * can be added.
   */
  public void commit() throws OutputException {
    try {
      Manifest manifest;
      synchronized (hashes) {
        manifest = new Manifest(hashes);
      }
      write(
          building.resolve(Manifest.NAME),
          StandardOpenOption.TRUNCATE_EXISTING,
          out -> out.write(manifest.text().getBytes(StandardCharsets.UTF_8)));
      for (Path folder : folders) {
        Folders.force(folder);
      }
      siblings.swap(building);
    } catch (IOException e) {
      throw cannotWrite(siblings.target(), e);
    }
  }

  /** Lets the lock go, and throws away what was not committed. */
  @Override
  public void close() throws OutputException {
    try (lock) {
      if (Files.exists(building, LinkOption.NOFOLLOW_LINKS)) {
        Folders.delete(building);
      }
    } catch (IOException e) {
      throw cannotWrite(siblings.target(), e);
    }
  }

  private static OutputException cannotWrite(Path path, IOException e) {
    if (e instanceof OutputException told) {
      return told;
    }
    String why = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    return new OutputException(
        "the report could not be written: "
            + path
            + " ("
            + why
            + ");"
            + " check that there is room on the disk and that you may write there.",
        e);
  }
}
