package fairboil.reports.words;

import fairboil.analysis.Results;
import fairboil.analysis.WithExcluded;
import fairboil.analysis.claim.ClaimResult;
import fairboil.analysis.group.BuildResult;
import fairboil.analysis.group.Summary;
import fairboil.analysis.measure.Measure;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.List;

/** What is said of results with and without the runs that were left out. */
public final class ExcludedWords {

  private static final List<Measure> TOLD =
      List.of(Measure.NORMALISED_BOIL_TIME, Measure.NORMALISED_PEAK);

  private final Results results;
  private final Display display;

  private ExcludedWords(Results results) {
    this.results = results;
    this.display = Display.in(results.study().settings().get(Settings.SHOW_UNITS));
  }

  /** What counting them would have changed, in sentences; none if nothing was left out. */
  public static List<String> sentences(Results results) {
    ExcludedWords words = new ExcludedWords(results);
    return results.withExcluded().map(words::sentences).orElse(List.of());
  }

  /** Which verdicts, on claims and on differences, counting them would have changed. */
  public static List<String> verdicts(Results results) {
    ExcludedWords words = new ExcludedWords(results);
    List<String> verdicts = new ArrayList<>();
    results.withExcluded().map(words::ofClaims).ifPresent(verdicts::add);
    verdicts.addAll(ExcludedComparisons.sentences(results));
    return verdicts;
  }

  private String ofClaims(WithExcluded all) {
    return "Had "
        + (all.runs() == 1 ? "the run" : "the " + all.runs() + " runs")
        + " above been counted: "
        + claims(all)
        + ".";
  }

  private List<String> sentences(WithExcluded all) {
    List<String> sentences = new ArrayList<>(verdicts(results));
    means(all).forEach(mean -> sentences.add("With " + them(all) + ", " + mean + "."));
    return sentences;
  }

  private static String them(WithExcluded all) {
    return all.runs() == 1 ? "it" : "them";
  }

  private String claims(WithExcluded all) {
    if (all.claims().isEmpty()) {
      return "there is no claim that it could change";
    }
    List<String> changed = new ArrayList<>();
    for (int i = 0; i < all.claims().size(); i++) {
      ClaimResult with = all.claims().get(i);
      ClaimResult without = results.claims().get(i);
      if (with.verdict() != without.verdict()) {
        changed.add(
            "claim "
                + Names.inSentence(with.claim().key().name())
                + " would be "
                + with.verdict().label()
                + " rather than "
                + without.verdict().label());
      }
    }
    return changed.isEmpty() ? "every claim would have the same verdict" : Plural.list(changed);
  }

  private List<String> means(WithExcluded all) {
    List<String> means = new ArrayList<>();
    for (int i = 0; i < all.builds().size(); i++) {
      for (Measure measure : TOLD) {
        BuildResult with = all.builds().get(i);
        Summary counted = results.builds().get(i).summaries().get(measure);
        Summary other = with.summaries().get(measure);
        if (other != null && counted != null && other.n() != counted.n()) {
          means.add(mean(with, measure, other, counted));
        } else if (other == null && counted != null) {
          means.add(
              Names.inSentence(with.build().key().name())
                  + " would have no mean "
                  + measure.label()
                  + ", because a run would be counted that did not boil");
        }
      }
    }
    return means;
  }

  private String mean(BuildResult build, Measure measure, Summary with, Summary without) {
    double coarseness = without.interval().map(Display::uncertainty).orElse(0.0);
    return "the mean "
        + measure.label()
        + " of "
        + Names.inSentence(build.build().key().name())
        + " would be "
        + display.value(with.mean(), coarseness, measure.dimension())
        + " rather than "
        + display.value(without.mean(), coarseness, measure.dimension());
  }
}
