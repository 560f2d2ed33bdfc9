package fairboil.analysis.effect;

import fairboil.ingest.Study;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What a reader should know of a hole effect, in words.
 *
 * @param study the sheets
 */
record EffectFindings(Study study) {

  private String holesFile() {
    return study.holes().isEmpty() ? "holes.csv" : study.holes().get(0).row().place().file();
  }

  Finding noHoles() {
    return Finding.note(
        Place.of(holesFile()),
        "no hole positions could be judged, so whether hole position matters is not asked",
        "measure the holes of each build and list them in holes.csv and rings.csv");
  }

  Finding notMeasured(String ring) {
    return Finding.error(
        study.settings().place(Settings.HOLE_RING),
        "no holes of ring " + ring + " could be judged",
        "correct the name, or measure its holes; until then there is no hole effect");
  }

  Finding severalRings(List<String> rings, double each) {
    return Finding.note(
        Place.of(holesFile()),
        String.format(
            Locale.ROOT,
            "the hole effect is asked of %d rings (%s), so each of its intervals is one of %.2f %%:"
                + " only so do they hold together",
            rings.size(),
            String.join(", ", rings),
            100 * each),
        "name the hole ring in study.csv, before looking, to ask of one ring alone");
  }

  /** Causes that went together with hole error. */
  List<Finding> together(EffectChecks check) {
    List<Finding> findings = new ArrayList<>();
    double ambient = check.ambientCorrelation().orElse(0);
    if (check.wentWithAmbient()) {
      findings.add(
          together(
              check,
              "builds with larger hole errors were burnt in "
                  + (ambient > 0 ? "warmer" : "colder")
                  + " air",
              ambient,
              "burn good and bad stoves on the same days, in random order"));
    }
    double area = check.areaCorrelation().orElse(0);
    if (check.wentWithOpenArea()) {
      findings.add(
          together(
              check,
              "hole position and open area went wrong together",
              area,
              "their effects cannot be separated here; drill stoves that are off in one of them"
                  + " only"));
    }
    return findings;
  }

  private Finding together(EffectChecks check, String what, double r, String remedy) {
    return Finding.warning(
        Place.of(holesFile()),
        what + String.format(Locale.ROOT, " (ring %s, correlation %.2f)", check.ring(), r),
        remedy);
  }

  /** What is missing for an effect to be seen. */
  List<Finding> lacking(HoleEffect effect) {
    int builds = effect.points().size();
    return switch (effect.verdict()) {
      case TOO_FEW_BUILDS ->
          List.of(
              Finding.warning(
                  Place.of(holesFile()), tooFew(builds, effect), moreBuilds(builds, effect)));
      case NO_SPREAD ->
          List.of(
              Finding.warning(
                  Place.of(holesFile()),
                  "all builds have the same hole error in ring "
                      + effect.ring()
                      + ", so its effect cannot be seen",
                  "drill some stoves better and some worse"));
      case NO_SCATTER ->
          List.of(
              Finding.warning(
                  Place.of(holesFile()),
                  "all burns have the same "
                      + effect.response().label()
                      + ", so an effect on it cannot be seen",
                  "read it more finely: a stopwatch to the second, a scale to the gram"));
      case NO_SCATTER_ABOUT_LINE ->
          List.of(
              Finding.warning(
                  Place.of(holesFile()),
                  "the mean "
                      + effect.response().label()
                      + " of the builds follows their hole error exactly, which measurements do not",
                  "look whether figures were copied or worked out rather than measured"));
      default -> List.of();
    };
  }

  private static String tooFew(int builds, HoleEffect effect) {
    String having =
        " both hole positions in ring "
            + effect.ring()
            + " and a "
            + effect.response().label()
            + ": ";
    return switch (builds) {
      case 0 -> "no build has" + having + "nothing to draw a line through";
      case 1 -> "1 build has" + having + "no line through 1 point can be drawn";
      default -> builds + " builds have" + having + "no line through 2 points can be tested";
    };
  }

  private static String moreBuilds(int builds, HoleEffect effect) {
    boolean ofFlame = effect.response().dimension() == Dimension.TEMPERATURE;
    return builds == 0
        ? (ofFlame ? "log the flame" : "time the boil") + " and measure the holes of at least 4"
        : "drill and burn at least " + (4 - builds) + " more";
  }
}
