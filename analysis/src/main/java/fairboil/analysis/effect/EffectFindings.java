package fairboil.analysis.effect;

import fairboil.ingest.Study;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.HolesSheet;
import fairboil.ingest.sheet.RingsSheet;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.List;

/**
 * What a reader should know of a hole effect.
 *
 * @param study the sheets
 */
record EffectFindings(Study study) {

  /** Fewer are no sample to test a line with. */
  private static final int FEWEST_BUILDS = 4;

  private static final Argument HOLES = Argument.sheet(HolesSheet.SCHEMA.file());
  private static final Argument RINGS = Argument.sheet(RingsSheet.SCHEMA.file());
  private static final Argument SETTINGS = Argument.sheet(Settings.SCHEMA.file());

  private Place holes() {
    return Place.of(
        study.holes().isEmpty()
            ? HolesSheet.SCHEMA.file()
            : study.holes().get(0).row().place().file());
  }

  Finding noHoles() {
    return Finding.note(
        holes(), EffectSays.NO_HOLES.with(), EffectSays.MEASURE_HOLES.with(HOLES, RINGS));
  }

  Finding notMeasured(String ring) {
    return Finding.error(
        study.settings().place(Settings.HOLE_RING),
        EffectSays.NO_SUCH_RING.with(Argument.name(ring)),
        EffectSays.CORRECT_RING.with());
  }

  Finding severalRings(List<String> rings, double each) {
    return Finding.note(
        holes(),
        EffectSays.SEVERAL_RINGS.with(
            Argument.count(rings.size()),
            Argument.list(rings.stream().map(Argument::name).toList()),
            Argument.number(100 * each, 2)),
        EffectSays.NAME_A_RING.with(Argument.word(Settings.HOLE_RING.name()), SETTINGS));
  }

  /** Causes that went together with hole error. */
  List<Finding> together(EffectChecks check) {
    List<Finding> findings = new ArrayList<>();
    double ambient = check.ambientCorrelation().orElse(0);
    if (check.wentWithAmbient()) {
      Template air = ambient > 0 ? EffectSays.WARMER : EffectSays.COLDER;
      findings.add(together(check, air, ambient, EffectSays.SAME_DAYS));
    }
    double area = check.areaCorrelation().orElse(0);
    if (check.wentWithOpenArea()) {
      findings.add(together(check, EffectSays.WRONG_TOGETHER, area, EffectSays.OFF_IN_ONE));
    }
    return findings;
  }

  private Finding together(EffectChecks check, Template what, double r, Template remedy) {
    return Finding.warning(
        holes(), what.with(Argument.name(check.ring()), Argument.number(r, 2)), remedy.with());
  }

  /** What is missing for an effect to be seen. */
  List<Finding> lacking(HoleEffect effect) {
    Argument ring = Argument.name(effect.ring());
    Argument response = Argument.word(effect.response().label());
    return switch (effect.verdict()) {
      case TOO_FEW_BUILDS ->
          lacking(tooFew(effect.points().size()).with(ring, response), moreBuilds(effect));
      case NO_SPREAD ->
          lacking(EffectSays.SAME_ERRORS.with(ring), EffectSays.DRILL_BETTER_AND_WORSE.with());
      case NO_SCATTER ->
          lacking(EffectSays.SAME_RESPONSE.with(response), EffectSays.READ_MORE_FINELY.with());
      case NO_SCATTER_ABOUT_LINE ->
          lacking(EffectSays.EXACTLY_ON_THE_LINE.with(response), EffectSays.COPIED.with());
      default -> List.of();
    };
  }

  private List<Finding> lacking(Message problem, Message remedy) {
    return List.of(Finding.warning(holes(), problem, remedy));
  }

  private static Template tooFew(int builds) {
    return switch (builds) {
      case 0 -> EffectSays.NO_BUILD;
      case 1 -> EffectSays.ONE_BUILD;
      default -> EffectSays.TWO_BUILDS;
    };
  }

  private static Message moreBuilds(HoleEffect effect) {
    int builds = effect.points().size();
    if (builds > 0) {
      return EffectSays.MORE_BUILDS.with(Argument.count(FEWEST_BUILDS - builds));
    }
    boolean ofFlame = effect.response().dimension() == Dimension.TEMPERATURE;
    return (ofFlame ? EffectSays.LOG_THE_FLAME : EffectSays.TIME_THE_BOIL)
        .with(Argument.count(FEWEST_BUILDS));
  }
}
