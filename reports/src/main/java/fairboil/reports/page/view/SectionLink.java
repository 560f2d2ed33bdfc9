package fairboil.reports.page.view;

/**
 * A section, as the table of contents has it.
 *
 * @param id its name in the page
 * @param title its heading
 */
public record SectionLink(String id, String title) {}
