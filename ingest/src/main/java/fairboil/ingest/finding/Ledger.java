package fairboil.ingest.finding;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * An account of things read, so that nothing is lost silently: {@code read = used + set aside}, the
 * latter by reason. The balance is checked whenever a ledger is made.
 *
 * @param <R> the reasons for setting something aside
 * @param read how many there were, at least 0
 * @param used how many the results stand on, at least 0
 * @param setAside how many were set aside for each reason; reasons without any are left out;
 *     unmodifiable, in the order of the reasons
 */
public record Ledger<R extends Enum<R>>(long read, long used, Map<R, Long> setAside) {

  /**
   * Copies the counts and checks the balance.
   *
   * @throws IllegalArgumentException if a count is negative or the account does not balance
   */
  public Ledger {
    long aside = 0;
    for (long count : setAside.values()) {
      if (count < 0) {
        throw new IllegalArgumentException("a count below 0: " + count);
      }
      aside += count;
    }
    if (read < 0 || used < 0 || read != used + aside) {
      throw new IllegalArgumentException(
          "the account does not balance: "
              + read
              + " read, "
              + used
              + " used, "
              + aside
              + " aside");
    }
    setAside = withoutZeros(setAside);
  }

  private static <R extends Enum<R>> Map<R, Long> withoutZeros(Map<R, Long> counts) {
    EnumMap<R, Long> kept = null;
    for (Map.Entry<R, Long> entry : counts.entrySet()) {
      if (entry.getValue() > 0) {
        if (kept == null) {
          kept = new EnumMap<>(entry.getKey().getDeclaringClass());
        }
        kept.put(entry.getKey(), entry.getValue());
      }
    }
    return kept == null ? Map.of() : Collections.unmodifiableMap(kept);
  }

  /** How many were set aside for one reason; 0 if none. */
  public long setAside(R reason) {
    return setAside.getOrDefault(reason, 0L);
  }
}
