package fairboil.ingest.grid;

import java.io.IOException;
import java.io.InputStream;

/** Opens files of a study once more, byte for byte as they were read. */
@FunctionalInterface
public interface InputOpener {

  /**
   * The bytes of a file that was read. The stream throws {@link UnreadableException} as soon as it
   * is seen that the file is not the same any more, at the latest at its end.
   *
   * @param file a file of the study, as it was read
   * @throws UnreadableException if it is no longer there, or may not be read
   */
  InputStream open(SourceFile file) throws IOException;
}
