package fairboil.reports.print;

import fairboil.reports.template.PlannedRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The running order of the next tests as a form: a line for each burn, to be ticked off. */
public final class OrderForm {

  private static final String NAME = "running-order";
  private static final double ROW = 6.6;

  private OrderForm() {}

  /**
   * Draws the form.
   *
   * @param study the name of the study
   * @param runs the burns in their order
   * @param paper the paper
   */
  public static Printed of(String study, List<PlannedRun> runs, Paper paper) {
    FormHead head = new FormHead(paper, "Running order", study);
    try (Typefaces typefaces = Typefaces.open()) {
      byte[] pdf = Booklet.of(head, typefaces, booklet -> draw(booklet, head, runs));
      return new Printed(NAME + "-" + paper.slug() + ".pdf", head.title(), pdf);
    }
  }

  private static void draw(Booklet booklet, FormHead head, List<PlannedRun> runs) {
    Flow flow =
        new Flow(
            booklet,
            head,
            head.paper().label(),
            "Burn in this order, from top to bottom: it was drawn by lot, so that weather, fuel and"
                + " practice fall on all stoves alike. If a burn fails, say why and burn that stove"
                + " again at the end of its block; keep the failed one in the list. One run sheet"
                + " for each burn.");
    flow.heading("Cautions");
    Safety.all(flow);
    int block = 0;
    List<PlannedRun> together = new ArrayList<>();
    for (PlannedRun run : runs) {
      if (run.block() != block) {
        block(flow, together);
        together.clear();
        block = run.block();
      }
      together.add(run);
    }
    block(flow, together);
  }

  private static void block(Flow flow, List<PlannedRun> runs) {
    if (runs.isEmpty()) {
      return;
    }
    Optional<String> site = runs.get(0).site();
    flow.heading("Block " + runs.get(0).block() + site.map(name -> ", at " + name).orElse(""));
    List<List<String>> rows = new ArrayList<>();
    for (PlannedRun run : runs) {
      rows.add(List.of(String.valueOf(run.order()), run.name(), run.build(), "", "", "", ""));
    }
    flow.table(new Table(columns(flow.width()), ROW, rows));
  }

  private static List<Table.Column> columns(double width) {
    return List.of(
        new Table.Column("order", "", 0.07 * width),
        new Table.Column("run", "its name in runs.csv", 0.19 * width),
        new Table.Column("build", "the stove to burn", 0.19 * width),
        new Table.Column("date", "", 0.13 * width),
        new Table.Column("lit at", "time of day", 0.11 * width),
        new Table.Column("tester", "", 0.11 * width),
        new Table.Column("outcome", "or what went wrong", 0.20 * width));
  }
}
