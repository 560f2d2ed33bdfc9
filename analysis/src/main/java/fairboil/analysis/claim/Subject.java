package fairboil.analysis.claim;

import fairboil.analysis.group.RunColumn;
import fairboil.analysis.group.RunGroup;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.Study;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.sheet.Claim;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Selection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The runs that a claim is about, or against.
 *
 * @param runs the runs; those that count
 * @param scope whether the claim is about one stove itself or about stoves like these
 */
record Subject(RunGroup runs, Scope scope) {

  /** What a claim generalises to. */
  enum Scope {
    /** This very stove: its runs are the units. */
    ONE_BUILD,
    /** Stoves like these: builds are the units. */
    BUILDS
  }

  /** Finds the runs of claims. */
  record Finder(Study study, List<RunResult> results) {

    /** What the claim is about: all runs if it does not say. */
    Subject about(Claim claim) throws Refusal {
      return find(claim, ClaimsSheet.ABOUT).orElse(new Subject(where(claim), Scope.BUILDS));
    }

    /** What it is compared with, if anything. */
    Optional<Subject> against(Claim claim) throws Refusal {
      return find(claim, ClaimsSheet.AGAINST);
    }

    /** The runs that meet the claim's {@code where}. */
    RunGroup where(Claim claim) throws Refusal {
      RunGroup all = RunGroup.of(results);
      Optional<Given<Selection>> where = claim.row().cell(ClaimsSheet.WHERE);
      return where.isEmpty() ? all : select(all, where.get()).runs();
    }

    private Optional<Subject> find(Claim claim, Column<Selection> column) throws Refusal {
      Optional<Given<Selection>> given = claim.row().cell(column);
      return given.isEmpty() ? Optional.empty() : Optional.of(select(where(claim), given.get()));
    }

    private Subject select(RunGroup runs, Given<Selection> given) throws Refusal {
      Subject subject =
          given.value() instanceof Selection.Named named
              ? named(runs, named.name())
              : new Subject(
                  matching(runs, ((Selection.Where) given.value()).cells()), Scope.BUILDS);
      if (subject.runs.size() == 0) {
        throw new Refusal(ClaimSays.NO_RUN_IS.with(Argument.cell(given.written())));
      }
      return subject;
    }

    /** The runs of a build, else of a design. */
    private Subject named(RunGroup runs, String name) throws Refusal {
      if (study.builds().stream().anyMatch(build -> build.key().name().equals(name))) {
        return new Subject(
            runs.where(run -> run.build().key().name().equals(name)), Scope.ONE_BUILD);
      }
      if (study.builds().stream()
          .noneMatch(build -> build.design().filter(name::equals).isPresent())) {
        throw new Refusal(ClaimSays.NOTHING_IS_CALLED.with(Argument.name(name)));
      }
      return new Subject(
          runs.where(run -> run.build().design().filter(name::equals).isPresent()), Scope.BUILDS);
    }

    private RunGroup matching(RunGroup runs, Map<String, String> cells) throws Refusal {
      RunGroup matching = runs;
      for (Map.Entry<String, String> cell : cells.entrySet()) {
        Optional<RunColumn> column = RunColumn.named(study, cell.getKey());
        if (column.isEmpty()) {
          throw new Refusal(ClaimSays.NO_COLUMN.with(Argument.name(cell.getKey())));
        }
        matching =
            matching.where(
                run ->
                    column
                        .get()
                        .text(run)
                        .filter(text -> text.equalsIgnoreCase(cell.getValue().strip()))
                        .isPresent());
      }
      return matching;
    }
  }
}
