package fairboil.reports.output;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Objects;

/** A lock that stops two writers of one folder; the system lets it go if the process dies. */
final class WriterLock implements AutoCloseable {

  private final Path file;
  private final FileChannel channel;

  private WriterLock(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /** Takes the lock, or says that somebody else has it. */
  static WriterLock take(Path file, Path target) throws IOException {
    for (int attempt = 0; attempt < 10; attempt++) {
      FileChannel channel =
          FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      if (!isTaken(channel)) {
        channel.close();
        throw new OutputException(
            "another run is writing "
                + target
                + " right now; wait for it to end, or choose another"
                + " folder with --out.");
      }
      if (isStillThere(file, channel)) {
        return new WriterLock(file, channel);
      }
      channel.close(); // its last owner took the file away between our two steps
    }
    throw new OutputException("the lock " + file + " could not be taken; try again.");
  }

  private static boolean isTaken(FileChannel channel) throws IOException {
    try {
      // One byte past the content: where locks bar reading, the content can still be read.
      FileLock lock = channel.tryLock(Long.MAX_VALUE - 1, 1, false);
      return lock != null;
    } catch (OverlappingFileLockException e) {
      return false;
    }
  }

  /** Whether the file that we locked is the one that others would now lock. */
  private static boolean isStillThere(Path file, FileChannel channel) throws IOException {
    // A file that was removed while open has no name: writing through the channel would not show.
    channel.truncate(0);
    channel.write(ByteBuffer.wrap(stamp().getBytes(StandardCharsets.US_ASCII)), 0);
    return Files.exists(file) && Objects.equals(Files.readString(file), stamp());
  }

  private static String stamp() {
    return Long.toString(ProcessHandle.current().pid());
  }

  @Override
  public void close() throws IOException {
    try {
      Files.deleteIfExists(file); // before the lock goes: nobody can hold the old file as theirs
    } finally {
      channel.close();
    }
  }
}
