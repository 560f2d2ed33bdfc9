package fairboil.reports.words;

import fairboil.analysis.Results;
import fairboil.analysis.compare.Fairness.Condition;
import fairboil.analysis.compare.Fairness.Group;
import fairboil.analysis.compare.FairnessFinder;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.run.References;
import fairboil.ingest.choice.NormaliseBy;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What those who quote a study should say with it. */
public final class QuoteWords {

  private final Results results;
  private final Display display;

  private QuoteWords(Results results) {
    this.results = results;
    this.display = Display.in(results.study().settings().get(Settings.SHOW_UNITS));
  }

  /** Words for a study, in its units. */
  public static QuoteWords of(Results results) {
    return new QuoteWords(results);
  }

  /** The conditions of the runs that count, in one sentence. */
  public String conditions() {
    Group all = FairnessFinder.everyRun(results.study(), results.runs());
    FairnessWords words = FairnessWords.of(results);
    List<String> conditions = new ArrayList<>();
    for (Condition condition : all.conditions()) {
      conditions.add(
          FairnessWords.label(condition.column())
              + " "
              + Names.inSentence(words.values(condition, all.runs())));
    }
    String whose = "Conditions of the " + Plural.of(all.runs(), "run") + " that count: ";
    return whose + (conditions.isEmpty() ? "not recorded" : String.join("; ", conditions)) + ".";
  }

  /** How a measure was normalised, or that it was not. */
  public String normalising(Measure measure) {
    return switch (measure) {
      case NORMALISED_PEAK -> normalisedPeak();
      case NORMALISED_BOIL_TIME, HOLE_EFFECT_ON_BOIL_TIME -> normalisedBoilTime();
      case HOLE_EFFECT_ON_PEAK -> normalisedPeak();
      default -> "Not normalised: as measured, in the conditions of each run.";
    };
  }

  private String normalisedPeak() {
    return "Normalised peaks are restated for air of "
        + temperature(results.references().ambient())
        + ", degree for degree; a bead follows the air by somewhat less.";
  }

  private String normalisedBoilTime() {
    References references = results.references();
    return "Normalised boil times are restated by "
        + method()
        + " for "
        + display.value(references.water(), 0, Dimension.MASS)
        + " of water from "
        + temperature(references.start())
        + " to its boiling point of "
        + display.value(references.boilingPoint(), 0.02, Dimension.TEMPERATURE)
        + " at an altitude of "
        + display.altitude(references.altitude())
        + ".";
  }

  private String method() {
    Optional<NormaliseBy> used =
        results.runs().stream().flatMap(run -> run.energy().normalisedBy().stream()).findFirst();
    return used.orElse(NormaliseBy.ENERGY_SCALING) == NormaliseBy.HEAT_BALANCE
        ? "heat balance"
        : "energy scaling, which restates water and boiling point but not the temperature of the"
            + " air,";
  }

  private String temperature(double held) {
    return display.value(held, 0.5, Dimension.TEMPERATURE);
  }

  /** A line by which others can tell which data are meant. */
  public String citation(String version, String fingerprint) {
    String title = oneLine(AnswerWords.of(results).title());
    return title
        + (title.matches(".*[.!?)]") ? "" : ".")
        + " Study \u201c"
        + oneLine(results.study().name())
        + "\u201d, "
        + Plural.of(results.runs().size(), "run")
        + " of "
        + Plural.of(results.builds().size(), "build")
        + "; worked out with fairboil "
        + version
        + ". Fingerprint of the data (SHA-256): "
        + fingerprint
        + ".";
  }

  private static String oneLine(String text) {
    return Names.inSentence(text).replaceAll("[\\u2028\\u2029\\s]+", " ").strip();
  }
}
