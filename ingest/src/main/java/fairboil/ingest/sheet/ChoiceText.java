package fairboil.ingest.sheet;

import fairboil.ingest.choice.Choice;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.quantity.Reading;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads one of a fixed set of answers: its label, or one of a few other words that can mean nothing
 * else.
 *
 * @param <E> the set
 */
final class ChoiceText<E extends Enum<E> & Choice> {

  private final Map<String, E> choices = new HashMap<>();
  private final List<String> labels;

  ChoiceText(Class<E> type) {
    for (E choice : type.getEnumConstants()) {
      choices.put(Words.key(choice.label()), choice);
      OtherWords.of(choice).forEach(word -> choices.putIfAbsent(Words.key(word), choice));
    }
    labels = Arrays.stream(type.getEnumConstants()).map(Choice::label).toList();
  }

  Reading<E> read(String text) {
    E choice = choices.get(Words.key(text));
    if (choice != null) {
      return Reading.Read.of(choice);
    }
    return Reading.isNothing(text)
        ? new Reading.Missing<>()
        : new Reading.Refused<>(
            CellSays.NO_ANSWER.with(Argument.cell(text)),
            CellSays.TYPE_ANSWER.with(Argument.words(labels)));
  }
}
