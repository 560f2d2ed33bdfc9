package fairboil.analysis;

import fairboil.ingest.finding.Template;

/** What is said of a study as a whole: its parts, as they end "the program failed at …". */
final class StudySays {

  static final Template LOG = Template.of("the log of run {name}");

  static final Template RUN = Template.of("run {name}");

  static final Template BALANCES = Template.of("the heat balances of all runs");

  static final Template HOLES = Template.of("the positions of all holes");

  static final Template EFFECTS = Template.of("the effects of the holes");

  static final Template CLAIMS = Template.of("all claims");

  static final Template COMPARISONS = Template.of("all comparisons");

  static final Template SCATTER = Template.of("the scatter of runs and builds");

  static final Template PROTOCOL = Template.of("whether runs kept to the protocol");

  static final Template SAME_LOGS = Template.of("the search for logs that are the same");

  static final Template BUILDS = Template.of("the means of builds");

  static final Template FAIRNESS = Template.of("whether the comparisons are fair");

  static final Template RESULTS_COUNTED =
      Template.of("the results as they would be with the excluded runs");

  static final Template RESULTS_WITHIN =
      Template.of("the results as they would be within protocol");

  static final Template COUNTED = Template.of("{clause} as they would be with the excluded runs");

  static final Template WITHIN = Template.of("{clause} as they would be within protocol");

  static final Template ODD_CONFIDENCE =
      Template.of("a confidence must be between {share} and {number} %, so {share} was used");

  static final Template TYPE_CONFIDENCE = Template.of("type {share}, or leave it out");

  private StudySays() {}
}
