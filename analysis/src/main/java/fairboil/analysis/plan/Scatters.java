package fairboil.analysis.plan;

import fairboil.analysis.effect.BuildPoint;
import fairboil.analysis.effect.EffectRow;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.figure.Deviations;
import fairboil.analysis.group.RunGroup;
import fairboil.analysis.model.LinearFit;
import fairboil.analysis.model.Regressors;
import fairboil.analysis.model.VarianceComponents;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Template;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/** The scatter that a plan reckons with: what was stated, else what the runs of a study show. */
final class Scatters {

  /** A two-sided interval of this confidence ends at the upper 80 % limit. */
  private static final double TWO_SIDED = 0.6;

  private static final double UPPER_TAIL = 0.2;

  private static final Template NOT_BURNT_TWICE =
      Template.of(
          "no stove of this study was burnt twice with a known {word}, so its scatter from burn to"
              + " burn is not known; give it with --burn-sd");
  private static final Template STOVES_UNKNOWN =
      Template.of(
          "this study does not show how far stoves of one design differ in {word} (that takes two"
              + " builds of a design, one of them burnt twice); give it with --stove-sd");

  private final Asked asked;

  Scatters(Asked asked) {
    this.asked = asked;
  }

  /** About the means of designs. */
  Spreads ofDesigns(List<RunResult> runs) throws PlanException {
    Map<String, List<RunResult>> designs = new LinkedHashMap<>();
    for (RunResult run : RunGroup.of(runs).runs()) {
      designs.computeIfAbsent(run.build().design().orElse(""), key -> new ArrayList<>()).add(run);
    }
    List<List<double[]>> families = designs.values().stream().map(this::builds).toList();
    return spreads(
        families.stream().flatMap(List::stream).toList(), VarianceComponents.within(families));
  }

  /** The values of each build; a build whose mean would hide failures is left out. */
  private List<double[]> builds(List<RunResult> runs) {
    return RunGroup.of(runs).byBuild().values().stream()
        .map(own -> own.values(asked.measure()))
        .filter(values -> values.length > 0)
        .toList();
  }

  /** About the line of a hole effect, or empty if there is none. */
  Optional<Spreads> aboutLine(List<HoleEffect> effects) throws PlanException {
    Optional<HoleEffect> effect =
        effects.stream()
            .filter(each -> each.response() == asked.measure() && each.headline().isPresent())
            .findFirst();
    if (effect.isEmpty()) {
      return Optional.empty();
    }
    List<BuildPoint> points = effect.get().points();
    double[] errors = points.stream().mapToDouble(BuildPoint::holeError).toArray();
    double[] means = points.stream().mapToDouble(BuildPoint::mean).toArray();
    List<double[]> groups = points.stream().map(BuildPoint::burns).toList();
    Optional<VarianceComponents> components =
        LinearFit.of(Regressors.line(EffectRow.HOLE_ERROR, errors), means)
            .flatMap(
                fit ->
                    VarianceComponents.of(
                        groups, fit.residualSumOfSquares(), fit.degreesOfFreedom()));
    return Optional.of(spreads(groups, components));
  }

  private Spreads spreads(List<double[]> groups, Optional<VarianceComponents> components)
      throws PlanException {
    return new Spreads(burns(groups), stoves(components));
  }

  private Spread burns(List<double[]> groups) throws PlanException {
    if (asked.burnSd().isPresent()) {
      return Spread.stated(asked.burnSd().getAsDouble());
    }
    int degreesOfFreedom = groups.stream().mapToInt(group -> group.length - 1).sum();
    if (degreesOfFreedom < 1) {
      throw new PlanException(NOT_BURNT_TWICE.with(Argument.word(asked.measure().label())));
    }
    double squares = groups.stream().mapToDouble(Deviations::squares).sum();
    return Spread.estimated(
        Math.sqrt(squares / degreesOfFreedom),
        VarianceComponents.intervalOfSd(squares, degreesOfFreedom, TWO_SIDED).high(),
        degreesOfFreedom);
  }

  private Spread stoves(Optional<VarianceComponents> components) throws PlanException {
    if (asked.stoveSd().isPresent()) {
      return Spread.stated(asked.stoveSd().getAsDouble());
    }
    VarianceComponents known =
        components.orElseThrow(
            () -> new PlanException(STOVES_UNKNOWN.with(Argument.word(asked.measure().label()))));
    double upper = known.intervalBetween(TWO_SIDED).high();
    return Spread.estimated(
        known.sdBetween(), upper > 0 ? upper : limitOfMeans(known), known.groups() - 1);
  }

  /** The limit of the scatter of means, as if runs had none: for where theirs would hide it. */
  private static double limitOfMeans(VarianceComponents known) {
    double degreesOfFreedom = known.groups() - 1.0;
    double quantile =
        ChiSquaredDistribution.of(degreesOfFreedom).inverseCumulativeProbability(UPPER_TAIL);
    return Math.sqrt(known.between() * degreesOfFreedom / quantile / known.size());
  }
}
