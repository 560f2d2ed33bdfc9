package fairboil.ingest.grid;

/** How the columns of a sheet are named in findings. */
public enum ColumnNames {
  /** By the header as written, as in a CSV file. */
  HEADERS {
    @Override
    public String of(int index, String header) {
      return header;
    }
  },
  /** By letter, as spreadsheets show them. */
  LETTERS {
    @Override
    public String of(int index, String header) {
      return letters(index);
    }
  };

  private static final int LETTERS_IN_ALPHABET = 26;

  /**
   * The name of a column.
   *
   * @param index its place, from 0
   * @param header its header as written
   */
  public abstract String of(int index, String header);

  private static String letters(int index) {
    String last = String.valueOf((char) ('A' + index % LETTERS_IN_ALPHABET));
    int before = index / LETTERS_IN_ALPHABET;
    return before == 0 ? last : letters(before - 1) + last;
  }
}
