package fairboil.ingest.grid;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;

/** Counts and fingerprints the bytes that pass. */
abstract class HashedStream extends FilterInputStream {

  private static final int BLOCK = 1 << 16;

  private final MessageDigest digest = Fingerprint.sha256();
  private long count;

  HashedStream(InputStream in) {
    super(in);
  }

  /**
   * Called after each read.
   *
   * @param read how many bytes passed; below 0 at the end
   * @throws IOException to stop here
   */
  abstract void passed(int read) throws IOException;

  /** How many bytes have passed. */
  final long count() {
    return count;
  }

  /** SHA-256 of what has passed, in hexadecimal; once only. */
  final String sha256() {
    return Fingerprint.hex(digest.digest());
  }

  @Override
  public final int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
  }

  @Override
  public final int read(byte[] target, int offset, int length) throws IOException {
    int read = super.read(target, offset, length);
    if (read > 0) {
      digest.update(target, offset, read);
      count += read;
    }
    passed(read);
    return read;
  }

  @Override
  public final long skip(long n) throws IOException {
    return readNBytes((int) Math.min(n, BLOCK)).length; // skipped bytes count too
  }

  @Override
  public final boolean markSupported() {
    return false;
  }

  final void skipToEnd() throws IOException {
    byte[] rest = new byte[BLOCK];
    while (read(rest, 0, rest.length) >= 0) {
      // read() counts
    }
  }
}
