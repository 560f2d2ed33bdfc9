package fairboil.reports.page.view;

/**
 * Something with its name.
 *
 * @param name what it is
 * @param value what it amounts to
 * @param note a remark, smaller; empty for none
 */
public record FactView(String name, String value, String note) {}
