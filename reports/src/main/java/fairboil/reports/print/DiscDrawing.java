package fairboil.reports.print;

import fairboil.reports.print.Disc.Circle;
import fairboil.reports.print.Disc.Spot;

/** Draws a disc about a centre on a page. */
final class DiscDrawing {

  private static final double ARM = 1.5;
  private static final double PLAIN_ARM = 2.5;

  /** Distance that the number of a division needs, mm. */
  private static final double ROOM_FOR_NUMBER = 4.5;

  private static final int DEGREES = 360;

  private final Canvas page;
  private final Disc disc;
  private final double x0;
  private final double y0;

  DiscDrawing(Canvas page, Disc disc, double x0, double y0) {
    this.page = page;
    this.disc = disc;
    this.x0 = x0;
    this.y0 = y0;
  }

  void draw() {
    grid();
    protractor();
    arrow();
    centre();
    disc.circles().forEach(this::circle);
    page.circle(x0, y0, disc.radius(), disc.rim().isPresent() ? Pen.CUT : Pen.SKIPPED);
  }

  /** Fine circles 5 mm apart and spokes 10° apart, to centre the disc and to read holes on. */
  private void grid() {
    for (double r = 5; r < disc.radius(); r += 5) {
      page.circle(x0, y0, r, Pen.GRID);
    }
    for (int degrees = 0; degrees < DEGREES; degrees += 10) {
      ray(degrees, 5, disc.radius(), Pen.GRID);
    }
    for (double r = 10; r < disc.radius() - 8; r += 10) {
      double angle = betweenSpots();
      String words = String.valueOf((int) r);
      page.text(words, x(r, angle), y(r, angle) + 0.8, Type.NOTE, Canvas.Side.MIDDLE);
    }
  }

  private void protractor() {
    double outer = disc.radius();
    int step = outer < 30 ? 5 : 1;
    for (int degrees = 0; degrees < DEGREES; degrees += step) {
      double tick = degrees % 10 == 0 ? 3 : degrees % 5 == 0 ? 2 : 1.2;
      ray(degrees, outer - tick, outer, Pen.TICK);
    }
    for (int degrees = 30; degrees < DEGREES; degrees += 30) {
      middle(degrees + "°", outer - 5.5, Math.toRadians(degrees), Type.NOTE);
    }
  }

  private void arrow() {
    double tip = disc.radius() - 3.2;
    ray(0, disc.radius() - 8, tip, Pen.MARK);
    page.triangle(x0 + tip, y0, x0 + tip - 2.4, y0 - 0.9, x0 + tip - 2.4, y0 + 0.9);
    page.text("0°", x0 + tip - 1.6, y0 - 2.4, Type.SMALL_STRONG, Canvas.Side.MIDDLE);
  }

  private void centre() {
    page.line(x0 - 8, y0, x0 + 8, y0, Pen.MARK);
    page.line(x0, y0 - 8, x0, y0 + 8, Pen.MARK);
  }

  private void circle(Circle circle) {
    if (circle.radius() > 0) {
      page.circle(x0, y0, circle.radius(), Pen.FINE);
    }
    int every = (int) Math.max(1, Math.ceil(ROOM_FOR_NUMBER / Math.max(circle.chord(), 0.1)));
    for (Spot spot : circle.spots()) {
      spot(circle, spot);
      if (circle.radius() == 0 || (spot.division() - 1) % every == 0) {
        words(circle, spot);
      }
    }
  }

  private void spot(Circle circle, Spot spot) {
    double radius = circle.plan().diameter().orElse(0) / 2;
    double arm = radius > 0 ? radius + ARM : PLAIN_ARM;
    Pen pen = spot.hole().isPresent() ? Pen.MARK : Pen.SKIPPED;
    double out = spot.radius() + arm;
    double in = spot.radius() - arm;
    page.line(
        x(in, spot.angle()), y(in, spot.angle()), x(out, spot.angle()), y(out, spot.angle()), pen);
    if (spot.hole().isEmpty()) {
      return;
    }
    double sideX = arm * Math.sin(spot.angle());
    double sideY = arm * Math.cos(spot.angle());
    double x = x0 + spot.x();
    double y = y0 - spot.y();
    page.line(x - sideX, y - sideY, x + sideX, y + sideY, pen);
    if (radius > 0) {
      page.circle(x, y, radius, Pen.FINE);
    }
  }

  private void words(Circle circle, Spot spot) {
    double beyond = circle.plan().diameter().orElse(2 * PLAIN_ARM) / 2 + ARM + 1.8;
    // A centre hole has no outside: its number stands where no spoke of a circle begins.
    double angle = spot.radius() > 0 ? spot.angle() : Math.toRadians(-50);
    middle(circle.letter() + spot.division(), spot.radius() + beyond, angle, Type.STRONG);
    if (spot.hole().isEmpty()) {
      double r = spot.radius() + beyond;
      page.text("no hole", x(r, angle), y(r, angle) + 3.6, Type.NOTE, Canvas.Side.MIDDLE);
    }
  }

  /** An angle at which the first circle has no hole. */
  private double betweenSpots() {
    RingPlan plan = disc.circles().get(0).plan();
    return plan.angle(1) - Math.PI / plan.divisions();
  }

  private void middle(String text, double r, double angle, Type type) {
    double wide = page.lettering().width(text, type);
    double base = y(r, angle) + type.capital() / 2;
    page.fill(
        x(r, angle) - wide / 2 - 0.3,
        base - type.capital() - 0.3,
        wide + 0.6,
        type.capital() + 0.6,
        Ink.WHITE);
    page.text(text, x(r, angle), base, type, Canvas.Side.MIDDLE);
  }

  private void ray(int degrees, double from, double to, Pen pen) {
    double angle = Math.toRadians(degrees);
    page.line(x(from, angle), y(from, angle), x(to, angle), y(to, angle), pen);
  }

  private double x(double r, double angle) {
    return x0 + r * Math.cos(angle);
  }

  private double y(double r, double angle) {
    return y0 - r * Math.sin(angle);
  }
}
