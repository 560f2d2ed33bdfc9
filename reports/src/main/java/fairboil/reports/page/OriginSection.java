package fairboil.reports.page;

import fairboil.ingest.grid.Fingerprint;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Settings;
import fairboil.reports.page.view.CellView;
import fairboil.reports.page.view.ColumnView;
import fairboil.reports.page.view.FactView;
import fairboil.reports.page.view.OriginView;
import fairboil.reports.page.view.TableView;
import fairboil.reports.words.SettingWords;
import java.util.List;

/** Where the report came from: program, settings, and every file read. */
final class OriginSection {

  private OriginSection() {}

  static OriginView of(Materials from) {
    Row settings = from.results().study().settings();
    return new OriginView(
        List.of(
            new FactView("program", "fairboil " + from.model().version(), ""),
            new FactView("study", from.results().study().name(), ""),
            new FactView(
                "fingerprint of the study", Fingerprint.of(from.results().sources()), "SHA-256"),
            new FactView("seed of random numbers", "" + settings.get(Settings.SEED), "")),
        settings(settings),
        sources(from));
  }

  private static TableView settings(Row settings) {
    return TableView.grid(
        "settings",
        "Settings of the study",
        List.of(ColumnView.words("setting"), ColumnView.words("value"), ColumnView.words("origin")),
        SettingWords.of(settings).stream()
            .map(
                setting ->
                    List.of(
                        CellView.of(setting.name()),
                        CellView.of(setting.value()),
                        CellView.of(setting.origin().label())))
            .toList());
  }

  private static TableView sources(Materials from) {
    return TableView.list(
        "sources",
        "Every file read, with its fingerprint (SHA-256)",
        List.of(ColumnView.words("file"), ColumnView.numbers("bytes"), ColumnView.words("SHA-256")),
        from.results().sources().stream()
            .map(
                source ->
                    List.of(
                        CellView.of(source.name()),
                        FigureCells.count(source.bytes()),
                        CellView.of(source.sha256())))
            .toList());
  }
}
