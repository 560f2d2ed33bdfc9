package fairboil.reports.words;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.analysis.run.Inclusion;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.finding.Template;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WordsTest {

  /** Points of caution of the trade (common practice, no source): not one may be lost. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Outdoors only, on bare ground, away from buildings",
        "Never in a garage, tent, porch or doorway",
        "not even with the door open",
        "carbon monoxide",
        "glowing char after the flame goes out",
        "Nothing here measures carbon monoxide or smoke",
        "No result here says that a stove is safe",
        "galvanised",
        "aerosol",
        "closed containers",
        "painted, printed or lined",
        "stand upwind; do not count them",
        "Light from the top with solid tinder",
        "Never add liquid fuel to a lit or hot stove",
        "alcohol flame cannot be seen",
        "only when cold",
        "lidded metal tin",
        "outdoors overnight",
        "Never weigh glowing char",
        "unattended in an oven or microwave",
        "Lid loose, never clamped round a probe",
        "gripper",
        "pot stand with cold water first",
        "Tie the probe leads down",
        "Water and sand at hand",
        "fire bans",
        "gloves when handling, off when drilling",
        "over a wooden block",
        "can clamped",
        "eye protection",
        "deburr",
        "Holes drilled wrong on purpose",
        "scrap them after",
        "local fire and safety rules",
        "qualified person"
      })
  void noPointOfCautionIsLost(String point) {
    String all =
        Cautions.RULE
            + String.join(" ", Cautions.POINTS.stream().map(Cautions.Caution::text).toList());
    assertThat(all).contains(point);
  }

  @Test
  void equalFindingsAreToldOnce() {
    List<Finding> findings =
        Stream.concat(
                IntStream.rangeClosed(1, 500)
                    .mapToObj(i -> Finding.note(Place.of("log.csv", i), "no time", "")),
                Stream.of(Finding.error(Place.of("runs.csv", 2), "no unit", "add one")))
            .sorted()
            .toList();
    List<FindingGroup> groups = FindingGroup.of(findings);
    assertThat(groups).hasSize(2);
    assertThat(groups.get(0).severity()).isEqualTo(Severity.ERROR);
    assertThat(groups.get(1).places()).hasSize(500);
    assertThat(FindingGroup.counts(findings)).isEqualTo("1 error and 500 notes");
    assertThat(FindingGroup.counts(List.of())).isEqualTo("no findings");
  }

  private static final Template SPIKES = Template.of("{count|lone spike} were set aside");

  @Test
  void findingsThatDifferOnlyInTheirCountAreAlike() {
    List<Finding> findings =
        Stream.of(13, 5)
            .map(spikes -> SPIKES.with(Argument.count(spikes)))
            .map(problem -> Finding.note(Place.of("log.csv"), problem, Message.NONE))
            .toList();
    assertThat(FindingGroup.of(findings))
        .singleElement()
        .satisfies(
            it ->
                assertThat(it.problem().toString())
                    .isEqualTo("5 to 13 lone spikes were set aside"));
    List<Finding> runs =
        Stream.of("run 13 has no log", "run 5 has no log")
            .map(problem -> Finding.note(Place.of("runs.csv"), problem, ""))
            .toList();
    assertThat(FindingGroup.of(runs)).hasSize(2);
  }

  @Test
  void reasonsForLeavingOutAreAsTheSheetGivesThem() {
    Inclusion peak =
        new Inclusion(
            Optional.empty(), Optional.of(Inclusion.asWritten("probe slipped")), Optional.empty());
    assertThat(RunWords.exclusion(peak, Display.in(DisplayUnits.METRIC)))
        .contains("peak: probe slipped");
    assertThat(RunWords.counts(peak)).isEqualTo("peak left out");
    Inclusion whole =
        new Inclusion(
            Optional.of(Inclusion.asWritten("pot fell")),
            Optional.of(Inclusion.asWritten("probe slipped")),
            Optional.empty());
    assertThat(RunWords.exclusion(whole, Display.in(DisplayUnits.METRIC))).contains("pot fell");
    Inclusion none = new Inclusion(Optional.empty(), Optional.empty(), Optional.empty());
    assertThat(RunWords.exclusion(none, Display.in(DisplayUnits.METRIC))).isEmpty();
  }

  /** Unicode Standard Annex 9: U+202E turns what follows; U+2068 and U+2069 isolate. */
  @Test
  void namesDoNotTurnTheSentenceAround() {
    assertThat(Names.inSentence("T1")).isEqualTo("T1");
    assertThat(Names.inSentence("a\u202eb\nc\u2069d")).isEqualTo("ab cd");
    assertThat(Names.inSentence("\u05d0\u05d1")).isEqualTo("\u2068\u05d0\u05d1\u2069");
  }

  @Test
  void countsAndLists() {
    assertThat(Plural.of(1, "run")).isEqualTo("1 run");
    assertThat(Plural.of(0, "run")).isEqualTo("0 runs");
    assertThat(Plural.list(List.of())).isEmpty();
    assertThat(Plural.list(List.of("a"))).isEqualTo("a");
    assertThat(Plural.list(List.of("a", "b", "c"))).isEqualTo("a, b and c");
    assertThat(Plural.sentence("élan")).isEqualTo("Élan");
  }
}
