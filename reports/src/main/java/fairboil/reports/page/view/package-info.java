/**
 * What the templates show: plain records of finished text. Public only because templates are
 * compiled into a package of their own.
 *
 * <p>{@link fairboil.reports.page.view.PageView} is a whole page, one component a section; {@link
 * fairboil.reports.page.view.TableView} and {@link fairboil.reports.page.view.FigureView} are what
 * sections share.
 */
package fairboil.reports.page.view;
