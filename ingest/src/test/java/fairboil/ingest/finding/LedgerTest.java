package fairboil.ingest.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class LedgerTest {

  private enum Reason {
    BLANK,
    RAGGED
  }

  @Test
  void balances() {
    Ledger<Reason> ledger = new Ledger<>(10, 7, Map.of(Reason.BLANK, 1L, Reason.RAGGED, 2L));
    assertThat(ledger.setAside(Reason.RAGGED)).isEqualTo(2);
    assertThat(ledger.setAside().keySet()).containsExactly(Reason.BLANK, Reason.RAGGED);
  }

  @Test
  void refusesToLoseARow() {
    assertThatThrownBy(() -> new Ledger<>(10, 7, Map.of(Reason.BLANK, 2L)))
        .hasMessageContaining("does not balance");
  }

  @Test
  void refusesToHideALossBehindANegativeCount() {
    assertThatThrownBy(() -> new Ledger<>(10, 9, Map.of(Reason.BLANK, 2L, Reason.RAGGED, -1L)))
        .hasMessageContaining("below 0");
  }

  @Test
  void leavesOutReasonsWithoutAnyAndCopies() {
    Map<Reason, Long> counts = new EnumMap<>(Reason.class);
    counts.put(Reason.BLANK, 0L);
    Ledger<Reason> ledger = new Ledger<>(3, 3, counts);
    counts.put(Reason.BLANK, 5L);
    assertThat(ledger.setAside()).isEmpty();
    assertThat(ledger.setAside(Reason.BLANK)).isZero();
  }
}
