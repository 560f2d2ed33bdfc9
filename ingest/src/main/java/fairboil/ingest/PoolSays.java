package fairboil.ingest;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Argument.Joining;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import java.util.List;

/** What is said of studies that are read as one. */
final class PoolSays {

  private static final Template NOT_AS_ONE =
      Template.of("These studies cannot be read as one: {list}");

  static final Template AGREED_DIFFERENTLY =
      Template.of(
          "{place} and {place} agree on different things for {cell}: make the two rows the same,"
              + " or take one of them out");
  static final Template REFERENCE_POT =
      Template.of(
          "the reference pot {name} has another {word} in {place} than in {place}: make the two"
              + " the same, or empty reference pot so that each run keeps its own");
  static final Template TWO_POTS =
      Template.of(
          "pot {name} has another {word} here than in {place}, so the two were read as two pots,"
              + " each for the runs of its own study");
  static final Message NAME_POTS = Template.of("give different pots different names").with();
  static final Template TWO_SITES =
      Template.of("another study has a site called {name} too; the two were read as two sites");
  static final Message NAME_SITES =
      Template.of("give each site its own name, or keep the runs of one site in one study").with();

  static final Template UNREAD_SETTING = Template.of("{place}: {clause}; {clause}");
  static final Template SET_DIFFERENTLY =
      Template.of(
          "{word} is {cell} in {place} but {cell} in {place}: make the two the same, or empty one"
              + " of them");
  static final Template SET_IN_SOME =
      Template.of("{word} is set in {list} only; it was used for all studies");
  static final Template TOOK_FIRST =
      Template.of("{word} differs from that in {name} ({cell}), which was used for all");
  static final Template ALL_USED =
      Template.of("{word} differs between the studies; all that they name was used");
  static final Template AS_IT_CAME =
      Template.of("{word} is not the same in all studies, so “as it came” was used");
  static final Template WRITE_THE_SAME = Template.of("write the same in each {sheet}");

  static final Template SHARED_ELSEWHERE =
      Template.of(
          "build {name} is marked as shared in {list} but not here, so it was read as another"
              + " stove");
  static final Message MARK_IT =
      Template.of("write yes here if it is the stove that was sent round").with();
  static final Template NAMED_ALIKE =
      Template.of(
          "a build is called {name} in {list} and none marks it as shared, so each was read as a"
              + " stove of its own");
  static final Template MARK_EACH =
      Template.of("write yes in the column shared of each {sheet} if one stove was sent round");
  static final Template OTHER_DESIGN =
      Template.of(
          "shared stove {name} is of design {cell} here but {cell} in {name}, which was used");
  static final Template SAME_DESIGN = Template.of("write the same design in each {sheet}");
  static final Template OTHER_RING =
      Template.of(
          "ring {name} of shared stove {name} is not described as in {name}, whose rings were used"
              + " for it");
  static final Template SAME_ROWS = Template.of("make the rows of {sheet} the same");
  static final Template MEASURED_AGAIN =
      Template.of(
          "the holes of shared stove {name} were measured here too; those measured in {name} were"
              + " used");

  private PoolSays() {}

  /** That studies cannot be read as one, for those reasons. */
  static StudyException notAsOne(List<Message> reasons) {
    List<Argument> clauses = reasons.stream().map(Argument::clause).toList();
    return new StudyException(NOT_AS_ONE.with(new Argument.Listed(clauses, Joining.SEMICOLON)));
  }
}
