package fairboil.ingest.grid;

import fairboil.ingest.finding.Place;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;

/**
 * The bytes of a file of a study that is not text, with its fingerprint taken as they are read. For
 * one thread.
 */
public final class SourceBytes implements Closeable {

  private final Place place;
  private final FingerprintStream in;

  SourceBytes(Place place, InputStream stream, FileKind kind) {
    this.place = place;
    this.in = new FingerprintStream(place, stream, kind);
  }

  /** The file. */
  public Place place() {
    return place;
  }

  /** Its bytes; closing this closes them. */
  public InputStream stream() {
    return in;
  }

  /**
   * The file with its fingerprint. Reads what is left of the file, so call it last.
   *
   * @throws UnreadableException if the file turns out to be too large
   */
  public SourceFile source() throws IOException {
    in.skipToEnd();
    return in.source();
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
