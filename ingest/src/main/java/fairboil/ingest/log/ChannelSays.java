package fairboil.ingest.log;

import fairboil.ingest.finding.Template;

/** How is told what is odd in a column of readings. */
final class ChannelSays {

  static final Template UNIT_CHANGES =
      Template.of(
          "the unit changes from {word} to {word} on this line, so the column was not used");
  static final Template SPLIT = Template.of("split the log at this line, or convert one part");

  static final Template THOUSANDS =
      Template.of("numbers such as {cell} have a thousands mark, so the column was not used");
  static final Template NO_THOUSANDS = Template.of("export the log again without thousands marks");

  static final Template MAYBE_THOUSANDS =
      Template.of(
          "the numbers of this column have three decimals or none, so their mark may part"
              + " thousands or decimals, and the column was not used");
  static final Template SAME_DECIMALS =
      Template.of("export the log again with the same number of decimals in every row");

  static final Template ONLY_TEXT =
      Template.of("this column has no number in it, only text such as {cell}");
  static final Template CHECK_EXPORT =
      Template.of("check that the log was exported whole, or type the right column in {sheet}");

  static final Template IMPOSSIBLE =
      Template.of(
          "most numbers of this column ({clause}) are outside {clause}, so it was not used");
  static final Template IMPOSSIBLE_UNSCALED =
      Template.of(
          "most numbers of this column ({clause}) are outside {clause}, so it was not used;"
              + " {clause}");
  static final Template SAY_SCALE = Template.of("type its scale in the column scale of {sheet}");
  static final Template CHECK_UNIT =
      Template.of("check its unit, or type its scale in the column scale of {sheet}");

  static final Template OUTSIDE =
      Template.of(
          "{count|reading was|readings were} taken as missing: outside {range}, the first {cell}");

  static final Template ZEROS =
      Template.of(
          "{count|reading is|readings are} exactly 0 in a column that goes up to {value}: some"
              + " loggers write 0 for a probe that fails");
  static final Template LOOK =
      Template.of("look at the chart; if they are wrong, give a correct log or exclude the run");

  static final Template DAMAGED =
      Template.of(
          "{count|cell was|cells were} taken as missing: damaged bytes, as a loss of power leaves"
              + " them");
  static final Template TEXT =
      Template.of(
          "{count|cell was|cells were} taken as missing: text in place of a number, the first"
              + " {cell}");

  private ChannelSays() {}
}
