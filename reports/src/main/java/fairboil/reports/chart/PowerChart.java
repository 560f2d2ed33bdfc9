package fairboil.reports.chart;

import fairboil.analysis.plan.Answer;
import fairboil.analysis.plan.Answer.Curve;
import fairboil.analysis.plan.Basis;
import fairboil.reports.chart.Axis.Ticks;
import fairboil.reports.chart.ChartMark.Need;
import fairboil.reports.chart.ChartMark.Weight;
import fairboil.reports.words.Caption;
import fairboil.reports.words.PlanWords;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** How often a wish comes true against the number of stoves, a line for each number of burns. */
public final class PowerChart {

  private static final ChartKey KEY = ChartKey.of(Picture.Kind.POWER);
  private static final int HEIGHT = 420;
  private static final int EDGE = 12;
  private static final double PERCENT = 100;
  private static final double LINE = 2;
  private static final double ALMOST_ALWAYS = 0.98;
  private static final int FEW_STOVES = 8;
  private static final Hue[] HUES = {
    Hue.VERMILION, Hue.BLUE, Hue.GREEN, Hue.PURPLE, Hue.ORANGE, Hue.SKY
  };
  private static final Dash[] DASHES = {Dash.SOLID, Dash.DASHED, Dash.DOTTED};

  private final Answer answer;
  private final double wanted;
  private final List<Curve> curves;

  private PowerChart(Answer answer, double wanted) {
    this.answer = answer;
    this.wanted = wanted;
    this.curves =
        answer.curves().stream().filter(curve -> curve.basis() == Basis.UPPER_LIMIT).toList();
  }

  /**
   * The picture of a wish, with scatter at its upper limits.
   *
   * @param wanted how often the wish is to come true, a share
   * @param number of the wish in its plan, from 1: part of the picture's name
   */
  public static Picture of(Answer answer, double wanted, int number, Painter painter) {
    Sheet sheet = new PowerChart(answer, wanted).sheet();
    Caption caption = PlanWords.caption(answer, wanted);
    return new Picture(
        KEY,
        name(number),
        painter.painted(sheet),
        sheet.width(),
        sheet.height(),
        caption.alternative(),
        caption.text());
  }

  /** What stands in the place of the picture of a wish, if the program failed at it. */
  public static Picture lost(int number) {
    return Picture.lost(KEY, name(number));
  }

  private static String name(int number) {
    return "power-" + number;
  }

  private Sheet sheet() {
    List<KeyEntry> key = new ArrayList<>();
    curves.forEach(
        curve ->
            key.add(
                new KeyEntry.Stroke(
                    hue(curve),
                    dash(curve),
                    LINE,
                    curve.runs() == 1 ? "1 burn each" : "" + curve.runs())));
    Caption caption = PlanWords.caption(answer, wanted);
    int top = Format.SCREEN.top(caption, key) + 22;
    int height = Format.SCREEN.height(HEIGHT, top);
    Axis x = new Axis(across(), fewest() - 0.5, most() + 0.5, Ticks.NUMBERS);
    Axis y = new Axis("comes true (% of studies)", 0, PERCENT + 2, Ticks.NUMBERS);
    Box box =
        new Box(
            14 - EDGE,
            top - EDGE,
            Format.SCREEN.width() - 28 + 2 * EDGE,
            height - top - 8 + 2 * EDGE);
    Panel panel = new Panel(box, y.title(), "", x, y, EDGE, 0, marks(x));
    return Format.SCREEN.sheet(caption, key, List.of(panel), height);
  }

  private String across() {
    return answer.wish().kind().isByDesign() ? "stoves of each design" : "stoves";
  }

  private List<ChartMark> marks(Axis x) {
    List<ChartMark> marks = new ArrayList<>();
    double height = PERCENT * wanted;
    Points level = Points.of(new ChartPoint(x.from(), height), new ChartPoint(x.to(), height));
    marks.add(new ChartMark.Line(level, Hue.GREY, Dash.DOTTED, 1.5));
    curves.forEach(curve -> marks.add(line(curve)));
    marks.add(
        new ChartMark.Label(
            List.of(new ChartPoint(x.from() + 0.1 * x.length(), height)),
            "wanted",
            Hue.GREY,
            Weight.PLAIN,
            Need.ALWAYS));
    return marks;
  }

  private ChartMark line(Curve curve) {
    int count = (int) Math.min(curve.odds().size(), most() - curve.fewest() + 1.0);
    List<ChartPoint> spots =
        IntStream.range(0, Math.max(0, count))
            .mapToObj(i -> new ChartPoint(curve.fewest() + i, PERCENT * curve.odds().get(i)))
            .toList();
    return new ChartMark.Line(Points.of(spots), hue(curve), dash(curve), LINE);
  }

  private static Hue hue(Curve curve) {
    return HUES[(curve.runs() - 1) % HUES.length];
  }

  private static Dash dash(Curve curve) {
    return DASHES[(curve.runs() - 1) % DASHES.length];
  }

  private int fewest() {
    return curves.stream().mapToInt(Curve::fewest).min().orElse(2);
  }

  /** Where the lowest line comes true almost always, or ends. */
  private int most() {
    int most = fewest() + FEW_STOVES;
    for (Curve curve : curves) {
      int steps = 0;
      while (steps < curve.odds().size() - 1 && curve.odds().get(steps) < ALMOST_ALWAYS) {
        steps++;
      }
      most = Math.max(most, curve.fewest() + steps);
    }
    return most;
  }
}
