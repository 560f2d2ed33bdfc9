package fairboil.reports.print;

import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.reports.words.Display;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Fields of a form, two beside each other: name, meaning and example, and a box to write in. */
final class FieldGrid {

  private static final double BETWEEN = 4;
  private static final double LABEL = 0.52;
  private static final double LEAST = 9.5;
  private static final double PAD = 1.2;

  private final Flow flow;
  private final Lettering lettering;
  private final DisplayUnits units;
  private final Display display;

  FieldGrid(Flow flow, Lettering lettering, DisplayUnits units) {
    this.flow = flow;
    this.lettering = lettering;
    this.units = units;
    this.display = Display.in(units);
  }

  void draw(List<Column<?>> columns) {
    for (int i = 0; i < columns.size(); i += 2) {
      List<Column<?>> row = columns.subList(i, Math.min(i + 2, columns.size()));
      double height = row.stream().mapToDouble(this::height).max().orElseThrow();
      double top = flow.take(height + 1);
      for (int side = 0; side < row.size(); side++) {
        double left = flow.left() + side * (width() + BETWEEN);
        field(row.get(side), flow.page(), left, top, height);
      }
    }
  }

  private double width() {
    return (flow.width() - BETWEEN) / 2;
  }

  private double labelWidth() {
    return width() * LABEL;
  }

  private double boxWidth() {
    return width() - labelWidth();
  }

  private double height(Column<?> column) {
    double label = Type.STRONG.lineHeight() + meaning(column).size() * Type.NOTE.lineHeight();
    double box = answers(column).size() * Type.SMALL.lineHeight() + 2 * PAD;
    return Math.max(LEAST, Math.max(label, box) + 0.8);
  }

  private List<String> meaning(Column<?> column) {
    return lettering.lines(
        column.meaning() + ", such as " + column.example(), labelWidth() - PAD, Type.NOTE);
  }

  /** The answers to tick, set in lines. */
  private List<String> answers(Column<?> column) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String answer : RunFields.choices(column)) {
      String box = "□ " + answer;
      String longer = line.isEmpty() ? box : line + "   " + box;
      if (lettering.width(longer, Type.SMALL) > boxWidth() - 2 * PAD && !line.isEmpty()) {
        lines.add(line);
        line = box;
      } else {
        line = longer;
      }
    }
    if (!line.isEmpty()) {
      lines.add(line);
    }
    return lines;
  }

  private void field(Column<?> column, Canvas page, double left, double top, double height) {
    double y = top + Type.STRONG.capital() + 0.4;
    String required = column.need() == Column.Need.REQUIRED ? " (needed)" : "";
    page.text(column.name() + required, left, y, Type.STRONG, Canvas.Side.LEFT);
    y += Type.NOTE.lineHeight() + 0.4;
    for (String line : meaning(column)) {
      page.text(line, left, y, Type.NOTE, Canvas.Side.LEFT);
      y += Type.NOTE.lineHeight();
    }
    double box = left + labelWidth();
    page.box(box, top, boxWidth(), height, Pen.RULE);
    double base = top + PAD + Type.SMALL.capital();
    for (String line : answers(column)) {
      page.text(line, box + PAD, base, Type.SMALL, Canvas.Side.LEFT);
      base += Type.SMALL.lineHeight();
    }
    page.text(
        unit(column), box + boxWidth() - PAD, top + height - PAD, Type.SMALL, Canvas.Side.RIGHT);
  }

  /**
   * The unit to write it in; a run sheet tells one that suits the study, any other may be added.
   */
  private String unit(Column<?> column) {
    if (column == RunsSheet.ALTITUDE) {
      return units == DisplayUnits.US ? Unit.FOOT.symbol() : Unit.METRE.symbol();
    }
    return column.dimensions().stream()
        .map(dimension -> display.scale(dimension).isClock() ? "min:s" : display.symbol(dimension))
        .collect(Collectors.joining(" or "));
  }
}
