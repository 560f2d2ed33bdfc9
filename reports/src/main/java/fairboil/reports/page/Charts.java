package fairboil.reports.page;

import fairboil.reports.chart.Painted;
import fairboil.reports.chart.Picture;
import fairboil.reports.page.view.FigureView;
import fairboil.reports.page.view.TableView;
import fairboil.reports.page.view.TipView;
import java.util.Base64;
import java.util.Optional;

/** Pictures as figures of the page. */
final class Charts {

  /** A pointer need not hit a point quite. */
  private static final int REACH = 3;

  private Charts() {}

  /** The id of a picture's figure. */
  static String id(Picture picture) {
    return "chart-" + picture.name();
  }

  private static TipView tip(Painted.Tip tip) {
    return new TipView(
        (int) Math.round(tip.x()),
        (int) Math.round(tip.y()),
        (int) Math.round(tip.size() / 2) + REACH,
        tip.text());
  }

  private static String data(Picture picture) {
    return "data:image/png;base64," + Base64.getEncoder().encodeToString(picture.png());
  }

  /** A picture, or the sentence in its place, with the numbers behind it. */
  static FigureView figure(Picture picture, Optional<TableView> data) {
    return new FigureView(
        id(picture),
        picture.isDrawn() ? data(picture) : "",
        picture.width(),
        picture.height(),
        picture.alternative(),
        picture.caption(),
        picture.tips().stream().map(Charts::tip).toList(),
        data);
  }
}
