package fairboil.reports.page;

import fairboil.reports.chart.Picture;
import fairboil.reports.page.view.FigureView;
import fairboil.reports.page.view.TableView;
import java.util.Base64;
import java.util.Optional;

/** Pictures as figures of the page. */
final class Charts {

  private Charts() {}

  /** The id of a picture's figure. */
  static String id(Picture picture) {
    return "chart-" + picture.name();
  }

  /** A picture, with the numbers behind it. */
  static FigureView figure(Picture picture, Optional<TableView> data) {
    return new FigureView(
        id(picture),
        "data:image/png;base64," + Base64.getEncoder().encodeToString(picture.png()),
        picture.width(),
        picture.height(),
        picture.alternative(),
        picture.caption(),
        data);
  }
}
