/**
 * The page: one file that brings everything with it.
 *
 * <p>{@link fairboil.reports.page.Page} writes it from a {@link fairboil.reports.page.PageModel}.
 * For each section a class here turns results into the plain records of {@code page.view}, and a
 * template under {@code src/main/jte} shows them. To add a section: a record, a class, a template,
 * and a line in {@code Sections}.
 */
package fairboil.reports.page;
