package fairboil.reports.page;

import fairboil.analysis.run.RunResult;
import fairboil.reports.chart.Picture;
import fairboil.reports.page.view.HeadView;
import fairboil.reports.page.view.PageView;
import fairboil.reports.words.AnswerWords;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.TemplateException;
import gg.jte.output.WriterOutput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
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
   * Writes the page of the study and flushes the writer, which stays open.
   *
   * @param writer takes the page; write it as UTF-8
   * @throws IOException if the writer refuses
   */
  public void write(Writer writer) throws IOException {
    render("page.jte", Map.of("page", view()), writer);
  }

  /**
   * Writes a run's own page, for studies with more runs than a page holds. It belongs at {@link
   * RunNames#file}.
   *
   * @param run one of the runs
   * @param trace its chart, if it has one
   * @param writer takes the page; write it as UTF-8
   * @throws IOException if the writer refuses
   */
  public void writeRun(RunResult run, Optional<Picture> trace, Writer writer) throws IOException {
    Map<String, Object> parameters = new HashMap<>();
    parameters.put("run", new RunArticle(from).of(run, trace));
    String title = AnswerWords.of(from.results()).title();
    parameters.put("head", head("Run " + run.run().key().name() + " – " + title));
    parameters.put("title", title);
    render("runpage.jte", parameters, writer);
  }

  private void render(String template, Map<String, Object> parameters, Writer writer)
      throws IOException {
    Writer legal = new LegalCharacters(writer);
    try {
      engine.render(template, parameters, new WriterOutput(legal));
    } catch (TemplateException e) {
      if (e.getCause() instanceof UncheckedIOException refused) {
        throw refused.getCause();
      }
      throw e;
    }
    legal.flush();
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
