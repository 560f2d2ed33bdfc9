package fairboil.analysis.effect;

import fairboil.ingest.finding.Template;

/** What is said of a hole effect that cannot be seen, or not apart from something else. */
final class EffectSays {

  static final Template NO_HOLES =
      Template.of(
          "no hole positions could be judged, so nothing is said about whether hole position"
              + " matters");

  static final Template MEASURE_HOLES =
      Template.of("measure the holes of each build and type them in {sheet} and {sheet}");

  static final Template NO_SUCH_RING =
      Template.of("no holes of ring {name} could be judged, so there is no hole effect");

  static final Template CORRECT_RING = Template.of("correct the name, or measure its holes");

  static final Template SEVERAL_RINGS =
      Template.of(
          "{count|ring is|rings are} tested for a hole effect ({list}), so each interval is made"
              + " wider, one of {number} %: only so can they all be trusted together");

  static final Template NAME_A_RING =
      Template.of(
          "to test one ring alone, name it as {word} in {sheet}, before you look at the results");

  static final Template WARMER =
      Template.of(
          "builds with larger hole errors were burnt in warmer air (ring {name}, correlation"
              + " {number})");

  static final Template COLDER =
      Template.of(
          "builds with larger hole errors were burnt in colder air (ring {name}, correlation"
              + " {number})");

  static final Template SAME_DAYS =
      Template.of("burn good and bad stoves on the same days, in random order");

  static final Template WRONG_TOGETHER =
      Template.of(
          "hole position and open area went wrong together (ring {name}, correlation {number})");

  static final Template OFF_IN_ONE =
      Template.of(
          "their effects cannot be separated here; drill stoves that are off in one of them only");

  static final Template NO_BUILD =
      Template.of(
          "no build has both hole positions in ring {name} and a {word}: nothing to draw a line"
              + " through");

  static final Template ONE_BUILD =
      Template.of(
          "1 build has both hole positions in ring {name} and a {word}: no line through 1 point can"
              + " be drawn");

  static final Template TWO_BUILDS =
      Template.of(
          "2 builds have both hole positions in ring {name} and a {word}: no line through 2 points"
              + " can be tested");

  static final Template LOG_THE_FLAME =
      Template.of("log the flame and measure the holes of at least {count|build}");

  static final Template TIME_THE_BOIL =
      Template.of("time the boil and measure the holes of at least {count|build}");

  static final Template MORE_BUILDS = Template.of("drill and burn at least {count|more build}");

  static final Template SAME_ERRORS =
      Template.of(
          "all builds have the same hole error in ring {name}, so its effect cannot be seen");

  static final Template DRILL_BETTER_AND_WORSE =
      Template.of("drill some stoves better and some worse");

  static final Template SAME_RESPONSE =
      Template.of("all burns have the same {word}, so an effect on it cannot be seen");

  static final Template READ_MORE_FINELY =
      Template.of("read it more finely: a stopwatch to the second, a scale to the gram");

  static final Template EXACTLY_ON_THE_LINE =
      Template.of(
          "the mean {word} of the builds follows their hole error exactly, which measurements do"
              + " not");

  static final Template COPIED =
      Template.of("look whether figures were copied or worked out rather than measured");

  static final Template DESIGN_NOT_ALLOWED_FOR =
      Template.of(
          "the builds are of {count|design}, and design could not be allowed for in the hole effect:"
              + " there are too few builds, or their hole errors go with their design");

  static final Template BUILD_MORE_OF_EACH =
      Template.of(
          "build more stoves of each design, some drilled well and some badly; until then what"
              + " looks like a hole effect may be one of design");

  static final Template CANNOT_BE_TOLD_APART =
      Template.of(
          "{name} could not be allowed for: it does not differ, goes exactly with something else, or"
              + " there are too few builds");

  static final Template LEAVE_OUT =
      Template.of("leave it out of {word} in {sheet}, or test more builds");

  static final Template NOT_A_NUMBER =
      Template.of("{name} could not be allowed for: it is not a number in every run");

  static final Template FILL_IN = Template.of("fill in its column, with a number for each run");

  private EffectSays() {}
}
