package fairboil.reports.page;

import fairboil.reports.page.view.SectionLink;
import java.util.List;

/** The sections of a page, in the order in which its template has them. */
final class Sections {

  static final List<SectionLink> ALL =
      List.of(
          new SectionLink("answer", "The answer"),
          new SectionLink("fair", "Was it a fair comparison?"),
          new SectionLink("trust", "Can these data be trusted?"),
          new SectionLink("builds", "Designs and builds side by side"),
          new SectionLink("holes", "Does hole position matter?"),
          new SectionLink("runs", "Every run"),
          new SectionLink("claims", "Claims"),
          new SectionLink("methods", "How each figure was worked out"),
          new SectionLink("cautions", "Cautions"),
          new SectionLink("origin", "Where it came from"));

  private Sections() {}
}
