package fairboil.ingest.grid;

import fairboil.ingest.finding.Place;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;

/** Counts and fingerprints the bytes that pass, and stops where a file exceeds its limit. */
final class FingerprintStream extends FilterInputStream {

  private final Place place;
  private final FileKind kind;
  private final MessageDigest digest = Fingerprint.sha256();
  private long count;

  FingerprintStream(Place place, InputStream in, FileKind kind) {
    super(in);
    this.place = place;
    this.kind = kind;
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
  }

  @Override
  public int read(byte[] target, int offset, int length) throws IOException {
    int read = super.read(target, offset, length);
    if (read > 0) {
      digest.update(target, offset, read);
      count += read;
    }
    if (count > kind.limit()) {
      throw StudyFolder.tooLarge(place, kind); // it grew while it was read
    }
    return read;
  }

  @Override
  public long skip(long n) throws IOException {
    return readNBytes((int) Math.min(n, 1 << 16)).length; // skipped bytes count too
  }

  @Override
  public boolean markSupported() {
    return false;
  }

  void skipToEnd() throws IOException {
    byte[] rest = new byte[1 << 16];
    while (read(rest, 0, rest.length) >= 0) {
      // read() counts
    }
  }

  /** The fingerprint of what passed; once only. */
  SourceFile source() {
    return new SourceFile(place.file(), count, Fingerprint.hex(digest.digest()));
  }
}
