package fairboil.ingest.log;

import fairboil.ingest.finding.Ledger;
import java.util.EnumMap;
import java.util.Map;

/** Counts what became of the rows of a log. For one thread. */
final class Tally {

  private final Map<RowFate, Long> counts = new EnumMap<>(RowFate.class);
  private final Map<RowFate, Integer> firstLines = new EnumMap<>(RowFate.class);
  private long read;

  /** A line was read, whatever becomes of it. */
  void read() {
    read++;
  }

  /** A line was set aside. */
  void setAside(RowFate fate, int line) {
    setAside(fate, line, 1);
  }

  /** Several lines were set aside, the first of them given. */
  void setAside(RowFate fate, int line, long count) {
    if (count > 0) {
      counts.merge(fate, count, Long::sum);
      firstLines.merge(fate, line, Math::min);
    }
  }

  long count(RowFate fate) {
    return counts.getOrDefault(fate, 0L);
  }

  /** The first line set aside for the reason; 0 if none was. */
  int firstLine(RowFate fate) {
    return firstLines.getOrDefault(fate, 0);
  }

  /** The account, in which the readings used must make up for all that was not set aside. */
  Ledger<RowFate> ledger(long used) {
    return new Ledger<>(read, used, counts);
  }
}
