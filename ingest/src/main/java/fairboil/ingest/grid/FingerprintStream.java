package fairboil.ingest.grid;

import fairboil.ingest.finding.Place;
import java.io.InputStream;

/** Fingerprints a file that is read for the first time, and stops where it exceeds its limit. */
final class FingerprintStream extends HashedStream {

  private final Place place;
  private final FileKind kind;

  FingerprintStream(Place place, InputStream in, FileKind kind) {
    super(in);
    this.place = place;
    this.kind = kind;
  }

  @Override
  void passed(int read) throws UnreadableException {
    if (count() > kind.limit()) {
      throw StudyFolder.tooLarge(place, kind); // it grew while it was read
    }
  }

  /** The fingerprint of what passed; once only. */
  SourceFile source() {
    return new SourceFile(place.file(), count(), sha256());
  }
}
