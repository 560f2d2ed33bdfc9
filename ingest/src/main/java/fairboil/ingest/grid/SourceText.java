package fairboil.ingest.grid;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * The characters of a text file of a study, decoded as they are read. No byte is lost: what is not
 * valid UTF-8 is taken as Windows-1252, byte by byte, and said in {@link #notes()}. For one thread.
 *
 * <p>UTF-8 and UTF-16 are recognised by the mark at their start, UTF-16 without a mark by its
 * pattern of zero bytes; everything else is UTF-8 or an older single-byte encoding.
 */
public final class SourceText extends Reader {

  private static final int BUFFER = 1 << 16;

  private static final Template GUESSED_UTF_16 =
      Template.of("the file was read as UTF-16, by its pattern: nothing in it says so");
  private static final Template OLD_BYTES =
      Template.of(
          "the file is not all UTF-8: {count|byte was|bytes were} read as Windows-1252 (the first"
              + " is {word}, {cell})");
  private static final Template DAMAGED =
      Template.of("the file holds {count|damaged or unfinished character}");
  private static final Template SAVE_AS_UTF_8 =
      Template.of("if characters look wrong, save the file as CSV UTF-8");

  private final Place place;
  private final FingerprintStream in;
  private final Encoding encoding;
  private final CharsetDecoder decoder;
  private final ByteBuffer bytes = ByteBuffer.allocate(BUFFER);
  private CharBuffer waiting = CharBuffer.allocate(0);
  private boolean ended;
  private long oldBytes;
  private byte firstOldByte;
  private Optional<SourceFile> madeFrom = Optional.empty();
  private long damaged;

  private SourceText(Place place, FingerprintStream in, Encoding encoding) {
    this.place = place;
    this.in = in;
    this.encoding = encoding;
    this.decoder =
        encoding
            .charset()
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
  }

  /** Takes over the stream, and closes it if it is refused. */
  static SourceText open(Place place, InputStream stream, FileKind kind) throws IOException {
    FingerprintStream in = new FingerprintStream(place, stream, kind);
    try {
      byte[] head = in.readNBytes(Encoding.HEAD);
      Encoding encoding = Encoding.of(head, head.length);
      NotText.refuse(place, head, head.length, encoding);
      SourceText text = new SourceText(place, in, encoding);
      text.bytes.put(head, encoding.mark(), head.length - encoding.mark()).flip();
      return text;
    } catch (IOException e) {
      in.close();
      throw e;
    }
  }

  /**
   * Text that was made from a file of another kind.
   *
   * @param place the file
   * @param text the text, in UTF-8
   * @param source the file with its fingerprint, which is that of this text too
   */
  public static SourceText of(Place place, byte[] text, SourceFile source) {
    FingerprintStream in =
        new FingerprintStream(place, new ByteArrayInputStream(text), FileKind.LOG);
    SourceText made = new SourceText(place, in, Encoding.UTF_8);
    made.bytes.flip();
    made.madeFrom = Optional.of(source);
    return made;
  }

  /** The file. */
  public Place place() {
    return place;
  }

  @Override
  public int read(char[] target, int offset, int length) throws IOException {
    if (length == 0) {
      return 0;
    }
    if (length == 1) {
      return readOne(target, offset);
    }
    CharBuffer out = CharBuffer.wrap(target, offset, length).slice();
    if (waiting.hasRemaining()) {
      out.put(waiting.get());
    }
    while (out.position() == 0 && (bytes.hasRemaining() || !ended)) {
      decode(out);
    }
    return out.position() == 0 ? -1 : out.position();
  }

  // A character outside the basic plane takes two chars, which the decoder gives only together.
  private int readOne(char[] target, int offset) throws IOException {
    if (!waiting.hasRemaining()) {
      char[] pair = new char[2];
      int count = read(pair, 0, 2);
      waiting = CharBuffer.wrap(pair, 0, Math.max(0, count));
    }
    if (!waiting.hasRemaining()) {
      return -1;
    }
    target[offset] = waiting.get();
    return 1;
  }

  private void decode(CharBuffer out) throws IOException {
    CoderResult result = decoder.decode(bytes, out, false);
    if (result.isError()) {
      takeAsOldEncoding(out);
    } else if (result.isUnderflow() && out.hasRemaining()) {
      fill();
      if (ended && bytes.hasRemaining()) {
        decodeRest(out);
      }
    }
  }

  // At the end of the file an unfinished character is no longer waiting for more.
  private void decodeRest(CharBuffer out) {
    CoderResult result = decoder.decode(bytes, out, false);
    if (!result.isOverflow() && bytes.hasRemaining() && out.hasRemaining()) {
      takeAsOldEncoding(out);
    }
  }

  private void takeAsOldEncoding(CharBuffer out) {
    if (!out.hasRemaining()) {
      return;
    }
    decoder.reset();
    if (!encoding.isWide()) {
      firstOldByte = oldBytes == 0 ? bytes.get(bytes.position()) : firstOldByte;
      oldBytes++;
      out.put(OldEncoding.character(bytes.get()));
    } else {
      damaged++;
      out.put(bytes.remaining() < 2 ? (char) (bytes.get() & 0xFF) : wideCharacter());
    }
  }

  // Half of a surrogate pair: kept as it stands.
  private char wideCharacter() {
    int first = bytes.get() & 0xFF;
    int second = bytes.get() & 0xFF;
    boolean big = encoding.charset().equals(StandardCharsets.UTF_16BE);
    return (char) (big ? first << 8 | second : second << 8 | first);
  }

  private void fill() throws IOException {
    bytes.compact();
    int read = in.read(bytes.array(), bytes.position(), bytes.remaining());
    if (read > 0) {
      bytes.position(bytes.position() + read);
    } else {
      ended = true;
    }
    bytes.flip();
  }

  /** What a reader should know of the encoding, as far as the file was read: notes. */
  public List<Finding> notes() {
    List<Finding> notes = new ArrayList<>();
    if (encoding.isInferred()) {
      notes.add(note(GUESSED_UTF_16.with()));
    }
    if (oldBytes > 0) {
      notes.add(note(oldEncoding()));
    }
    if (damaged > 0) {
      notes.add(note(DAMAGED.with(Argument.count(damaged))));
    }
    return List.copyOf(notes);
  }

  private Message oldEncoding() {
    String hexadecimal = HexFormat.of().withUpperCase().toHexDigits(firstOldByte);
    return OLD_BYTES.with(
        Argument.count(oldBytes),
        Argument.word(hexadecimal),
        Argument.cell(String.valueOf(OldEncoding.character(firstOldByte))));
  }

  private Finding note(Message problem) {
    return Finding.note(place, problem, SAVE_AS_UTF_8.with());
  }

  /**
   * The file with its fingerprint. Reads what is left of the file, so call it last.
   *
   * @throws UnreadableException if the file turns out to be too large
   */
  public SourceFile source() throws IOException {
    in.skipToEnd();
    return madeFrom.isPresent() ? madeFrom.get() : in.source();
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
