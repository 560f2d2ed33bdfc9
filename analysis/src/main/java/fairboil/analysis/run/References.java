package fairboil.analysis.run;

import fairboil.analysis.water.Atmosphere;
import fairboil.analysis.water.Saturation;
import fairboil.analysis.water.Water;
import fairboil.ingest.Study;
import fairboil.ingest.choice.NormaliseBy;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.Settings;
import java.util.Optional;

/**
 * The reference conditions that results are restated for.
 *
 * @param water mass of water, kg
 * @param start temperature of the water at the start, °C
 * @param ambient air temperature, °C
 * @param boilingPoint boiling point at the reference altitude, °C
 * @param altitude the reference altitude, m
 * @param normaliseBy the method asked for
 */
public record References(
    double water,
    double start,
    double ambient,
    double boilingPoint,
    double altitude,
    NormaliseBy normaliseBy) {

  private static final double USUAL_WATER = 1;

  /**
   * The reference conditions of a study: as its settings tell; where they name no water, the median
   * of its runs to 0.1 kg (1 kg if no run tells its water). A reference altitude that is not
   * possible is taken as the nearest that is.
   */
  public static References of(Study study) {
    Row settings = study.settings();
    double start = settings.get(Settings.REFERENCE_START).value();
    double altitude =
        Math.max(
            Atmosphere.MIN_METRES,
            Math.min(Atmosphere.MAX_METRES, settings.get(Settings.REFERENCE_ALTITUDE).value()));
    return new References(
        settings
            .value(Settings.REFERENCE_WATER)
            .map(quantity -> kilograms(quantity, start))
            .filter(mass -> mass > 0)
            .orElseGet(() -> medianWater(study)),
        start,
        settings.get(Settings.REFERENCE_AMBIENT).value(),
        Saturation.temperature(Atmosphere.pressure(altitude)),
        altitude,
        settings.get(Settings.NORMALISE_BY));
  }

  private static double kilograms(Quantity quantity, double celsius) {
    double within = Math.max(Water.MIN_CELSIUS, Math.min(Water.MAX_CELSIUS, celsius));
    return quantity.dimension() == Dimension.MASS
        ? quantity.value()
        : quantity.value() * Water.density(within);
  }

  private static double medianWater(Study study) {
    double[] masses =
        study.runs().stream()
            .map(run -> waterOf(study, run))
            .flatMap(Optional::stream)
            .mapToDouble(Double::doubleValue)
            .sorted()
            .toArray();
    if (masses.length == 0) {
      return USUAL_WATER;
    }
    int middle = masses.length / 2;
    double median =
        masses.length % 2 == 1 ? masses[middle] : (masses[middle - 1] + masses[middle]) / 2;
    return Math.max(0.1, Math.round(median * 10) / 10.0);
  }

  private static Optional<Double> waterOf(Study study, Run run) {
    References none = new References(USUAL_WATER, 20, 20, 100, 0, NormaliseBy.AUTO);
    RunContext context = new RunContext(study, none, run, new Findings());
    double mass = new WaterFinder(context, new PotFinder(context)).mass().orNaN();
    return Double.isNaN(mass) ? Optional.empty() : Optional.of(mass);
  }
}
