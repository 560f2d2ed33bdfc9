package fairboil.reports.page;

import fairboil.analysis.fault.Faults;
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
import java.util.function.Function;

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

  /**
   * The pages of a study.
   *
   * @param faults takes sections and runs at which the program failed, as pages are written
   */
  public static Page of(PageModel model, Faults faults) {
    return new Page(new Materials(model, faults));
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

  /**
   * Writes a page in the place of one at which the program failed, with the cautions.
   *
   * @param what is lost
   * @param home the way to the report's folder, such as {@code ../}; empty if it stands there
   * @param out takes the page, as UTF-8, and stays open
   * @throws IOException if the stream refuses
   */
  public void writeLost(String what, String home, OutputStream out) throws IOException {
    render("lost.jte", Map.of("head", head(what), "what", what, "home", home), out);
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
        section(0, AnswerSection::of),
        section(1, FairnessSection::of),
        section(2, TrustSection::of),
        section(3, BuildsSection::of),
        section(4, HolesSection::of),
        section(5, RunsSection::of),
        section(6, ClaimsSection::of),
        section(7, MethodsSection::of),
        section(9, OriginSection::of));
  }

  private <V> Optional<V> section(int index, Function<Materials, V> section) {
    String part = "the section “" + Sections.ALL.get(index).title() + "” of the page";
    return from.contain(part, () -> section.apply(from));
  }
}
