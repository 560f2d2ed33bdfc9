package fairboil.reports.page.view;

import java.util.List;
import java.util.Optional;

/**
 * A chart with its caption and the numbers behind it.
 *
 * @param id its name in the page, unique
 * @param source its picture, a data: address; empty if the program failed at it
 * @param width width in CSS pixels
 * @param height height in CSS pixels
 * @param alternative what it says, for those who cannot see it
 * @param caption what to see
 * @param tips places on it that tell something
 * @param data the numbers behind it
 */
public record FigureView(
    String id,
    String source,
    int width,
    int height,
    String alternative,
    String caption,
    List<TipView> tips,
    Optional<TableView> data) {}
