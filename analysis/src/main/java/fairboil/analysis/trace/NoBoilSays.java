package fairboil.analysis.trace;

import fairboil.ingest.finding.Template;

/** Why a water trace shows no boil. */
final class NoBoilSays {

  static final Template FEW_READINGS =
      Template.of("there are only {count|water reading} while the pot was on");

  static final Template FEW_BEFORE_FALL =
      Template.of("there are too few readings before the water fell");

  static final Template FELL =
      Template.of("the water fell by {value} before it boiled: it was changed, or the probe moved");

  static final Template BROKEN = Template.of("the water trace has no unbroken stretch of {value}");

  static final Template HELD_TOO_SHORT =
      Template.of("the hottest water held for less than {value}");

  static final Template OTHER_LEVEL =
      Template.of("the highest level of the water was {value}, and its boiling point was {value}");

  static final Template LEVELLED_OFF =
      Template.of("the water levelled off slowly at {value} instead of boiling");

  static final Template STARTS_HOT =
      Template.of("the record starts with the water less than {value} below its plateau");

  static final Template FEW_IN_LINE =
      Template.of(
          "only {count|reading lies|readings lie} in the last {value} before the plateau, and {count} are"
              + " needed");

  static final Template GAP = Template.of("the log has a gap of {value} over the boil");

  private NoBoilSays() {}
}
