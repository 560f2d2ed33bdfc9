package fairboil.reports.page.view;

/**
 * What goes into the head of a page.
 *
 * @param title the title
 * @param policy the content security policy, which allows nothing but what the page brings
 * @param style the style sheet
 * @param script the script
 */
public record HeadView(String title, String policy, String style, String script) {}
