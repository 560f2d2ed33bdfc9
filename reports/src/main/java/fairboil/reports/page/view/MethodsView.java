package fairboil.reports.page.view;

import fairboil.reports.words.Methods.Method;
import java.util.List;

/**
 * How figures were worked out.
 *
 * @param methods how, figure by figure
 * @param references the reference conditions
 * @param assumptions what is taken for granted, sentences
 * @param budgets uncertainty budgets, figure by figure
 * @param restating how boil times were restated
 */
public record MethodsView(
    List<Method> methods,
    List<FactView> references,
    List<String> assumptions,
    List<TableView> budgets,
    RestatingView restating) {}
