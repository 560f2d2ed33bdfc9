package fairboil.reports.page.view;

import java.util.List;

/**
 * Whether hole position matters.
 *
 * @param origin what may be concluded, a sentence; empty where there is no hole effect
 * @param effects the effects, those of the hole ring first
 * @param models the terms of each model
 * @param maps maps of the rings
 * @param errors hole errors, ring by ring
 */
public record HolesView(
    String origin,
    List<EffectView> effects,
    TableView models,
    List<FigureView> maps,
    TableView errors) {}
