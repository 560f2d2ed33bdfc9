package fairboil.ingest.grid.workbook;

import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.grid.UnreadableException;
import fairboil.ingest.grid.csv.RowSays;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads each part of a workbook once before the library does. What would cost it memory or time
 * without bound is refused: deep nesting, endless text, cells and shared texts far beyond the last,
 * formulas that many cells share. What it does not tell is kept: merged cells, and whether dates
 * count from 1904, which it misses where that is written as {@code 1}. For one thread.
 */
final class PartCheck {

  private static final int DEEPEST = 100;
  private static final int MOST_NAMES = 5_000;
  private static final int MOST_TABS = 1_000;
  private static final int LONGEST_TEXT = 1 << 16;
  private static final int LONGEST_FORMULA = 1 << 13;
  private static final int LONGEST_NUMBER = 400;
  private static final long MOST_FORMULA_WORK = 20_000_000;

  private static final Pattern CELL = Pattern.compile("\\$?[A-Za-z]{1,3}\\$?\\d{1,7}");
  private static final Pattern SHARED_TEXT = Pattern.compile("\\s*\\d{1,7}\\s*");

  private static final Template TOO_LONG =
      Template.of("a text of this workbook is longer than 64 KiB, the most that is read");

  private final Place place;
  private final Set<String> names = new HashSet<>();
  private final Map<String, String> partById = new HashMap<>();
  private final Map<String, List<Merge>> merges = new HashMap<>();
  private boolean from1904;
  private boolean styled;
  private int tabs;

  private final StringBuilder text = new StringBuilder();
  private String part = "";
  private String cellType = "";
  private boolean sharing;
  private long longestShared;
  private long sharers;
  private long arrays;
  private long cells;

  PartCheck(Place place) {
    this.place = place;
  }

  /**
   * Reads a part.
   *
   * @throws UnreadableException if the workbook must not be read
   */
  void part(String name, byte[] xml) throws UnreadableException {
    part = name.substring(name.lastIndexOf('/') + 1);
    longestShared = 0;
    sharers = 0;
    arrays = 0;
    cells = 0;
    try {
      XMLStreamReader reader = factory().createXMLStreamReader(new ByteArrayInputStream(xml));
      try {
        read(reader);
      } finally {
        reader.close();
      }
    } catch (XMLStreamException | RuntimeException e) {
      throw Damaged.workbook(place);
    }
  }

  private static XMLInputFactory factory() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    return factory;
  }

  private void read(XMLStreamReader reader) throws XMLStreamException, UnreadableException {
    int depth = 0;
    while (reader.hasNext()) {
      switch (reader.next()) {
        case XMLStreamConstants.START_ELEMENT -> {
          require(++depth <= DEEPEST && (names.size() < MOST_NAMES || isKnown(reader)));
          names.add(reader.getLocalName());
          text.setLength(0);
          start(reader);
        }
        case XMLStreamConstants.END_ELEMENT -> {
          depth--;
          end(reader.getLocalName());
          text.setLength(0);
        }
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA, XMLStreamConstants.SPACE ->
            take(reader);
        case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE -> require(false);
        default -> {
          // comments and the like
        }
      }
    }
  }

  private boolean isKnown(XMLStreamReader reader) {
    return names.contains(reader.getLocalName());
  }

  private void take(XMLStreamReader reader) throws UnreadableException {
    if (text.length() + reader.getTextLength() > LONGEST_TEXT) {
      throw new UnreadableException(place, TOO_LONG.with(), RowSays.SHORTEN);
    }
    text.append(reader.getTextCharacters(), reader.getTextStart(), reader.getTextLength());
  }

  private void start(XMLStreamReader reader) throws UnreadableException {
    switch (reader.getLocalName()) {
      case "c" -> cell(reader);
      case "f" -> formula(reader);
      case "mergeCell" -> merge(attribute(reader, "ref"));
      case "sheet" -> require(++tabs <= MOST_TABS);
      case "workbookPr" -> from1904 |= attribute(reader, "date1904").matches("1|true|on");
      case "Relationship" -> partById.put(attribute(reader, "Id"), file(reader, "Target"));
      case "Override" ->
          styled |= attribute(reader, "ContentType").endsWith("spreadsheetml.styles+xml");
      default -> {
        // nothing to learn
      }
    }
  }

  private void cell(XMLStreamReader reader) throws UnreadableException {
    String reference = attribute(reader, "r");
    require(reference.isEmpty() || CELL.matcher(reference).matches());
    cellType = attribute(reader, "t");
    cells++;
  }

  private void formula(XMLStreamReader reader) {
    String kind = attribute(reader, "t");
    sharing = kind.equals("shared");
    sharers += sharing ? 1 : 0;
    arrays += kind.equals("array") ? 1 : 0;
  }

  private void end(String name) throws UnreadableException {
    switch (name) {
      case "v" -> value();
      case "f" -> {
        require(text.length() <= LONGEST_FORMULA);
        longestShared = sharing ? Math.max(longestShared, text.length()) : longestShared;
      }
      case "sheetData" ->
          require(
              longestShared * sharers <= MOST_FORMULA_WORK && arrays * cells <= MOST_FORMULA_WORK);
      default -> {
        // nothing to check
      }
    }
  }

  private void value() throws UnreadableException {
    switch (cellType) {
      case "s" -> require(text.isEmpty() || SHARED_TEXT.matcher(text).matches());
      case "", "n" -> require(text.length() <= LONGEST_NUMBER);
      default -> {
        // text
      }
    }
  }

  private void merge(String range) {
    Merge.of(range)
        .filter(merge -> merge.lastRow() > merge.firstRow())
        .ifPresent(merge -> merges.computeIfAbsent(part, name -> new ArrayList<>()).add(merge));
  }

  private void require(boolean fine) throws UnreadableException {
    if (!fine) {
      throw Damaged.workbook(place);
    }
  }

  private static String attribute(XMLStreamReader reader, String name) {
    String value = reader.getAttributeValue(null, name);
    return value == null ? "" : value;
  }

  private static String file(XMLStreamReader reader, String name) {
    String target = attribute(reader, name);
    return target.substring(target.lastIndexOf('/') + 1);
  }

  /** Whether dates count from the first day of 1904 rather than of 1900. */
  boolean isFrom1904() {
    return from1904;
  }

  /** Whether there are number formats. */
  boolean isStyled() {
    return styled;
  }

  /** The merged cells that reach over several rows, of the tab with that id; unordered. */
  List<Merge> merges(String id) {
    return merges.getOrDefault(partById.getOrDefault(id, ""), List.of());
  }
}
