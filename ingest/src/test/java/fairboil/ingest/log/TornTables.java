package fairboil.ingest.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Random tables that were torn: a plain log whose header, rows and marks are each changed without
 * regard for the others. What is true of it is known by the figures alone: the flame lies between
 * 700 and 800, the water between 20 and 100, whatever else between 2,000 and 9,000. For one thread.
 */
final class TornTables {

  private static final List<String> MARKS = List.of(",", ";", "\t", "|", " ", ", ", " ; ", "  ");
  private static final List<String> WORDS =
      List.of("time", "Zeit", "Date Time", "t (s)", "top 2", "C", "s", "1", "17:00", "x;y", "a,b");
  private static final List<String> CELLS =
      List.of("1 012", "12:30", "3/4/17", "1,5", "-", "OL", "C", "ok", "v;", "9 am", "x y", "");

  private final Random random;

  TornTables(long seed) {
    this.random = new Random(seed);
  }

  /** The next log. */
  String next() {
    int columns = 3 + random.nextInt(8);
    int flame = 1 + random.nextInt(columns - 1);
    int water = 1 + random.nextInt(columns - 1);
    String rowMark = pick(MARKS);
    String headerMark = random.nextInt(4) == 0 ? pick(MARKS) : rowMark;
    List<String> odd = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (int i = 0; i < columns; i++) {
      odd.add(random.nextInt(3) == 0 ? pick(CELLS) : "");
      names.add(i == flame ? flame() : i == water ? water() : i == 0 ? time() : pick(WORDS));
    }
    tearHeader(names);
    StringBuilder text = new StringBuilder(random.nextInt(5) == 0 ? "Burn log, stove A\n" : "");
    text.append(joined(names, headerMark)).append('\n');
    boolean units = random.nextInt(8) == 0;
    text.append(units ? joined(units(names, flame, water), rowMark) + "\n" : "");
    int tear = random.nextInt(6) == 0 ? random.nextInt(columns) : -1;
    int stamp = random.nextInt(4);
    for (int row = 0; row < 8; row++) {
      List<String> cells = row(row, columns, flame, water, odd, stamp);
      if (tear >= 0 && names.size() == columns) {
        cells.remove(tear);
      }
      text.append(joined(cells, rowMark)).append(random.nextInt(20) == 0 ? rowMark : "");
      text.append('\n');
    }
    return text.toString();
  }

  private List<String> row(
      int row, int columns, int flame, int water, List<String> odd, int stamp) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < columns; i++) {
      cells.add(
          i == 0
              ? stamp(row, stamp)
              : i == flame
                  ? number(700 + row)
                  : i == water
                      ? number(20 + row)
                      : odd.get(i).isEmpty() ? number(2000 + 100 * i + row) : odd.get(i));
    }
    return cells;
  }

  private static String stamp(int row, int kind) {
    return switch (kind) {
      case 0 -> Integer.toString(row);
      case 1 -> "2017-01-17 16:52:0" + row;
      case 2 -> "16:52:0" + row + " 17.01.2017";
      default -> "1/17/2017 4:52:0" + row + " PM";
    };
  }

  private String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  // One name too many or too few, never both: then nothing would tell.
  private void tearHeader(List<String> names) {
    int kind = random.nextInt(4);
    if (kind == 0) {
      names.remove(random.nextInt(names.size()));
    } else if (kind == 1) {
      names.add(random.nextInt(names.size() + 1), pick(WORDS));
    }
  }

  private List<String> units(List<String> names, int flame, int water) {
    List<String> units = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      units.add(i == flame || i == water ? "C" : i == 0 ? "s" : random.nextBoolean() ? "v;" : "");
    }
    return units;
  }

  private String flame() {
    return pick(List.of("flame (°C)", "flame_C", "flame temp °C", "\"flame, top (°C)\""));
  }

  private String water() {
    return pick(List.of("water (°C)", "water_C", "water temp °C"));
  }

  private String time() {
    return pick(List.of("time (s)", "time", "Date Time", "Date and time", "t"));
  }

  // A mark within a cell would part it; two such faults may add up to the right number of cells.
  private static String joined(List<String> cells, String mark) {
    String bare = mark.strip().isEmpty() && !mark.equals("\t") ? " " : mark.strip();
    return String.join(
        mark,
        cells.stream()
            .map(cell -> bare.isEmpty() || cell.startsWith("\"") ? cell : cell.replace(bare, "_"))
            .toList());
  }

  private String pick(List<String> of) {
    return of.get(random.nextInt(of.size()));
  }
}
