package fairboil.ingest.grid;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The only way to the files of a study: names are resolved inside its folder, and whatever leads
 * out of it (a path upwards, an absolute path, a link) or is not an ordinary file (a folder, a
 * pipe, a device) is refused without being opened. Immutable; safe for several threads.
 */
public final class StudyFolder {

  /** The most file names that are listed of one folder. */
  public static final int MAX_NAMES = 20_000;

  private static final Pattern DRIVE = Pattern.compile("[A-Za-z]:");

  private final Path root;

  private StudyFolder(Path root) {
    this.root = root;
  }

  /**
   * The study folder at a path.
   *
   * @throws UnreadableException if there is no folder there, or it may not be read
   */
  public static StudyFolder at(Path folder) throws UnreadableException {
    Place place = Place.of(folder.toString().isBlank() ? "." : folder.toString());
    try {
      Path root = folder.toRealPath();
      if (!Files.isDirectory(root)) {
        throw new UnreadableException(
            place, FolderSays.NO_FOLDER, FolderSays.GIVE_FOLDER.with(Argument.sheet("runs.csv")));
      }
      return new StudyFolder(root);
    } catch (UnreadableException e) {
      throw e;
    } catch (IOException | SecurityException e) {
      throw new UnreadableException(place, FolderSays.NO_SUCH_FOLDER, FolderSays.CHECK_SPELLING);
    }
  }

  /** The folder's own name, which is the name of the study. */
  public String name() {
    Path name = root.getFileName();
    return name == null || name.toString().isBlank() ? "study" : name.toString();
  }

  /**
   * The names of whatever is directly in a folder of the study but folders, sorted, at most {@link
   * #MAX_NAMES}; none if there is no such folder in the study. What is not an ordinary file is
   * among them, so that {@link #open} may say so.
   *
   * @param folder a name relative to the study folder; empty for the study folder itself
   */
  public List<String> names(String folder) {
    List<String> names = new ArrayList<>();
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(resolve(folder))) {
      for (Path entry : entries) {
        if (names.size() < MAX_NAMES && !Files.isDirectory(entry)) {
          names.add(entry.getFileName().toString());
        }
      }
    } catch (IOException | SecurityException | java.nio.file.DirectoryIteratorException e) {
      return List.of();
    }
    Collections.sort(names);
    return List.copyOf(names);
  }

  /**
   * The name, as it is on disk, of the file of that name: the very file, else one whose name
   * differs in capital letters only.
   *
   * @param name a name relative to the study folder, with forward or backward slashes
   */
  public Optional<String> find(String name) {
    String plain = plain(name);
    if (isThere(plain)) {
      return Optional.of(plain);
    }
    int slash = plain.lastIndexOf('/');
    String folder = slash < 0 ? "" : plain.substring(0, slash);
    String file = plain.substring(slash + 1);
    List<String> there = names(folder);
    return Optional.of(file)
        .filter(there::contains)
        .or(() -> there.stream().filter(file::equalsIgnoreCase).findFirst())
        .map(found -> slash < 0 ? found : folder + "/" + found);
  }

  /** Whether a file of just that name is there: a look at it is quicker than a list of all. */
  private boolean isThere(String plain) {
    try {
      Path file = root.resolve(plain);
      return !isAbsolute(plain)
          && file.startsWith(root)
          && file.equals(file.toRealPath())
          && !Files.isDirectory(file);
    } catch (IOException | SecurityException | InvalidPathException e) {
      return false;
    }
  }

  /**
   * How large a file is, in bytes; 0 if it cannot be opened.
   *
   * @param name its name relative to the study folder, with forward or backward slashes
   */
  public long bytes(String name) {
    try {
      return Files.size(ordinary(name));
    } catch (IOException | SecurityException e) {
      return 0; // what is wrong with it is told where it is opened
    }
  }

  /**
   * Opens a text file of the study.
   *
   * @param name its name relative to the study folder, with forward or backward slashes
   * @param kind what it is, which sets how large it may be
   * @throws UnreadableException if the name leads out of the folder, nothing is there, it is not an
   *     ordinary file, is too large, may not be read, or is not text
   */
  public SourceText open(String name, FileKind kind) throws UnreadableException {
    Place place = placeOf(name);
    Path file = ordinaryFile(name, kind);
    try {
      return SourceText.open(place, Files.newInputStream(file), kind);
    } catch (UnreadableException e) {
      throw e;
    } catch (IOException | SecurityException e) {
      throw mayNotBeRead(place);
    }
  }

  /**
   * Opens a file of the study that is not text.
   *
   * @param name its name relative to the study folder, with forward or backward slashes
   * @param kind what it is, which sets how large it may be
   * @throws UnreadableException if the name leads out of the folder, nothing is there, it is not an
   *     ordinary file, is too large, or may not be read
   */
  public SourceBytes openBytes(String name, FileKind kind) throws UnreadableException {
    Place place = placeOf(name);
    Path file = ordinaryFile(name, kind);
    try {
      return new SourceBytes(place, Files.newInputStream(file), kind);
    } catch (IOException | SecurityException e) {
      throw mayNotBeRead(place);
    }
  }

  /**
   * Opens a file of the study that was read before, for its bytes; see {@link InputOpener}.
   *
   * @throws UnreadableException if it is not there any more, leads out of the folder, or may not be
   *     read
   */
  public InputStream reopen(SourceFile file) throws UnreadableException {
    try {
      return new UnchangedStream(Files.newInputStream(ordinary(file.name())), file);
    } catch (UnreadableException e) {
      throw e;
    } catch (IOException | SecurityException e) {
      throw mayNotBeRead(placeOf(file.name()));
    }
  }

  private Path ordinaryFile(String name, FileKind kind) throws UnreadableException {
    Path file = ordinary(name);
    Place place = placeOf(name);
    if (attributes(file, place).size() > kind.limit()) {
      throw tooLarge(place, kind);
    }
    return file;
  }

  private Path ordinary(String name) throws UnreadableException {
    Place place = placeOf(name);
    Path file = resolve(name);
    BasicFileAttributes attributes = attributes(file, place);
    if (attributes.isDirectory()) {
      throw new UnreadableException(place, FolderSays.A_FOLDER, FolderSays.NAME_A_FILE);
    }
    if (!attributes.isRegularFile()) {
      throw new UnreadableException(place, FolderSays.A_DEVICE, FolderSays.COPY_CONTENT);
    }
    return file;
  }

  private static BasicFileAttributes attributes(Path file, Place place) throws UnreadableException {
    try {
      return Files.readAttributes(file, BasicFileAttributes.class);
    } catch (IOException | SecurityException e) {
      throw mayNotBeRead(place);
    }
  }

  private Path resolve(String name) throws UnreadableException {
    String plain = plain(name);
    if (isAbsolute(plain)) {
      throw leavesFolder(name);
    }
    try {
      Path inside = root.resolve(plain).normalize();
      if (!inside.startsWith(root)) {
        throw leavesFolder(name);
      }
      Path real = inside.toRealPath();
      if (!real.startsWith(root)) {
        throw leavesFolder(name);
      }
      return real;
    } catch (NoSuchFileException e) {
      throw missing(name);
    } catch (InvalidPathException e) {
      throw new UnreadableException(placeOf(name), FolderSays.NO_NAME, FolderSays.NAME_PLAINLY);
    } catch (UnreadableException e) {
      throw e;
    } catch (IOException | SecurityException e) {
      throw missing(name);
    }
  }

  private UnreadableException leavesFolder(String name) {
    return new UnreadableException(placeOf(name), FolderSays.LEADS_OUT, FolderSays.KEEP_INSIDE);
  }

  private UnreadableException missing(String name) {
    Message remedy =
        find(name)
            .map(found -> FolderSays.OTHER_CAPITALS.with(Argument.name(found)))
            .orElse(FolderSays.CHECK_COPY);
    return new UnreadableException(placeOf(name), FolderSays.NO_SUCH_FILE, remedy);
  }

  private static UnreadableException mayNotBeRead(Place place) {
    return new UnreadableException(place, FolderSays.MAY_NOT_BE_READ, FolderSays.CHECK_PERMISSIONS);
  }

  static UnreadableException tooLarge(Place place, FileKind kind) {
    return new UnreadableException(place, kind.tooLarge(), FolderSays.SPLIT);
  }

  private static boolean isAbsolute(String plain) {
    return plain.startsWith("/") || DRIVE.matcher(plain).lookingAt();
  }

  private static String plain(String name) {
    return name.replace('\\', '/');
  }

  private static Place placeOf(String name) {
    String plain = plain(name).replace('\0', '?');
    return Place.of(plain.isBlank() ? "." : plain);
  }
}
