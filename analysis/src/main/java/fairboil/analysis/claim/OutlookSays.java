package fairboil.analysis.claim;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;

/** What is said of how many more burns, or builds, would settle a claim. */
final class OutlookSays {

  static final Template NO_NUMBER =
      Template.of("with this sensor no number of {clause} would settle it");

  static final Template MORE_THAN =
      Template.of("more than {count} such {clause} would be needed to settle it");

  static final Template ABOUT =
      Template.of(
          "about {count} such {clause} would be needed to settle it four times in five, if {clause}"
              + " as found here");

  /** What is counted, in the plural. */
  static final Message BURNS = Template.of("burns").with();

  static final Message BURNS_OF_THAT_STOVE = Template.of("burns of that stove").with();

  static final Message BURNS_OF_THE_TWO = Template.of("burns of these two stoves together").with();

  static final Message BURNT_BOTH_WAYS = Template.of("builds burnt both ways").with();

  static final Template BOTH_SIDES = Template.of("{clause}, both sides together,");

  private static final Message OF_ONE_BURN = Template.of("builds of 1 burn each").with();

  private static final Template OF_BURNS = Template.of("builds of {number} burns each");

  /** What is taken to be as found. */
  static final Message MEAN_IS = Template.of("the true mean is").with();

  static final Message DIFFERENCE_IS = Template.of("the true difference is").with();

  static final Message SLOPE_IS = Template.of("the true slope is").with();

  static final Message SHARE_IS = Template.of("the true share is").with();

  static final Message SCATTER_IS = Template.of("scatter is").with();

  private OutlookSays() {}

  /** Builds with as many burns each as there are on average, such as {@code builds of 4 burns}. */
  static Message builds(int burns, int builds) {
    long tenths = Math.round(10.0 * burns / builds);
    return tenths == 10
        ? OF_ONE_BURN
        : OF_BURNS.with(Argument.number(tenths / 10.0, tenths % 10 == 0 ? 0 : 1));
  }
}
