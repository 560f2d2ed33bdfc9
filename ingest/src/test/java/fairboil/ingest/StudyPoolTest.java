package fairboil.ingest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairboil.ingest.finding.Finding;
import fairboil.ingest.log.OpenedLog;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StudyPoolTest {

  private static final String RUNS = "run,build,ambient (°C),pot\n1,K1,20,billy\n2,K2,21,billy\n";
  private static final String LOG = "time (s),flame (°C)\n0,20\n1,%s\n2,500\n3,500\n";

  @TempDir Path temp;

  private void write(String name, String text) throws IOException {
    Path file = temp.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private Study read(String... folders) throws StudyException {
    return open(folders).study();
  }

  private OpenedStudy open(String... folders) throws StudyException {
    return StudyPool.open(List.of(folders).stream().map(temp::resolve).toList());
  }

  private static List<String> said(Study study) {
    return study.findings().stream().map(Finding::toString).toList();
  }

  private void twoGroups() throws IOException {
    for (String group : List.of("north", "south")) {
      write(group + "/runs.csv", RUNS);
      write(group + "/builds.csv", "build,design,shared\nK1,D,yes\nK2,D,no\n");
      write(group + "/pots.csv", "pot,mass (g),material\nbilly,200,steel\n");
    }
  }

  @Test
  void stovesMarkedAsSharedAreOneAndOthersAreNot() throws Exception {
    twoGroups();
    Study study = read("north", "south");
    assertThat(study.builds())
        .extracting(build -> build.key())
        .containsExactly(
            new Key("north", "K1"), new Key("north", "north K2"), new Key("south", "south K2"));
    assertThat(study.runs())
        .extracting(run -> run.key() + " of " + run.build())
        .containsExactly(
            "north 1 of K1", "north 2 of north K2", "south 1 of K1", "south 2 of south K2");
    assertThat(study.folders()).containsExactly("north", "south");
  }

  @Test
  void theOrderGivenDoesNotMatter() throws Exception {
    twoGroups();
    assertThat(StudyText.of(read("south", "north")))
        .isEqualTo(StudyText.of(read("north", "south")));
  }

  @Test
  void aRunsSiteIsThatOfItsRowElseItsFolder() throws Exception {
    write("north/runs.csv", "run,build,site\n1,K1,Torvik\n2,K1,\n");
    write("south/runs.csv", "run,build\n3,K1\n");
    assertThat(read("north", "south").runs())
        .extracting(run -> run.row().get(RunsSheet.SITE))
        .containsExactly("Torvik", "north", "south");
  }

  @Test
  void sitesOfOneNameInTwoFoldersAreTwo() throws Exception {
    write("north/runs.csv", "run,build,site\n1,K1,shed\n");
    write("south/runs.csv", "run,build,site\n2,K1,shed\n");
    Study study = read("north", "south");
    assertThat(study.runs())
        .extracting(run -> run.row().get(RunsSheet.SITE))
        .containsExactly("north shed", "south shed");
    assertThat(said(study))
        .anyMatch(text -> text.startsWith("south/runs.csv, line 2, column site: note: another"));
  }

  /** Bead 1 of one group is not bead 1 of another: their errors are not alike. */
  @Test
  void sensorsOfOneNameInTwoFoldersAreTwo() throws Exception {
    twoGroups();
    for (String group : List.of("north", "south")) {
      write(
          group + "/sensors.csv",
          "column,role,sensor,type\nflame (°C),flame,bead 1,K\nwall (°C),other,bead 1,K\n");
    }
    assertThat(read("north", "south").sensors())
        .extracting(sensor -> sensor.id().orElseThrow())
        .containsExactly(
            new Key("north", "bead 1"),
            new Key("north", "bead 1"),
            new Key("south", "bead 1"),
            new Key("south", "bead 1"));
  }

  @Test
  void findingsNameTheFolder() throws Exception {
    twoGroups();
    write("south/runs.csv", RUNS + "3,K1,warm,billy\n");
    assertThat(said(read("north", "south")))
        .anyMatch(text -> text.startsWith("south/runs.csv, line 4, column ambient (°C): error"));
  }

  @Test
  void eachLogIsOpenedInItsOwnFolder() throws Exception {
    twoGroups();
    write("north/logs/1.csv", LOG.formatted("600"));
    write("south/logs/1.csv", LOG.formatted("700"));
    OpenedStudy opened = open("north", "south");
    OpenedLog south = opened.logs().open(opened.study().runs().get(2));
    assertThat(south.source().orElseThrow().name()).isEqualTo("south/logs/1.csv");
    assertThat(south.log().orElseThrow().channels().get(0).values().get(1)).isEqualTo(700.0);
  }

  @Test
  void foldersOfOneNameAreToldApartByTheirPaths() throws Exception {
    write("a/study/runs.csv", RUNS);
    write("b/study/runs.csv", RUNS);
    assertThat(read("a/study", "b/study").folders()).containsExactly("a/study", "b/study");
  }

  @Test
  void aFolderGivenTwiceIsRefused() throws Exception {
    twoGroups();
    assertThatThrownBy(() -> read("north", "south/../north"))
        .isInstanceOf(StudyException.class)
        .hasMessageContainingAll("twice", "counts double");
  }

  @Test
  void referencesThatDifferAreRefusedWithBothCells() throws Exception {
    twoGroups();
    write("north/study.csv", "setting,value\nreference water,1 kg\n");
    write("south/study.csv", "setting,value\n\nreference water,1.2 kg\n");
    assertThatThrownBy(() -> read("north", "south"))
        .isInstanceOf(StudyException.class)
        .hasMessageContainingAll(
            "reference water is “1 kg” in north/study.csv, line 2",
            "“1.2 kg” in south/study.csv, line 3",
            "make the two the same, or empty one");
  }

  /** What one group wrote is not made good by what another did. */
  @Test
  void aReferenceThatCannotBeReadIsRefusedBesideOneThatCan() throws Exception {
    twoGroups();
    write("north/study.csv", "setting,value\nreference water,1 kg\n");
    write("south/study.csv", "setting,value\nreference water,a pot full\n");
    assertThatThrownBy(() -> read("north", "south"))
        .isInstanceOf(StudyException.class)
        .hasMessageContainingAll("south/study.csv, line 2", "reference water: “a pot full”");
  }

  @Test
  void theSameInOtherUnitsIsTheSame() throws Exception {
    twoGroups();
    write("north/study.csv", "setting,value\nreference water,1 kg\nreference start,68 °F\n");
    write("south/study.csv", "setting,value\nreference water,1000 g\nreference start,20 °C\n");
    assertThat(read("north", "south").settings().get(Settings.REFERENCE_WATER).value())
        .isEqualTo(1.0);
  }

  @Test
  void whatOneStudySetsHoldsForAllAndIsSaid() throws Exception {
    twoGroups();
    write("south/study.csv", "setting,value\npeak hold,20 s\n");
    Study study = read("north", "south");
    assertThat(study.settings().get(Settings.PEAK_HOLD).value()).isEqualTo(20);
    assertThat(said(study))
        .anyMatch(text -> text.contains("peak hold is set in south only; it was used for all"));
  }

  @Test
  void whatIsToldOfAPlaceStaysThere() throws Exception {
    twoGroups();
    write("north/study.csv", "setting,value\naltitude,100 m\nstopwatch started at,lit\n");
    write("south/study.csv", "setting,value\naltitude,900 m\nstopwatch started at,pot on\n");
    Study study = read("north", "south");
    assertThat(study.settings().value(Settings.ALTITUDE)).isEmpty();
    assertThat(study.settingsOf(study.runs().get(2).key()).get(Settings.ALTITUDE).value())
        .isEqualTo(900);
    assertThat(study.settingsOf(study.runs().get(0).key()).get(Settings.ALTITUDE).value())
        .isEqualTo(100);
  }

  @Test
  void potsOfOneNameThatDifferAreTwoPots() throws Exception {
    twoGroups();
    write("south/pots.csv", "pot,mass (g),material\nbilly,310,steel\n");
    Study study = read("north", "south");
    assertThat(study.pots()).hasSize(2);
    assertThat(said(study))
        .anyMatch(text -> text.contains("pot billy has another mass here than in north/pots.csv"));
  }

  @Test
  void aReferencePotMustBeOnePot() throws Exception {
    twoGroups();
    write("north/study.csv", "setting,value\nreference pot,billy\n");
    assertThat(read("north", "south").pot(new Key("south", "billy"))).isPresent();
    write("south/pots.csv", "pot,mass (g),material\nbilly,310,steel\n");
    assertThatThrownBy(() -> read("north", "south"))
        .hasMessageContainingAll("reference pot billy has another mass", "south/pots.csv, line 2");
  }

  @Test
  void alikeClaimsAndProtocolsAreOne() throws Exception {
    twoGroups();
    String claims =
        "claim,text,measure,about,relation,value\nC1,It boils.,boil time,%s,at most,9 min\n";
    write("north/claims.csv", claims.formatted("D"));
    write("south/claims.csv", claims.formatted("D"));
    write("north/protocol.csv", "column,low,high\nwater,950 g,1050 g\n");
    write("south/protocol.csv", "column,low,high\nwater,950 g,1050 g\n");
    Study study = read("north", "south");
    assertThat(study.claims()).extracting(claim -> claim.key().name()).containsExactly("C1");
    assertThat(study.protocol()).hasSize(1);
    write("north/claims.csv", claims.formatted("K2"));
    write("south/claims.csv", claims.formatted("K2"));
    assertThat(read("north", "south").claims())
        .extracting(claim -> claim.key().name())
        .containsExactly("north C1", "south C1");
  }

  @Test
  void agreementsThatDifferAreRefused() throws Exception {
    twoGroups();
    write("north/protocol.csv", "column,low,high\nwater,950 g,1050 g\n");
    write("south/protocol.csv", "column,low,high\nwater,900 g,1050 g\n");
    assertThatThrownBy(() -> read("north", "south"))
        .hasMessageContainingAll(
            "north/protocol.csv, line 2", "south/protocol.csv, line 2", "water");
  }

  @Test
  void aStoveMarkedInOneFolderOnlyIsWarnedOf() throws Exception {
    twoGroups();
    write("west/runs.csv", RUNS);
    write("west/builds.csv", "build,design\nK1,D\nK2,D\n");
    Study study = read("north", "south", "west");
    assertThat(study.build(new Key("west", "west K1"))).isPresent();
    assertThat(said(study))
        .anyMatch(
            text ->
                text.startsWith("west/builds.csv, line 2")
                    && text.contains("marked as shared in north and south but not here"));
  }

  @Test
  void holesOfASharedStoveMeasuredTwiceAreUsedOnce() throws Exception {
    twoGroups();
    for (String group : List.of("north", "south")) {
      write(group + "/rings.csv", "ring,holes,wrap (mm),height (mm)\nupper,2,300,10\n");
      write(
          group + "/holes.csv",
          "build,ring,hole,along (mm)\nK1,upper,1,0\nK1,upper,2,150\nK2,upper,1,3\n");
    }
    Study study = read("north", "south");
    assertThat(study.holes())
        .extracting(hole -> hole.build().name())
        .containsExactly("K1", "K1", "north K2", "south K2");
    assertThat(study.rings()).hasSize(2);
    assertThat(said(study))
        .anyMatch(text -> text.startsWith("south/holes.csv, line 2: note: the holes of shared"));
  }
}
