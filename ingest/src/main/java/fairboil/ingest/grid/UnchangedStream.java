package fairboil.ingest.grid;

import fairboil.ingest.finding.Place;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;

/** The bytes of a file that was read before; stops where it is not the same any more. */
final class UnchangedStream extends FilterInputStream {

  private final SourceFile file;
  private final MessageDigest digest = Fingerprint.sha256();
  private long count;
  private boolean checked;

  UnchangedStream(InputStream in, SourceFile file) {
    super(in);
    this.file = file;
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
    if (count > file.bytes() || (read < 0 && !checked && !isSame())) {
      throw new UnreadableException(
          Place.of(file.name()),
          "this file was changed while the report was made",
          "run the command again");
    }
    return read;
  }

  private boolean isSame() {
    checked = true;
    return count == file.bytes() && Fingerprint.hex(digest.digest()).equals(file.sha256());
  }

  @Override
  public long skip(long n) throws IOException {
    return readNBytes((int) Math.min(n, 1 << 16)).length; // skipped bytes count too
  }

  @Override
  public boolean markSupported() {
    return false;
  }
}
