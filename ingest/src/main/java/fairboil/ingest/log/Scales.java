package fairboil.ingest.log;

import fairboil.ingest.finding.SheetRow;
import fairboil.ingest.quantity.Dimension;
import fairboil.ingest.sheet.SensorsSheet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Whole numbers of tenths, hundredths or thousandths of a degree: asked about, never assumed. */
final class Scales {

  private static final double[] LIKELY = {0.1, 0.01, 0.001};

  private Scales() {}

  /** The scale at which the highest number would be a temperature near a fire or in water. */
  static Optional<Double> likely(ChannelPlan plan, ValueRange range) {
    if (plan.dimension() != Dimension.TEMPERATURE || plan.scale() != 1) {
      return Optional.empty();
    }
    for (double scale : LIKELY) {
      double celsius =
          plan.unit().orElseThrow().toHeld(range.highest() * scale, Dimension.TEMPERATURE);
      if (celsius >= 20 && celsius <= 1200) {
        return Optional.of(scale);
      }
    }
    return Optional.empty();
  }

  static String words(double scale) {
    return scale == 0.1 ? "tenths" : scale == 0.01 ? "hundredths" : "thousandths";
  }

  static SheetRow row(ChannelPlan plan, double scale) {
    String role = plan.role().map(known -> known.label()).orElse("");
    Map<String, String> cells =
        new LinkedHashMap<>(Asking.row(plan.column(), role, plan.unit()).cells());
    cells.put(SensorsSheet.SCALE.name(), Spell.number(scale));
    return new SheetRow(SensorsSheet.SCHEMA.file(), cells);
  }
}
