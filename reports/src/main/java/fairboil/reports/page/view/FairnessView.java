package fairboil.reports.page.view;

import java.util.List;

/**
 * Whether like was compared with like.
 *
 * @param conditions the conditions of each thing compared, one table a kind of thing
 * @param remarks what cannot be told apart, sentences
 * @param leftOut the runs left out, and why; without rows if there are none
 * @param hadTheyCounted what counting them would have changed, sentences
 * @param protocol how far runs kept to what was agreed, sentences; none if nothing was agreed
 * @param notWithin the runs that did not, and why; without rows if there are none
 * @param normalising what normalising did; empty where that cannot be seen
 */
public record FairnessView(
    List<TableView> conditions,
    List<String> remarks,
    TableView leftOut,
    List<String> hadTheyCounted,
    List<String> protocol,
    TableView notWithin,
    List<FigureView> normalising) {}
