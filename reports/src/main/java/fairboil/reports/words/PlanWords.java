package fairboil.reports.words;

import fairboil.analysis.plan.Answer;
import fairboil.analysis.plan.Answer.Need;
import fairboil.analysis.plan.Basis;
import fairboil.analysis.plan.Plan;
import fairboil.analysis.plan.Spread;
import fairboil.analysis.plan.Wish;
import fairboil.ingest.dimension.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What is said of a plan. */
public final class PlanWords {

  private final Plan plan;
  private final Display display;

  /** The words for a plan, its numbers as {@code display} shows them. */
  public PlanWords(Plan plan, Display display) {
    this.plan = plan;
    this.display = display;
  }

  /** The plan in sentences: for each wish what it takes. */
  public List<String> answer() {
    List<String> sentences = new ArrayList<>();
    if (plan.isExample()) {
      sentences.add(
          "Nothing was wished, so this is an example: a difference twice as large as the scatter of"
              + " a burn of any stove. State what you want with --half-width, --difference,"
              + " --margin or --hole-effect.");
    }
    plan.answers().forEach(answer -> sentences.add(answer(answer)));
    return sentences;
  }

  private String answer(Answer answer) {
    Wish wish = answer.wish();
    return Plural.sentence(wished(wish))
        + " in "
        + Display.percent(plan.asked().power())
        + " of studies takes "
        + (isStated(answer)
            ? size(answer, Basis.ESTIMATE) + " with the scatter stated."
            : sizes(answer));
  }

  private static boolean isStated(Answer answer) {
    return answer.spreads().burns().origin() == Spread.Origin.STATED
        && answer.spreads().stoves().origin() == Spread.Origin.STATED;
  }

  private static String sizes(Answer answer) {
    return size(answer, Basis.UPPER_LIMIT)
        + " if scatter is at its upper 80\u00a0% limits, "
        + size(answer, Basis.ESTIMATE)
        + " if it is as estimated. Plan by the first: by an estimate, a plan falls short about half"
        + " the time.";
  }

  /** What is said of the picture of a wish, with scatter at its upper limits. */
  public static Caption caption(Answer answer, double wanted) {
    String wish = answer.wish().kind().label();
    String title = "How often it comes true: " + wish;
    String once = needed(answer, 1);
    String often = needed(answer, Answer.MOST_RUNS);
    String says =
        Display.percent(wanted)
            + " takes "
            + once
            + " burnt once each, and "
            + often
            + " burnt "
            + Answer.MOST_RUNS
            + " times each";
    return new Caption(
        title,
        says,
        says
            + ". Scatter is taken at its upper 80\u00a0% limits. Each line is a number of burns of each"
            + " stove, from 1 to "
            + Answer.MOST_RUNS
            + "; where lines lie close, more burns of the same stoves help little.",
        title + ". Lines rise with the number of stoves: " + says + ".");
  }

  private static String needed(Answer answer, int runs) {
    String each = answer.wish().kind().isByDesign() ? " of each design" : "";
    OptionalInt builds = answer.need(Basis.UPPER_LIMIT, runs).builds();
    return builds.isPresent()
        ? Plural.of(builds.getAsInt(), "stove") + each
        : "more than " + Answer.MOST_BUILDS + " stoves" + each;
  }

  private String wished(Wish wish) {
    String size = size(wish);
    String measure = plan.asked().measure().label();
    return switch (wish.kind()) {
      case HALF_WIDTH -> "knowing the mean " + measure + " of a design to ±" + size;
      case DIFFERENCE -> "finding a difference of " + size + " between two designs in " + measure;
      case MARGIN ->
          "finding two designs that do not differ in "
              + measure
              + " to be no different within "
              + size;
      case HOLE_EFFECT -> "finding a hole effect of " + size + " on " + measure;
    };
  }

  private String size(Wish wish) {
    Dimension difference = plan.asked().measure().dimension().ofDifference();
    return wish.kind() == Wish.Kind.HOLE_EFFECT
        ? display.value(wish.size(), 0, difference.perLength())
        : display.value(wish.size(), 0, difference);
  }

  private static String size(Answer answer, Basis basis) {
    Optional<Need> advice = answer.advice(basis);
    String each = answer.wish().kind().isByDesign() ? " of each design" : "";
    return advice
        .map(
            need ->
                Plural.of(need.builds().orElseThrow(), "stove")
                    + each
                    + ", burnt "
                    + Plural.of(need.runs(), "time")
                    + " each,")
        .orElse("more than " + Answer.MOST_BUILDS + " stoves" + each);
  }

  /** What the plan stands on, in sentences. */
  public List<String> basis() {
    List<String> sentences = new ArrayList<>();
    for (Answer answer : plan.answers()) {
      String about = answer.wish().kind().isByDesign() ? "" : " about the line of the hole effect";
      sentences.add(scatter("From burn to burn of one stove", answer.spreads().burns()));
      sentences.add(scatter("From stove to stove" + about, answer.spreads().stoves()));
    }
    sentences.add(
        "Among plans that are enough, the one with the least work is named, at least two burns of"
            + " each stove, the making of a stove counted as "
            + Answer.BURNS_A_STOVE
            + " burns (common practice, no source). More burns of the same stoves soon stop helping:"
            + " they cannot make up for how stoves differ.");
    return sentences.stream().distinct().toList();
  }

  private String scatter(String where, Spread spread) {
    Dimension dimension = plan.asked().measure().dimension().ofDifference();
    String upper = display.value(spread.upper(), 0, dimension);
    return switch (spread.origin()) {
      case STATED -> where + ": standard deviation " + upper + ", as stated.";
      case NOT_SEEN ->
          where
              + ": none was seen, but it may be up to "
              + upper
              + " (upper 80\u00a0% limit), which is reckoned with throughout.";
      case STUDY ->
          where
              + ": standard deviation "
              + display.value(spread.estimate(), 0, dimension)
              + " in this study, upper 80\u00a0% limit "
              + upper
              + ".";
    };
  }

  /** How to drill wrongly on purpose; empty without a wished hole effect. */
  public List<String> drilling() {
    return plan.levels().isEmpty()
        ? List.of()
        : List.of(
            "Each new stove has a hole error to drill, given to it at random from the seed of the"
                + " study. Drill it so, whatever it looks like, measure all holes afterwards, and"
                + " set “hole error was” to “assigned” in study.csv.",
            "Holes drilled wrong on purpose can make a stove smoke and give off more carbon"
                + " monoxide: test those outdoors, upwind, and scrap them after.");
  }

  /** How to use the running order. */
  public String order() {
    int blocks = plan.order().blocks().size();
    return Plural.of(plan.order().runs(), "burn")
        + " of "
        + Plural.of(plan.builds().size(), "stove")
        + " in "
        + Plural.of(blocks, "block")
        + ": each stove once in each block, in a random order made from the seed. A block is a day,"
        + " or days that follow each other. The sheet to fill in is sheets/runs.csv beside this"
        + " page, and the list to take outside sheets/running-order-a4.pdf (or -letter.pdf).";
  }
}
