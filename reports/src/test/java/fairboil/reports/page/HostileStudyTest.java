package fairboil.reports.page;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.Results;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.SheetRow;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import fairboil.reports.Altered;
import fairboil.reports.SampleResults;
import fairboil.reports.page.Html.Attribute;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Text that is out to change the page changes nothing but the cell that it stands in. */
class HostileStudyTest {

  private static final String HARMLESS = "harmless";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "\"><img src=x onerror=alert(1)>",
        "' onmouseover='alert(1)",
        "</style></title></script><h1>x</h1>",
        "<!--",
        "-->]]>",
        "&lt;b&gt; &amp; &#x3c;b>",
        "javascript:alert(1)",
        "${7*7} {{7*7}} @if(true)x@endif",
        "\u202egnp.exe\u2066 \u05d0\u05d1",
        "\ud83d\udd25\ud83d\udc68\u200d\ud83d\udc69\u200d\ud83d\udc67",
        "nul\u0000bell\u0007del\u007fc1\u0085",
        "\ud800 alone"
      })
  void tagsStayTheSame(String hostile) {
    Html expected = new Html(SamplePages.written(SamplePages.pictured(study(HARMLESS))));
    Html page = new Html(SamplePages.written(SamplePages.pictured(study(hostile))));
    assertThat(page.tags()).isEqualTo(expected.tags());
    assertThat(page.attributes())
        .extracting(attribute -> attribute.tag() + " " + attribute.name())
        .isEqualTo(expected.attributes().stream().map(it -> it.tag() + " " + it.name()).toList());
    assertThat(page.values("id")).doesNotHaveDuplicates();
    assertThat(page.values("href")).allMatch(it -> it.startsWith("#"));
    assertThat(page.attributes())
        .extracting(Attribute::name)
        .noneMatch(name -> name.startsWith("on"));
  }

  /** HTML, "Preprocessing the input stream": these characters may not stand in a page. */
  @Test
  void controlCharactersAreReplaced() {
    String page = SamplePages.written(SamplePages.pictured(study("a\u0000b\u0007c\u007fd\u0085e")));
    assertThat(page).contains("a\ufffdb\ufffdc\ufffdd\ufffde");
    assertThat(page.chars()).noneMatch(it -> Character.isISOControl(it) && it != '\n');
  }

  @Test
  void longNotesAreThereInFullButFolded() {
    String note = "word ".repeat(2_000) + "end";
    String page = SamplePages.written(SamplePages.pictured(study(note)));
    assertThat(page).contains("<details class=\"long\">").contains(note);
  }

  private static Results study(String text) {
    Results named = SampleResults.named(text, text, text + " 2", text + " 3");
    Row settings =
        Row.at(Place.of("study.csv"))
            .put(Settings.TITLE, text)
            .put(Settings.QUESTION, text)
            .build();
    Results noted =
        Altered.rows(
            Altered.settings(named, settings),
            row ->
                Row.at(row.place())
                    .put(RunsSheet.RUN, "r")
                    .put(RunsSheet.NOTES, text)
                    .put(RunsSheet.FUEL, text)
                    .build());
    return Altered.findings(
        noted,
        List.of(
            Finding.error(Place.of(text, 1, text), text, text)
                .mendedBy(SheetRow.of("sensors.csv", Map.of("column", text)))));
  }
}
