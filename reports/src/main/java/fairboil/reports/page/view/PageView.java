package fairboil.reports.page.view;

import java.util.List;
import java.util.Optional;

/**
 * A whole page. Of a section at which the program failed there is nothing to show.
 *
 * @param head what goes into its head
 * @param title the title
 * @param study the name of the study
 * @param version the version of the program
 * @param contents the sections
 * @param answer the question and its answer
 * @param fairness whether like was compared with like
 * @param trust whether the data can be trusted
 * @param builds builds side by side
 * @param holes whether hole position matters
 * @param runs every run
 * @param claims the claims
 * @param methods how figures were worked out
 * @param origin where the report came from
 */
public record PageView(
    HeadView head,
    String title,
    String study,
    String version,
    List<SectionLink> contents,
    Optional<AnswerView> answer,
    Optional<FairnessView> fairness,
    Optional<TrustView> trust,
    Optional<BuildsView> builds,
    Optional<HolesView> holes,
    Optional<RunsView> runs,
    Optional<List<ClaimView>> claims,
    Optional<MethodsView> methods,
    Optional<OriginView> origin) {}
