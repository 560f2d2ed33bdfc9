package fairboil.reports.output;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** What the file system lacks: removing whole folders, forcing them to disk, listing by prefix. */
final class Folders {

  private Folders() {}

  /** Removes a folder of ours, its list of files last: cut short, it can still be told as ours. */
  static void delete(Path folder) throws IOException {
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
      for (Path entry : entries) {
        if (!entry.getFileName().toString().equals(Manifest.NAME)) {
          deleteTree(entry);
        }
      }
    }
    Files.deleteIfExists(folder.resolve(Manifest.NAME));
    Files.delete(folder);
  }

  private static void deleteTree(Path top) throws IOException {
    Files.walkFileTree(
        top,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path visited, IOException failure)
              throws IOException {
            if (failure != null) {
              throw failure;
            }
            Files.delete(visited);
            return FileVisitResult.CONTINUE;
          }
        });
  }

  /** Forces the names in a folder to disk, where the system allows a folder to be opened. */
  static void force(Path folder) throws IOException {
    if (System.getProperty("os.name", "").startsWith("Windows")) {
      return; // Windows writes names through and refuses to open folders
    }
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    }
  }

  /** The entries of a folder whose names start with the prefix, sorted. */
  static List<Path> startingWith(Path folder, String prefix) throws IOException {
    List<Path> found = new ArrayList<>();
    try (DirectoryStream<Path> entries =
        Files.newDirectoryStream(folder, e -> e.getFileName().toString().startsWith(prefix))) {
      entries.forEach(found::add);
    }
    Collections.sort(found);
    return found;
  }

  static boolean isEmpty(Path folder) throws IOException {
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
      return !entries.iterator().hasNext();
    }
  }
}
