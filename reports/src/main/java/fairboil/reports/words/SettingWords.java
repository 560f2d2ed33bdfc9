package fairboil.reports.words;

import fairboil.ingest.choice.Choice;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The settings that a study was worked out with. */
public final class SettingWords {

  /**
   * One setting.
   *
   * @param name its name in {@code study.csv}
   * @param value what it was: as written, or the value that holds where nothing is
   * @param origin whether it was given
   */
  public record Setting(String name, String value, Origin origin) {}

  /** Where the value of a setting comes from. */
  public enum Origin {
    /** The sheet gives it. */
    GIVEN("given"),
    /** It holds where the sheet gives nothing. */
    DEFAULT("default"),
    /** It holds because what the sheet gives could not be read. */
    UNREAD("default, as what is written could not be read");

    private final String label;

    Origin(String label) {
      this.label = label;
    }

    /** The word that people see. */
    public String label() {
      return label;
    }
  }

  private final Row settings;
  private final Display display;

  private SettingWords(Row settings) {
    this.settings = settings;
    this.display = Display.in(settings.get(Settings.SHOW_UNITS));
  }

  /** The settings that are given or have a default, in the order of the sheet. */
  public static List<Setting> of(Row settings) {
    SettingWords words = new SettingWords(settings);
    List<Setting> all = new ArrayList<>();
    for (Column<?> column : Settings.SCHEMA.columns()) {
      words.setting(column).ifPresent(all::add);
    }
    return List.copyOf(all);
  }

  private Optional<Setting> setting(Column<?> column) {
    Optional<? extends Given<?>> given = settings.cell(column);
    return given.isPresent()
        ? given.map(cell -> new Setting(column.name(), cell.written(), Origin.GIVEN))
        : column.fallback().map(it -> new Setting(column.name(), text(it), unless(column)));
  }

  private Origin unless(Column<?> column) {
    return settings.unread(column).isPresent() ? Origin.UNREAD : Origin.DEFAULT;
  }

  private String text(Object value) {
    if (value instanceof Quantity quantity) {
      return display.value(quantity.value(), 0, quantity.dimension());
    }
    return value instanceof Choice choice ? choice.label() : value.toString();
  }
}
