package fairboil.ingest.finding;

import fairboil.ingest.finding.Template.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Something to be said to people, kept as a value: how it is worded and what it is about. Messages
 * are compared and grouped by their templates; only {@code fairboil.reports.words.Display} turns
 * them into words, in the units of the study.
 *
 * @param template the wording
 * @param arguments what stands in its places, in order; unmodifiable
 */
public record Message(Template template, List<Argument> arguments) {

  /** Nothing to be said. */
  public static final Message NONE = Template.of("").with();

  private static final Template AS_IT_IS = Template.of("{word}");

  /**
   * Checks that each place has an argument of its kind.
   *
   * @throws IllegalArgumentException if not
   */
  public Message {
    arguments = List.copyOf(arguments);
    int next = 0;
    for (Part part : template.parts()) {
      if (part instanceof Part.Slot slot) {
        if (next == arguments.size() || !slot.kind().fits(arguments.get(next))) {
          throw new IllegalArgumentException(
              "\"" + template + "\" wants " + template.kinds() + ", not " + arguments);
        }
        next++;
      }
    }
    if (next != arguments.size()) {
      throw new IllegalArgumentException(
          "\"" + template + "\" wants " + template.kinds() + ", not " + arguments);
    }
  }

  /** Words that are no template yet. TODO: goes once all are. */
  public static Message plain(String words) {
    return words.isEmpty() ? NONE : AS_IT_IS.with(Argument.word(words));
  }

  /** What it has in common with messages of other things: its wording, and that of its clauses. */
  public Object kind() {
    if (says(AS_IT_IS)) {
      return arguments.get(0).toString().replaceAll("\u201c[^\u201d]*\u201d|\\d+", "");
    }
    List<Object> wordings = new ArrayList<>(List.of(template));
    for (Argument argument : arguments) {
      if (argument instanceof Argument.Clause clause) {
        wordings.add(clause.message().kind());
      }
    }
    return wordings;
  }

  /** Whether it has that wording. */
  public boolean says(Template wording) {
    return template.equals(wording);
  }

  /** Whether nothing is said. */
  public boolean isEmpty() {
    return template.parts().isEmpty();
  }

  /** The same message with other arguments, also in lists and clauses within it. */
  public Message map(UnaryOperator<Argument> change) {
    return arguments.isEmpty()
        ? this
        : new Message(template, arguments.stream().map(each -> each.map(change)).toList());
  }

  /** The message in words, its numbers as that voice shows them. */
  public String text(Voice voice) {
    StringBuilder text = new StringBuilder();
    int next = 0;
    for (Part part : template.parts()) {
      if (part instanceof Part.Slot slot) {
        Argument argument = arguments.get(next++);
        text.append(argument.text(voice)).append(slot.noun(argument));
      } else {
        text.append(((Part.Text) part).text());
      }
    }
    return text.toString();
  }

  /**
   * The message for tests and traces, its numbers as they are held. People are shown what {@code
   * Display} makes of it.
   */
  @Override
  public String toString() {
    return text(Voice.RAW);
  }
}
