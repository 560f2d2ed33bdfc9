package fairboil.reports.table;

import static fairboil.reports.table.TableColumn.count;
import static fairboil.reports.table.TableColumn.number;
import static fairboil.reports.table.TableColumn.text;

import fairboil.analysis.plan.Answer;
import fairboil.analysis.plan.Answer.Curve;
import fairboil.analysis.plan.Answer.Need;
import fairboil.analysis.plan.Plan;
import fairboil.analysis.plan.PlannedBuild;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** The tables of a plan. */
public final class PlanTables {

  private static final TableSchema<Needed> NEEDS =
      new TableSchema<>(
          "needs.csv",
          "a size of study that is enough",
          List.of(
              text("wish", "what is wanted", row -> row.answer.wish().kind().label()),
              text("scatter", "scatter reckoned with", row -> row.need.basis().label()),
              count("runs", "runs of each build", row -> OptionalLong.of(row.need.runs())),
              count("builds", "builds needed; empty for more than 200", Needed::builds)));

  private static final TableSchema<Odd> POWER =
      new TableSchema<>(
          "power.csv",
          "a size of study",
          List.of(
              text("wish", "what is wanted", row -> row.answer.wish().kind().label()),
              text("scatter", "scatter reckoned with", row -> row.curve.basis().label()),
              count("runs", "runs of each build", row -> OptionalLong.of(row.curve.runs())),
              count("builds", "builds", row -> OptionalLong.of(row.curve.fewest() + row.index)),
              number(
                  "power",
                  TableUnit.NONE,
                  "share of such studies that tell it",
                  row -> OptionalDouble.of(row.curve.odds().get(row.index)))));

  private static final TableSchema<PlannedBuild> BUILDS =
      new TableSchema<>(
          "planned_builds.csv",
          "a build of the running order",
          List.of(
              text("build", "its name", PlannedBuild::name),
              text("design", "its design", build -> build.design().orElse("")),
              text("origin", "whether it is there", build -> build.origin().label()),
              number(
                  TableUnit.MILLIMETRE.name("hole_error_to_drill"),
                  TableUnit.MILLIMETRE,
                  "RMS hole error to drill on purpose",
                  PlannedBuild::holeError)));

  private PlanTables() {}

  private record Needed(Answer answer, Need need) {

    OptionalLong builds() {
      return need.builds().isPresent()
          ? OptionalLong.of(need.builds().getAsInt())
          : OptionalLong.empty();
    }
  }

  private record Odd(Answer answer, Curve curve, int index) {}

  /** The tables, in the order in which people read them. */
  public static List<ResultTable> of(Plan plan) {
    List<Needed> needs = new ArrayList<>();
    List<Odd> odds = new ArrayList<>();
    for (Answer answer : plan.answers()) {
      answer.needs().forEach(need -> needs.add(new Needed(answer, need)));
      for (Curve curve : answer.curves()) {
        for (int i = 0; i < curve.odds().size(); i++) {
          odds.add(new Odd(answer, curve, i));
        }
      }
    }
    return List.of(NEEDS.of(needs), POWER.of(odds), BUILDS.of(plan.builds()));
  }
}
