package fairboil.ingest.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Random tables column by column, each with what it truly holds: names over their own cells. Some
 * have a header that lacks a name, or rows that lack a cell. For one thread.
 */
final class NamedTables {

  /**
   * A table.
   *
   * @param text the log
   * @param names the names of its columns; empty for one without a name
   * @param rows the cells of each row, as they are meant
   * @param whole whether names and cells are equal in number, so that it can be read
   */
  record Table(String text, List<String> names, List<List<String>> rows, boolean whole) {}

  private enum Parting {
    COMMA(",", "any"),
    COMMA_BLANK(", ", "any"),
    SEMICOLON(";", "any"),
    TAB("\t", "any"),
    STROKE("|", "any"),
    BLANK(" ", "no blanks"),
    BLANKS("   ", "no blanks");

    private final String mark;
    private final boolean blanks;

    Parting(String mark, String inside) {
      this.mark = mark;
      this.blanks = inside.equals("no blanks");
    }
  }

  private enum Fault {
    NONE,
    NAME_MISSING,
    NAME_TOO_MANY,
    CELL_MISSING,
    ENDS_LEFT_OUT
  }

  private static final List<String> TEXTS =
      List.of("ok", "C", "true", "v;", "lit", "K", "on", "low heat", "lid on, lit", "a b c", "x|y");
  private static final List<String> TEXT_NAMES =
      List.of("status", "note", "phase", "on", "pot state", "event", "who was there", "mode");
  private static final List<String> OTHER_NAMES =
      List.of("battery (V)", "RH (%)", "pressure (hPa)", "fan rpm", "weight (g)", "output (%)");
  private static final List<String> FLAMES =
      List.of("flame (°C)", "flame_C", "Flame, mid (°C)", "flame temp (°C)", "Flame °C");
  private static final List<String> WATERS =
      List.of("water (°C)", "water_C", "Water, left (°C)", "water temp [°C]", "Water °C");

  private final Random random;
  private Parting parting = Parting.COMMA;
  private boolean decimalComma;
  private int count;

  NamedTables(long seed) {
    this.random = new Random(seed);
  }

  /** The next table: 2 to 12 columns, 6 to 15 rows, one reading each 5 s. */
  Table next() {
    parting = pick(Parting.values());
    boolean commas = parting == Parting.COMMA || parting == Parting.COMMA_BLANK;
    decimalComma = !commas && random.nextInt(3) == 0;
    count = 6 + random.nextInt(10);
    List<List<String>> columns = new ArrayList<>(List.of(flame()));
    int more = random.nextInt(10);
    boolean water = more > 0 && random.nextBoolean();
    if (water) {
      columns.add(random.nextInt(columns.size() + 1), reading(pick(WATERS), 20));
    }
    for (int i = water ? 1 : 0; i < more; i++) {
      columns.add(random.nextInt(columns.size() + 1), other(i));
    }
    addTimes(columns);
    return written(columns);
  }

  private List<String> flame() {
    return reading(pick(FLAMES), 700);
  }

  private List<String> reading(String name, double from) {
    boolean gaps = !parting.blanks && random.nextInt(6) == 0;
    int decimals = random.nextInt(3);
    return column(
        name,
        i -> gaps && i % 4 == 3 ? "" : number(from + i * (decimals == 0 ? 1 : 0.37), decimals));
  }

  private List<String> other(int place) {
    return switch (random.nextInt(4)) {
      case 0 -> column(parting.blanks ? "e" + place : "", i -> parting.blanks ? "-" : "");
      case 1, 2 -> {
        String text = pick(TEXTS);
        boolean some = random.nextInt(3) == 0;
        yield column(pick(TEXT_NAMES), i -> some && i % 3 > 0 ? empty() : plain(text));
      }
      default -> column(pick(OTHER_NAMES), i -> number(1000 + 100 * place + i, 1));
    };
  }

  private String empty() {
    return parting.blanks ? "-" : "";
  }

  private String plain(String text) {
    return parting.blanks ? text.replaceAll("[ ,]+", "_") : text;
  }

  // One cell or, where blanks part cells, two; or date and time apart; or elapsed.
  private void addTimes(List<List<String>> columns) {
    int at = random.nextInt(4) == 0 ? random.nextInt(columns.size() + 1) : 0;
    int kind = random.nextInt(4);
    List<String> clock = column("Clock time", i -> clock(i));
    if (kind == 0) {
      columns.add(at, column("time (s)", i -> Integer.toString(5 * i)));
    } else if (kind == 1 || parting.blanks) {
      columns.add(at, clock);
      columns.add(at, column("Date", i -> "2017-01-17"));
    } else {
      String middle = kind == 2 ? " " : "T";
      columns.add(at, column("Time", i -> "2017-01-17" + middle + clock(i)));
    }
  }

  private static String clock(int row) {
    return String.format(Locale.ROOT, "16:%02d:%02d", row * 5 / 60, row * 5 % 60);
  }

  private String number(double value, int decimals) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    return decimalComma ? text.replace('.', ',') : text;
  }

  private List<String> column(String name, java.util.function.IntFunction<String> cell) {
    List<String> column = new ArrayList<>();
    column.add(parting.blanks ? name.replaceAll("[ ,]+", "_") : name);
    IntStream.range(0, count).mapToObj(cell).forEach(column::add);
    return column;
  }

  private Table written(List<List<String>> columns) {
    List<List<String>> lines = new ArrayList<>();
    for (int i = 0; i <= count; i++) {
      int line = i;
      lines.add(new ArrayList<>(columns.stream().map(column -> column.get(line)).toList()));
    }
    List<String> names = List.copyOf(lines.get(0));
    List<List<String>> rows = lines.subList(1, lines.size()).stream().map(List::copyOf).toList();
    boolean deadEnd = rows.stream().allMatch(row -> row.get(row.size() - 1).isEmpty());
    Fault fault = random.nextInt(3) > 0 || deadEnd ? Fault.NONE : pick(Fault.values());
    damage(lines, fault);
    String ends = random.nextInt(6) == 0 && mayEnd(fault) ? parting.mark.strip() : "";
    boolean headerToo = random.nextBoolean();
    boolean quoted = random.nextInt(5) == 0;
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < lines.size(); i++) {
      text.append(line(lines.get(i), quoted)).append(i > 0 || headerToo ? ends : "").append('\n');
    }
    return new Table(text.toString(), names, rows, fault == Fault.NONE);
  }

  // With a cell too few, a separator at the end of rows makes as many as there are names: whether
  // the last column is empty nothing can tell. Nor is a column always empty at the end of tables
  // with a fault.
  private boolean mayEnd(Fault fault) {
    boolean few = fault == Fault.CELL_MISSING || fault == Fault.NAME_TOO_MANY;
    return !parting.blanks && !few;
  }

  private void damage(List<List<String>> lines, Fault fault) {
    List<String> header = lines.get(0);
    switch (fault) {
      case NAME_MISSING -> header.remove(random.nextInt(header.size()));
      case NAME_TOO_MANY -> header.add(random.nextInt(header.size() + 1), pick(TEXT_NAMES));
      case CELL_MISSING -> {
        int cell = random.nextInt(header.size());
        lines.subList(1, lines.size()).forEach(row -> row.remove(cell));
      }
      case ENDS_LEFT_OUT ->
          lines.subList(1, lines.size()).stream()
              .filter(row -> row.get(row.size() - 1).isEmpty())
              .forEach(row -> row.remove(row.size() - 1));
      case NONE -> {}
    }
  }

  private String line(List<String> cells, boolean quoted) {
    return String.join(parting.mark, cells.stream().map(cell -> cell(cell, quoted)).toList());
  }

  private String cell(String cell, boolean quoted) {
    String mark = parting.mark.strip();
    boolean needed = (!mark.isEmpty() && cell.contains(mark)) || cell.contains("\t");
    boolean free = parting != Parting.COMMA_BLANK && !parting.blanks;
    return needed || (quoted && free) ? '"' + cell + '"' : cell;
  }

  private <T> T pick(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  private <T> T pick(T[] of) {
    return of[random.nextInt(of.length)];
  }
}
