package fairboil.ingest.grid;

import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import java.io.IOException;
import java.io.Reader;

/**
 * Cuts text into lines that end with LF, CR or CRLF, of at most {@link #MAX_LINE} characters. For
 * one thread; closing the text is its opener's business.
 */
public final class TextLines {

  /** The most characters of one line. */
  public static final int MAX_LINE = 1 << 20;

  private static final Template TOO_LONG =
      Template.of("this line is longer than 1 MiB, the most that is read");
  private static final Template ONE_ROW_A_LINE =
      Template.of("check that the file is a table with one row a line");

  private final Place place;
  private final Reader in;
  private final char[] buffer = new char[1 << 14];
  private final StringBuilder carried = new StringBuilder();
  private int position;
  private int limit;
  private int number;
  private String text = "";
  private Ending ending = Ending.NONE;

  /** How a line ended. */
  public enum Ending {
    /** With a line feed. */
    LF,
    /** With a carriage return. */
    CR,
    /** With both. */
    CRLF,
    /** With the file: it may have been cut off. */
    NONE
  }

  /**
   * The lines of a text.
   *
   * @param place the file
   * @param in its characters
   */
  public TextLines(Place place, Reader in) {
    this.place = place;
    this.in = in;
  }

  /** The lines of a file. */
  public static TextLines of(SourceText text) {
    return new TextLines(text.place(), text);
  }

  /**
   * Goes to the next line.
   *
   * @return whether there is one
   * @throws UnreadableException if it is longer than {@link #MAX_LINE}
   */
  public boolean advance() throws IOException {
    if (position >= limit && !fill()) {
      return false;
    }
    number++;
    carried.setLength(0);
    do {
      int end = endOfLine();
      if (end < limit) {
        text = take(end);
        ending = endingAt(end);
        return true;
      }
      carry();
    } while (fill());
    text = carried.toString();
    ending = Ending.NONE;
    return true;
  }

  private int endOfLine() {
    int end = position;
    while (end < limit && buffer[end] != '\n' && buffer[end] != '\r') {
      end++;
    }
    return end;
  }

  private String take(int end) throws UnreadableException {
    if (carried.length() == 0) {
      return new String(buffer, position, end - position);
    }
    carried.append(buffer, position, end - position);
    checkLength();
    return carried.toString();
  }

  private void carry() throws UnreadableException {
    carried.append(buffer, position, limit - position);
    checkLength();
  }

  private void checkLength() throws UnreadableException {
    if (carried.length() > MAX_LINE) {
      throw new UnreadableException(
          Place.of(place.file(), number), TOO_LONG.with(), ONE_ROW_A_LINE.with());
    }
  }

  private Ending endingAt(int end) throws IOException {
    position = end + 1;
    if (buffer[end] == '\n') {
      return Ending.LF;
    }
    if ((position < limit || fill()) && buffer[position] == '\n') {
      position++;
      return Ending.CRLF;
    }
    return Ending.CR;
  }

  private boolean fill() throws IOException {
    position = 0;
    limit = Math.max(0, in.read(buffer, 0, buffer.length));
    return limit > 0;
  }

  /** The line, without its end. */
  public String text() {
    return text;
  }

  /** Its number, from 1. */
  public int number() {
    return number;
  }

  /** How it ended. */
  public Ending ending() {
    return ending;
  }

  /** The line's place. */
  public Place place() {
    return Place.of(place.file(), Math.max(1, number));
  }
}
