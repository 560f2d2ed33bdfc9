package fairboil.reports.quote;

import fairboil.ingest.grid.Fingerprint;
import fairboil.ingest.grid.InputOpener;
import fairboil.ingest.grid.SourceFile;
import fairboil.ingest.grid.UnreadableException;
import fairboil.reports.chart.Slugs;
import fairboil.reports.output.OutputException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * The data of a study as they were read, packed with their fingerprints and the command that makes
 * the report anew. Same data, same bytes: order and times in it are fixed.
 */
final class DataArchive {

  // The first moment that an archive can hold.
  private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);
  private static final Pattern SAFE_NAME =
      Pattern.compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{M}\\p{N} ._-]{0,98}[\\p{L}\\p{M}\\p{N}_-])?");

  private final String study;
  private final List<SourceFile> sources;
  private final String version;
  private final boolean pooled;

  DataArchive(String study, List<SourceFile> sources, String version) {
    this.study = study;
    this.sources = sources;
    this.version = version;
    this.pooled = studies().size() > 1 && String.join(", ", studies()).equals(study);
  }

  /**
   * Writes the archive.
   *
   * @throws OutputException if a file is not the same any more as when it was read
   */
  void write(InputOpener inputs, OutputStream out) throws IOException {
    ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
    add(zip, "remake.md", remake());
    add(zip, "hashes.txt", Fingerprint.list(sources));
    SortedMap<String, SourceFile> byPath = new TreeMap<>();
    sources.forEach(source -> byPath.putIfAbsent(source.path(), source));
    for (SourceFile source : byPath.values()) {
      zip.putNextEntry(entry(pooled ? source.path() : folder() + "/" + source.path()));
      copy(source, inputs, zip);
      zip.closeEntry();
    }
    zip.finish();
  }

  private static void copy(SourceFile source, InputOpener inputs, OutputStream out)
      throws IOException {
    try (InputStream in = inputs.open(source)) {
      in.transferTo(out);
    } catch (UnreadableException e) {
      throw new OutputException("the data could not be packed: " + e.getMessage(), e);
    }
  }

  private static void add(ZipOutputStream zip, String name, String text) throws IOException {
    zip.putNextEntry(entry(name));
    zip.write(text.getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }

  private static ZipEntry entry(String name) {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(NO_TIME);
    return entry;
  }

  /** The folders of a pool, which the names of its files begin with. */
  private List<String> studies() {
    return sources.stream()
        .map(SourceFile::path)
        .filter(path -> path.contains("/"))
        .map(path -> path.substring(0, path.indexOf('/')))
        .distinct()
        .sorted()
        .toList();
  }

  private List<String> folders() {
    return pooled ? studies() : List.of(folder());
  }

  private String quoted() {
    return folders().stream()
        .map(folder -> "\"" + folder.replaceAll("[\"$`\\\\]", "?") + "\"")
        .collect(Collectors.joining(" "));
  }

  /** The study's own name where it may safely be a folder's and stand in a command. */
  private String folder() {
    return SAFE_NAME.matcher(study).matches() ? study : Slugs.of(List.of(study)).get(0);
  }

  private String remake() {
    Markdown text =
        new Markdown()
            .title("The data, and how to make the report anew")
            .paragraph(
                "What lies beside this text holds every file that was read. Unpack, open a"
                    + " terminal where you unpacked, and type:")
            .code("fairboil report " + quoted() + " --out report --quote")
            .paragraph(
                "With fairboil "
                    + version
                    + " this gives the same report, byte for byte. Files of the study that were"
                    + " not read are not in here, so that findings about such files will be"
                    + " missing.")
            .paragraph(
                "hashes.txt lists the SHA-256 of each file; the SHA-256 of that list is the"
                    + " fingerprint in the citation. To check both:")
            .code(
                (pooled
                        ? "sha256sum -c hashes.txt"
                        : "(cd " + quoted() + " && sha256sum -c ../hashes.txt)")
                    + "\nsha256sum hashes.txt");
    if (!pooled && !folder().equals(study)) {
      text.paragraph(
          "The study was called "
              + study
              + ", which cannot safely be the name of a folder everywhere; the report made anew"
              + " differs from the first in that name.");
    }
    return text.toString();
  }
}
