package fairboil.reports.page;

import fairboil.analysis.run.RunResult;
import fairboil.reports.chart.Picture;
import fairboil.reports.page.view.HeadView;
import fairboil.reports.page.view.PageView;
import fairboil.reports.words.AnswerWords;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import java.io.IOException;
import java.io.OutputStream;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Writes pages that bring everything with them: style, script and pictures. Nothing is loaded from
 * elsewhere, and everything that people wrote is escaped. The same model gives the same bytes.
 */
public final class Page {

  private final TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);
  private final Policy policy = new Policy();
  private final Materials from;

  private Page(Materials from) {
    this.from = from;
  }

  /** The pages of a study. */
  public static Page of(PageModel model) {
    return new Page(new Materials(model));
  }

  /**
   * Writes the page of the study, as UTF-8.
   *
   * @param out takes the page, and stays open
   * @throws IOException if the stream refuses
   */
  public void write(OutputStream out) throws IOException {
    render("page.jte", Map.of("page", view()), out);
  }

  /**
   * Writes a run's own page, for studies with more runs than a page holds. It belongs at {@link
   * RunNames#file}.
   *
   * @param run one of the runs
   * @param trace its chart, if it has one
   * @param out takes the page, as UTF-8, and stays open
   * @throws IOException if the stream refuses
   */
  public void writeRun(RunResult run, Optional<Picture> trace, OutputStream out)
      throws IOException {
    Map<String, Object> parameters = new HashMap<>();
    parameters.put("run", new RunArticle(from).of(run, trace));
    String title = AnswerWords.of(from.results()).title();
    parameters.put("head", head("Run " + run.run().key().name() + " – " + title));
    parameters.put("title", title);
    render("runpage.jte", parameters, out);
  }

  private void render(String template, Map<String, Object> parameters, OutputStream out)
      throws IOException {
    PageOutput page = new PageOutput();
    engine.render(template, parameters, page);
    page.writeTo(out);
  }

  private HeadView head(String title) {
    return policy.head(title);
  }

  private PageView view() {
    String title = AnswerWords.of(from.results()).title();
    return new PageView(
        head(title),
        title,
        from.results().study().name(),
        from.model().version(),
        Sections.ALL,
        AnswerSection.of(from),
        FairnessSection.of(from),
        TrustSection.of(from),
        BuildsSection.of(from),
        HolesSection.of(from),
        RunsSection.of(from),
        ClaimsSection.of(from),
        MethodsSection.of(from),
        OriginSection.of(from));
  }
}
