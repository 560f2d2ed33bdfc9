package fairboil.reports.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;

/**
 * A target folder and the hidden names beside it that serve to replace it: its lock, the folder
 * being built and the old folder on its way out.
 */
final class Siblings {

  private final Path target;
  private final Path parent;
  private final String prefix;

  private Siblings(Path target, Path parent) {
    this.target = target;
    this.parent = parent;
    this.prefix = "." + target.getFileName();
  }

  static Siblings of(Path given) throws IOException {
    Path target = real(given.toAbsolutePath().normalize());
    Path parent = target.getParent();
    if (parent == null) {
      throw new OutputException(
          "--out is " + target + ", which cannot be replaced; name a folder of its own.");
    }
    return new Siblings(target, parent);
  }

  /** The real path of a file, or where it would be if it were made. */
  private static Path real(Path path) throws IOException {
    if (Files.exists(path)) {
      return path.toRealPath();
    }
    Path parent = path.getParent();
    return parent == null ? path : real(parent).resolve(path.getFileName());
  }

  Path target() {
    return target;
  }

  Path parent() {
    return parent;
  }

  Path lock() {
    return parent.resolve(prefix + ".lock");
  }

  Path building() {
    return parent.resolve(prefix + ".new-" + ProcessHandle.current().pid());
  }

  private Path leaving() {
    return parent.resolve(prefix + ".old-" + ProcessHandle.current().pid());
  }

  void refuseOverlapWith(List<Path> inputs) throws IOException {
    for (Path input : inputs) {
      Path real = real(input.toAbsolutePath().normalize());
      if (target.startsWith(real) || real.startsWith(target)) {
        throw new OutputException(
            "--out is "
                + target
                + ", but the study is in "
                + real
                + ": a report may not lie in, on or above its study; name another folder.");
      }
    }
  }

  /** Puts right what a writer left that was killed. To be called with the lock held. */
  void recover() throws IOException {
    for (Path old : Folders.startingWith(parent, prefix + ".old-")) {
      if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
        Files.move(old, target, StandardCopyOption.ATOMIC_MOVE);
      } else if (isOurs(old)) {
        Folders.delete(old);
      }
    }
    for (Path halfBuilt : Folders.startingWith(parent, prefix + ".new-")) {
      if (isOurs(halfBuilt)) {
        Folders.delete(halfBuilt);
      }
    }
  }

  private static boolean isOurs(Path folder) throws IOException {
    return Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)
        && (Files.exists(folder.resolve(Manifest.NAME)) || Folders.isEmpty(folder));
  }

  /** Refuses a target that holds anything that we did not write. */
  void refuseStrangers() throws IOException {
    if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    if (!Files.isDirectory(target)) {
      throw new OutputException(target + " is a file, not a folder; choose another --out.");
    }
    if (Folders.isEmpty(target)) {
      return;
    }
    Optional<Manifest> manifest = Manifest.in(target);
    if (manifest.isEmpty()) {
      throw new OutputException(
          target
              + " holds files that are not a report of ours; nothing was written."
              + " Choose an empty or a new folder with --out.");
    }
    Optional<Path> stranger = manifest.get().strangerIn(target);
    if (stranger.isPresent()) {
      throw new OutputException(
          stranger.get()
              + " was added or changed since the report was written; nothing was written."
              + " Move it elsewhere, or choose another --out.");
    }
  }

  /** Two renames: the old folder out, the new one in; then the old one is removed. */
  void swap(Path building) throws IOException {
    Path leaving = leaving();
    boolean replaces = Files.exists(target, LinkOption.NOFOLLOW_LINKS);
    if (replaces) {
      Files.move(target, leaving, StandardCopyOption.ATOMIC_MOVE);
    }
    try {
      Files.move(building, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      if (replaces) {
        Files.move(leaving, target, StandardCopyOption.ATOMIC_MOVE);
      }
      throw e;
    }
    Folders.force(parent);
    if (replaces) {
      Folders.delete(leaving);
    }
  }
}
