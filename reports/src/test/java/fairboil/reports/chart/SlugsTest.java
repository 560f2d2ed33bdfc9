package fairboil.reports.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class SlugsTest {

  @Test
  void namesBecomeLowerCaseWordsJoinedByHyphens() {
    assertThat(Slugs.of(List.of("run T1-2", "Crème brûlée №2", "../../x", " a__b ")))
        .containsExactly("run-t1-2", "creme-brulee-no2", "x", "a-b");
  }

  @Test
  void namesThatDifferOnlyInCaseOrMarksAreNumbered() {
    assertThat(Slugs.of(List.of("A", "a", "a-2", "Å"))).containsExactly("a", "a-2", "a-2-2", "a-3");
  }

  /** The names that Windows keeps for devices: Microsoft Learn, "Naming Files, Paths". */
  @Test
  void namesOfDevicesAreNeverUsed() {
    assertThat(Slugs.of(List.of("CON", "nul", "COM1", "LPT9", "console")))
        .containsExactly("x-con", "x-nul", "x-com1", "x-lpt9", "console");
  }

  @Test
  void namesWithoutALetterAreStillNamed() {
    assertThat(Slugs.of(List.of("火", "🔥🔥", "")))
        .containsExactly("unnamed", "unnamed-2", "unnamed-3");
  }

  @Property(tries = 200)
  void anyNamesGiveSafeAndDifferentSlugs(@ForAll List<String> names) {
    List<String> slugs = Slugs.of(names);

    assertThat(slugs).hasSameSizeAs(names).doesNotHaveDuplicates();
    assertThat(slugs).allMatch(slug -> slug.matches("[a-z0-9](?:[a-z0-9-]{0,78}[a-z0-9])?"));
    assertThat(slugs).allMatch(slug -> slug.equals(slug.toLowerCase(Locale.ROOT)));
  }

  @Test
  void longNamesAreCutYetStayDifferent() {
    List<String> slugs = Slugs.of(List.of("x".repeat(5000), "x".repeat(5001)));

    assertThat(slugs.get(0)).hasSize(Slugs.LONGEST);
    assertThat(slugs.get(1)).hasSize(Slugs.LONGEST).endsWith("-2");
  }
}
