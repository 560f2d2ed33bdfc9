package fairboil.ingest.grid;

import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import java.io.InputStream;

/** The bytes of a file that was read before; stops where it is not the same any more. */
final class UnchangedStream extends HashedStream {

  private static final Template CHANGED =
      Template.of("this file was changed while the report was made");
  private static final Template RUN_AGAIN = Template.of("run the command again");

  private final SourceFile file;
  private boolean checked;

  UnchangedStream(InputStream in, SourceFile file) {
    super(in);
    this.file = file;
  }

  @Override
  void passed(int read) throws UnreadableException {
    if (count() > file.bytes() || (read < 0 && !checked && !isSame())) {
      throw new UnreadableException(Place.of(file.name()), CHANGED.with(), RUN_AGAIN.with());
    }
  }

  private boolean isSame() {
    checked = true;
    return count() == file.bytes() && sha256().equals(file.sha256());
  }
}
