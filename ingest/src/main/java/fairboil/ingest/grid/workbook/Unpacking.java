package fairboil.ingest.grid.workbook;

import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.grid.SourceBytes;
import fairboil.ingest.grid.UnreadableException;
import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * Unpacks a workbook with bounded memory and packs the parts that matter anew, so that whoever
 * reads them meets nothing but what was counted and checked here. For one thread.
 */
final class Unpacking {

  /** The most bytes of a workbook once unpacked, pictures and all. */
  static final long MAX_UNPACKED = 64_000_000;

  private static final int MAX_PARTS = 10_000;

  private static final Pattern NEEDED =
      Pattern.compile(
          "\\[Content_Types]\\.xml|(?:_rels|xl|xl/_rels|xl/worksheets)/[^/]*\\.(?:xml|rels)",
          Pattern.CASE_INSENSITIVE);

  /** How the compound files start that were workbooks once, and now hold those that are locked. */
  private static final byte[] OLD_KIND = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};

  private static final byte[] LOCKED = "EncryptedPackage".getBytes(StandardCharsets.UTF_16LE);

  private static final Template LOCKED_WORKBOOK =
      Template.of("this workbook is locked with a password");
  private static final Template SAVE_UNLOCKED = Template.of("save it without one");
  private static final Template TOO_LARGE =
      Template.of("this workbook is larger than 64 MB once unpacked, the most that is read");
  private static final Template LEAVE_OUT =
      Template.of("leave out what does not belong to the study, such as pictures and logs");

  private final Place place;
  private final PartCheck check;
  private final ByteArrayOutputStream packed = new ByteArrayOutputStream();
  private long unpacked;

  private Unpacking(Place place, PartCheck check) {
    this.place = place;
    this.check = check;
  }

  /**
   * Unpacks a file.
   *
   * @param source the file
   * @param check what looks at each part
   * @return the parts that matter, packed
   * @throws UnreadableException if it is no workbook, or too large, or damaged
   */
  static InputStream of(SourceBytes source, PartCheck check) throws IOException {
    Unpacking unpacking = new Unpacking(source.place(), check);
    BufferedInputStream in = new BufferedInputStream(new Open(source.stream()));
    unpacking.refuseOtherKinds(in);
    try {
      unpacking.repack(in);
    } catch (ZipException | java.io.EOFException | IllegalArgumentException e) {
      throw Damaged.workbook(source.place());
    }
    return new ByteArrayInputStream(unpacking.packed.toByteArray());
  }

  /** A stream that stays open for its fingerprint when whoever unpacks it closes it. */
  private static final class Open extends FilterInputStream {

    Open(InputStream in) {
      super(in);
    }

    @Override
    public void close() {
      // its opener's business
    }
  }

  private void refuseOtherKinds(BufferedInputStream in) throws IOException {
    in.mark(OLD_KIND.length);
    byte[] head = in.readNBytes(OLD_KIND.length);
    in.reset();
    if (Arrays.equals(head, OLD_KIND)) {
      throw isLocked(in.readAllBytes())
          ? new UnreadableException(place, LOCKED_WORKBOOK.with(), SAVE_UNLOCKED.with())
          : Damaged.otherKind(place, Damaged.OLD_KIND);
    }
    if (head.length < OLD_KIND.length || head[0] != 'P' || head[1] != 'K') {
      throw Damaged.noWorkbook(place);
    }
  }

  private static boolean isLocked(byte[] file) {
    for (int i = 0; i + LOCKED.length <= file.length; i++) {
      if (Arrays.equals(file, i, i + LOCKED.length, LOCKED, 0, LOCKED.length)) {
        return true;
      }
    }
    return false;
  }

  private void repack(InputStream in) throws IOException {
    Map<String, byte[]> kept = new HashMap<>();
    int parts = 0;
    try (ZipInputStream zip = new ZipInputStream(in, StandardCharsets.UTF_8);
        ZipOutputStream out = new ZipOutputStream(packed)) {
      out.setLevel(Deflater.BEST_SPEED);
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        String name = entry.getName().replace('\\', '/').replaceFirst("^/+", "");
        byte[] part = unpack(zip, NEEDED.matcher(name).matches() || name.equals("mimetype"));
        refuseOtherKind(name, part);
        if (++parts > MAX_PARTS) {
          throw Damaged.workbook(place);
        }
        if (NEEDED.matcher(name).matches() && kept.put(name, new byte[0]) == null) {
          check.part(name, part);
          out.putNextEntry(new ZipEntry(name));
          out.write(part);
        }
      }
    }
    if (kept.isEmpty()) {
      throw Damaged.noWorkbook(place);
    }
  }

  private byte[] unpack(InputStream part, boolean needed) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    byte[] buffer = new byte[1 << 14];
    for (int read = part.read(buffer); read >= 0; read = part.read(buffer)) {
      unpacked += read;
      if (unpacked > MAX_UNPACKED) {
        throw new UnreadableException(place, TOO_LARGE.with(), LEAVE_OUT.with());
      }
      if (needed) {
        bytes.write(buffer, 0, read);
      }
    }
    return bytes.toByteArray();
  }

  private void refuseOtherKind(String name, byte[] part) throws UnreadableException {
    if (name.equals("mimetype")
        && new String(part, StandardCharsets.US_ASCII).contains("opendocument")) {
      throw Damaged.otherKind(place, Damaged.OPEN_DOCUMENT);
    }
    if (name.equals("xl/workbook.bin")) {
      throw Damaged.otherKind(place, Damaged.BINARY);
    }
  }
}
