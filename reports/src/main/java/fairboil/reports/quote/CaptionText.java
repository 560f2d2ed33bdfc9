package fairboil.reports.quote;

import fairboil.analysis.Results;
import fairboil.reports.chart.Picture.Kind;
import fairboil.reports.chart.Print;
import fairboil.reports.words.Display;
import fairboil.reports.words.Names;
import fairboil.reports.words.QuoteWords;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** What is to stand under a chart in print: what, how many, conditions, interval, normalising. */
final class CaptionText {

  private static final Set<Kind> WITHOUT_INTERVALS =
      EnumSet.of(Kind.RING_MAPS, Kind.HEAT_BALANCE, Kind.BUDGET);

  private final Results results;
  private final QuoteWords words;
  private final String citation;

  CaptionText(Results results, String citation) {
    this.results = results;
    this.words = QuoteWords.of(results);
    this.citation = citation;
  }

  /** The text of a chart, a paragraph a line. */
  String of(Print print) {
    List<String> paragraphs = new ArrayList<>();
    paragraphs.add(print.caption().title());
    paragraphs.add(print.caption().text());
    interval(print.kind()).forEach(paragraphs::add);
    paragraphs.add(words.conditions());
    normalising(print).forEach(paragraphs::add);
    paragraphs.add("For those who cannot see it: " + print.caption().alternative());
    paragraphs.add("Source: " + citation);
    StringBuilder text = new StringBuilder();
    for (String paragraph : paragraphs) {
      text.append(Names.inSentence(paragraph).strip()).append("\n\n");
    }
    return text.deleteCharAt(text.length() - 1).toString();
  }

  private List<String> interval(Kind kind) {
    return WITHOUT_INTERVALS.contains(kind)
        ? List.of()
        : List.of(
            "Confidence of the intervals of the study: "
                + Display.percent(results.confidence())
                + ". Intervals about stoves have their degrees of freedom from builds, not from"
                + " burns.");
  }

  private List<String> normalising(Print print) {
    if (print.kind() == Kind.RING_MAPS) {
      return List.of("Places are as measured, after best fit; nothing is normalised.");
    }
    return print.key().measure().map(words::normalising).stream().toList();
  }
}
