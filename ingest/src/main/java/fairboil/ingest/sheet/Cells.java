package fairboil.ingest.sheet;

import fairboil.ingest.choice.Choice;
import fairboil.ingest.quantity.Amount;
import fairboil.ingest.quantity.ClockTime;
import fairboil.ingest.quantity.Dimension;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.Reading;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** How the cells of each kind of column are read. */
final class Cells {

  private Cells() {}

  static CellReader<String> text() {
    return (text, unit) -> new Reading.Read<>(text, Optional.empty(), Optional.empty());
  }

  static CellReader<List<String>> texts() {
    return notYet();
  }

  static CellReader<Integer> whole() {
    return notYet();
  }

  static CellReader<List<Integer>> wholes() {
    return notYet();
  }

  static <E extends Enum<E> & Choice> CellReader<E> choice(Class<E> choices) {
    return notYet();
  }

  static CellReader<Quantity> quantity(List<Dimension> dimensions) {
    return notYet();
  }

  static CellReader<Amount> amount() {
    return notYet();
  }

  static CellReader<ClockTime> moment() {
    return notYet();
  }

  static CellReader<LocalDate> date() {
    return notYet();
  }

  static CellReader<PotGiven> pot() {
    return notYet();
  }

  static CellReader<Wind> wind() {
    return notYet();
  }

  static CellReader<Selection> selection() {
    return notYet();
  }

  private static <T> CellReader<T> notYet() {
    return (text, unit) -> {
      throw new UnsupportedOperationException("not written yet");
    };
  }
}
