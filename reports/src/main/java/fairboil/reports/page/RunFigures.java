package fairboil.reports.page;

import fairboil.analysis.figure.Figure;
import fairboil.analysis.run.BoilResult.BoilTimeFrom;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.choice.NormaliseBy;
import fairboil.ingest.finding.Message;
import fairboil.reports.page.view.FactView;
import fairboil.reports.page.view.RunView.Group;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The figures of a run: those known by what they are about, the others by why they are not. */
final class RunFigures {

  private final FigureCells cells;
  private final List<Group> groups = new ArrayList<>();
  private final Map<String, List<String>> unknown = new LinkedHashMap<>();

  private RunFigures(FigureCells cells) {
    this.cells = cells;
  }

  static RunFigures of(RunResult run, FigureCells cells) {
    RunFigures figures = new RunFigures(cells);
    figures.add("Boil", boil(run));
    figures.add("Flame", flame(run));
    figures.add("Fuel", fuel(run));
    figures.add("Conditions", conditions(run));
    return figures;
  }

  /** The known figures. */
  List<Group> groups() {
    return groups;
  }

  /** For each reason, the figures that are not known for it. */
  List<FactView> unknown() {
    return unknown.entrySet().stream()
        .map(entry -> new FactView(entry.getKey(), String.join(", ", entry.getValue()), ""))
        .toList();
  }

  private void add(String title, Map<String, Figure> figures) {
    Optional<Message> shared = commonReason(figures.values());
    if (shared.isPresent()) {
      unknown
          .computeIfAbsent(cells.reason(shared.get()), unseen -> new ArrayList<>())
          .add("every figure of the " + title.toLowerCase(Locale.ROOT));
      return;
    }
    List<FactView> facts = new ArrayList<>();
    figures.forEach(
        (name, figure) -> {
          if (figure instanceof Figure.Known known) {
            facts.add(cells.fact(name, known));
          } else if (figure instanceof Figure.Unknown reason) {
            unknown
                .computeIfAbsent(cells.reason(reason.reason()), unseen -> new ArrayList<>())
                .add(name);
          }
        });
    if (!facts.isEmpty()) {
      groups.add(new Group(title, facts));
    }
  }

  /** The reason for which not one of the figures is known, if it is the same for all. */
  private static Optional<Message> commonReason(Collection<Figure> figures) {
    Set<Message> reasons = new HashSet<>();
    for (Figure figure : figures) {
      reasons.add(figure instanceof Figure.Unknown unknown ? unknown.reason() : Message.NONE);
    }
    return reasons.size() == 1
        ? reasons.stream().filter(reason -> !reason.isEmpty()).findFirst()
        : Optional.empty();
  }

  private static Map<String, Figure> boil(RunResult run) {
    Map<String, Figure> figures = new LinkedHashMap<>();
    figures.put(
        "normalised boil time"
            + run.energy()
                .normalisedBy()
                .map(NormaliseBy::label)
                .map(by -> " (" + by + ")")
                .orElse(""),
        run.energy().normalisedBoilTime());
    figures.put(
        "boil time"
            + run.boil().from().map(BoilTimeFrom::label).map(by -> " (" + by + ")").orElse(""),
        run.boil().boilTime());
    figures.put("boil time by stopwatch", run.boil().stopwatchBoilTime());
    figures.put("lit to boil", run.boil().litToBoil());
    figures.put("burn time", run.boil().burnTime());
    figures.put("hottest water", run.boil().hottestWater());
    figures.put("plateau", run.boil().plateau());
    figures.put("plateau less boiling point", run.boil().plateauOffset());
    figures.put("net power", run.energy().netPower());
    return figures;
  }

  private static Map<String, Figure> flame(RunResult run) {
    Map<String, Figure> figures = new LinkedHashMap<>();
    figures.put("normalised peak", run.flame().normalisedPeak());
    figures.put("peak", run.flame().peak());
    figures.put("peak at", run.flame().peakAt());
    figures.put("peak above air", run.flame().peakRise());
    figures.put("taken off for noise", run.flame().peakBias());
    figures.put("steady flame", run.flame().steadyFlame());
    return figures;
  }

  private static Map<String, Figure> fuel(RunResult run) {
    Map<String, Figure> figures = new LinkedHashMap<>();
    figures.put("dry fuel", run.fuel().dryFuel());
    figures.put("burning rate", run.fuel().burningRate());
    figures.put("firepower", run.fuel().firepower());
    figures.put("efficiency", run.fuel().efficiency());
    figures.put("efficiency without char", run.fuel().efficiencyWithoutChar());
    figures.put("specific consumption", run.fuel().specificConsumption());
    figures.put("fuel per boil", run.fuel().fuelPerBoil());
    return figures;
  }

  private static Map<String, Figure> conditions(RunResult run) {
    Map<String, Figure> figures = new LinkedHashMap<>();
    figures.put("air temperature", run.conditions().ambient());
    figures.put("air pressure", run.conditions().pressure());
    figures.put("boiling point", run.conditions().boilingPoint());
    figures.put("water", run.conditions().water());
    figures.put("water at the start", run.conditions().waterStart());
    return figures;
  }
}
