package fairboil.ingest.grid;

import fairboil.ingest.finding.Place;
import java.io.InputStream;

/** The bytes of a file that was read before; stops where it is not the same any more. */
final class UnchangedStream extends HashedStream {

  private final SourceFile file;
  private boolean checked;

  UnchangedStream(InputStream in, SourceFile file) {
    super(in);
    this.file = file;
  }

  @Override
  void passed(int read) throws UnreadableException {
    if (count() > file.bytes() || (read < 0 && !checked && !isSame())) {
      throw new UnreadableException(
          Place.of(file.name()),
          "this file was changed while the report was made",
          "run the command again");
    }
  }

  private boolean isSame() {
    checked = true;
    return count() == file.bytes() && sha256().equals(file.sha256());
  }
}
