package fairboil.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** Writes the files of a study. */
final class StudyFiles {

  private StudyFiles() {}

  /** Writes files, by name with forward slashes, into a folder that need not exist. */
  static void write(Path folder, Map<String, String> files) throws IOException {
    for (Map.Entry<String, String> file : files.entrySet()) {
      Path path = folder.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.writeString(path, file.getValue());
    }
  }
}
