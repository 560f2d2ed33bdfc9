package fairboil.analysis.claim;

import fairboil.ingest.finding.Template;

/** What is said of claims: of their rows, and why one is not settled or cannot be tested. */
final class ClaimSays {

  /** What is lost where the program fails at a claim. */
  static final Template CLAIM = Template.of("claim {name}");

  static final Template FAILED =
      Template.of("this program failed at this claim; that says nothing of the claim itself");

  // why it cannot be tested, and what to type in its row

  static final Template NOT_MEASURED = Template.of("nothing here measures {name}");

  static final Template NO_SUCH_MEASURE = Template.of("there is no measure {name}");

  static final Template MEASURES = Template.of("type one of these in the column measure: {list}");

  static final Template LIKELY_MEASURE =
      Template.of("did you mean {word}? The measures are: {list}");

  static final Template UNREAD = Template.of("{cell} in its row could not be read");

  static final Template IT_HAS_NO_VALUE = Template.of("it has no value to test");

  static final Template NO_VALUE = Template.of("claim {name} has no value to test");

  static final Template TYPE_VALUE = Template.of("type one, with its unit, in the column value");

  static final Template IT_HAS_NO_MARGIN =
      Template.of("it has no margin, and nothing is ever exactly equal");

  static final Template NO_MARGIN =
      Template.of("claim {name} has no margin, and nothing is ever exactly equal");

  static final Template TYPE_MARGIN =
      Template.of(
          "in the column margin, type the difference that would not matter to you, with its unit");

  static final Template NOT_OF_KIND = Template.of("{cell} is not {word}");

  static final Template ITS_CELL_IS_NOT = Template.of("its {word} is not {word}");

  static final Template TYPE_WITH_UNIT = Template.of("type it with a unit, such as {list}");

  static final Template AGAINST_RUNS =
      Template.of("most runs are judged against a value, not against other runs");

  static final Template NO_RUN_IS = Template.of("no run that counts is one of {cell}");

  static final Template NOTHING_IS_CALLED = Template.of("no build and no design is called {name}");

  static final Template NO_COLUMN = Template.of("no column of runs or builds is called {name}");

  // what needs saying of the evidence

  /** Two clauses one after the other. */
  static final Template BOTH = Template.of("{clause}; {clause}");

  static final Template NO_SCATTER =
      Template.of(
          "the values do not scatter at all, so there is nothing to judge it by; measure more"
              + " finely");

  static final Template MORE_UNSEEN =
      Template.of("in {count|more run} nobody saw whether the water boiled");

  static final Template MORE_UNSEEN_ALLOWED_FOR =
      Template.of(
          "in {count|more run} nobody saw whether the water boiled, and the interval allows for"
              + " both");

  static final Template NO_RUN_COUNTS = Template.of("no run counts");

  static final Template NONE_SEEN =
      Template.of("in none of {count|run} was it seen whether the water boiled");

  static final Template NO_HOLE_EFFECT = Template.of("there is no hole effect to judge it by");

  static final Template EVEN_THAT = Template.of("even that mean is above the value claimed");

  static final Template ONE_STOVE =
      Template.of("only one build, so this is about that stove and not about others like it");

  static final Template TWO_STOVES =
      Template.of("one build of each, so this is about those two stoves alone");

  static final Template SINGLE_RUN = Template.of("a single run has no scatter to judge it by");

  static final Template SINGLE_RUN_ON_ONE_SIDE =
      Template.of("a single run on one side has no scatter to judge it by");

  static final Template NEVER_TWICE =
      Template.of("no build was burnt twice, so there is no scatter to judge by");

  static final Template TOO_SHORT =
      Template.of(
          "{count} of {count|run} did not boil, counted here as longer than any that did, so the"
              + " mean of the others is too short");

  static final Template NONE_KNOWN = Template.of("no run that counts has a known {word}");

  static final Template NO_MEAN =
      Template.of("in {count} of {count|run} the water did not boil, so there is no mean {word}");

  static final Template TWO_BUILDS =
      Template.of(
          "two builds say too little of most runs of others like them; it takes three at least");

  private ClaimSays() {}
}
