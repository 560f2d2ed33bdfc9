package fairboil.analysis.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Template;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class FaultsTest {

  private static final Place PLACE = Place.of("runs.csv", 3);

  private static String broken(String message) {
    throw new IllegalStateException(message, new NullPointerException("the cause"));
  }

  private static Fault fault(String message) {
    return Faults.attempt("run A", PLACE, () -> broken(message)).fault().orElseThrow();
  }

  @Test
  void whatGoesWellIsHandedOn() {
    Faults faults = new Faults();
    assertThat(faults.contain("run A", PLACE, () -> 5)).contains(5);
    assertThat(faults.isDone("run A", PLACE, () -> {})).isTrue();
    assertThat(faults.all()).isEmpty();
  }

  private static String part(Fault fault) {
    return fault.part().toString();
  }

  @Test
  void whatNobodyForesawCostsThePart() {
    Faults faults = new Faults();
    Optional<String> lost = faults.contain("run A", PLACE, () -> broken("no"));
    assertThat(lost).isEmpty();
    assertThat(faults.all()).extracting(FaultsTest::part).containsExactly("run A");
    assertThat(faults.all().get(0).finding().toString())
        .startsWith("runs.csv, line 3: error: this program failed at run A, so that is left out.");
  }

  private static int endless(int depth) {
    return depth < 0 ? 0 : endless(depth + 1) + 1;
  }

  @Test
  void workThatCallsItselfWithoutEndIsContained() {
    assertThat(Faults.attempt("run A", PLACE, () -> endless(0)).fault()).isPresent();
  }

  @Test
  void whatIsForeseenPassesThrough() {
    assertThatThrownBy(
            () ->
                Faults.attempt(
                    "run A",
                    PLACE,
                    () -> {
                      throw new IOException("the disk is full");
                    }))
        .isInstanceOf(IOException.class);
    assertThatThrownBy(
            () ->
                Faults.attempt(
                    "run A",
                    PLACE,
                    () -> {
                      throw new OutOfMemoryError();
                    }))
        .isInstanceOf(OutOfMemoryError.class);
  }

  @Test
  void aTraceEndsWherePartsBeginAndNamesTheCause() {
    List<String> lines = fault("no").trace().lines().toList();
    assertThat(lines.get(0)).isEqualTo("java.lang.IllegalStateException: no");
    assertThat(lines.get(1)).startsWith("  at fairboil.analysis.fault.FaultsTest.broken:");
    assertThat(lines).contains("caused by java.lang.NullPointerException: the cause");
    assertThat(lines).noneMatch(line -> line.contains("org.junit"));
  }

  @Test
  void aTraceHoldsNoPathAndNoAddressOfMemory() {
    assertThat(fault("in /home/ann/stoves/a.csv of Log@1b2c3d4f\nhere").trace())
        .startsWith("java.lang.IllegalStateException: in … of Log here\n");
    assertThat(fault("C:\\Users\\Ann Smith\\a.csv").trace()).doesNotContain("Ann", "Smith");
  }

  @Test
  void theSameFaultIsToldOnce() {
    Faults faults = new Faults();
    faults.addAll(List.of(fault("no")));
    faults.addAll(List.of(fault("no")));
    faults.addAll(List.of(fault("no")), Template.of("{clause} with others"));
    assertThat(faults.all())
        .extracting(FaultsTest::part)
        .containsExactly("run A", "run A with others");
  }
}
