package fairboil.ingest.log;

/**
 * Whether the names of a header stand over the cells of the rows. Names and cells of unequal number
 * are never fitted together: a name would stand over another column's cells, and nothing would show
 * it.
 */
enum HeaderFit {
  /** As many names as cells, apart from cells at the end that are always empty. */
  AGREES,
  /** There are no names. */
  NONE,
  /** More or fewer names than cells, or parted in another way, or a reading's name over times. */
  DISAGREES;

  /** How a table's header fits its rows. */
  static HeaderFit of(TableShape shape) {
    if (shape.names() == 0) {
      return NONE;
    }
    boolean fits =
        hasWidth(shape) && !isTorn(shape) && Gaps.agree(shape) && timesUnderReading(shape) < 0;
    return fits ? AGREES : DISAGREES;
  }

  // Names that other marks part too, or one in quotation marks split at a mark within, or names of
  // several words.
  private static boolean isTorn(TableShape shape) {
    Sample.Line header = shape.header().orElseThrow();
    boolean marks = !header.quoted() && header.cells().stream().anyMatch(HeaderFit::holdsMark);
    boolean spoken =
        shape.separator().collapses()
            && shape.place() != TableShape.HeaderPlace.PARTED_OTHERWISE
            && SpokenNames.areTorn(header.cells());
    return marks || spoken;
  }

  private static boolean holdsMark(String name) {
    return name.matches("(?s).*[\"\t|].*|.+;.+");
  }

  private static boolean hasWidth(TableShape shape) {
    int names = shape.names();
    int width = shape.width();
    if (names > width) {
      return endsLeftOut(shape);
    }
    int cells = shape.header().orElseThrow().cells().size();
    int filled = shape.filled();
    return cells == width || (cells < width ? filled <= names : filled == names);
  }

  // Loggers leave out the last cells of a row while there is no text to put there; what a row that
  // has them holds before them shows that no other cell was left out.
  private static boolean endsLeftOut(TableShape shape) {
    for (int i = shape.width(); i < shape.names(); i++) {
      if (isReading(shape.name(i))) {
        return false;
      }
    }
    return shape.longer().stream().anyMatch(row -> TableShape.said(row) == shape.names())
        && shape.longer().stream().allMatch(row -> onlyTextBeyond(row, shape.width()));
  }

  private static boolean onlyTextBeyond(Sample.Line row, int width) {
    for (int i = width; i < row.kinds().size(); i++) {
      if (row.kind(i).isData()) {
        return false;
      }
    }
    return true;
  }

  /** Whether a name is that of a temperature. */
  static boolean isReading(String name) {
    HeaderName header = HeaderName.of(name, "");
    boolean time = TimeWords.someOf(header.words());
    return !time && (header.saysTemperature() || RoleWords.of(header.words()).isPresent());
  }

  /** The first column, from 0, whose name is a temperature's and whose cells are times, or -1. */
  static int timesUnderReading(TableShape shape) {
    for (int i = 0; i < shape.width(); i++) {
      if (holdsTimes(shape, i) && isReading(shape.name(i))) {
        return i;
      }
    }
    return -1;
  }

  private static boolean holdsTimes(TableShape shape, int column) {
    int times = 0;
    int filled = 0;
    for (Sample.Line row : shape.rows()) {
      times += row.kind(column) == CellKind.STAMP ? 1 : 0;
      filled += row.kind(column) == CellKind.EMPTY ? 0 : 1;
    }
    return times * 2 > filled;
  }
}
