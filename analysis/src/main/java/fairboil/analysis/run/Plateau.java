package fairboil.analysis.run;

/**
 * The boil as the water channel shows it: a line through the last kelvins before the plateau meets
 * the mean of the plateau. Times are on the run's time line.
 *
 * @param lineFrom start of the line, s
 * @param lineFromCelsius the line there, °C
 * @param boilAt where the line meets the plateau, s
 * @param plateauTo end of the plateau, s
 * @param celsius mean of the plateau, °C
 */
public record Plateau(
    double lineFrom, double lineFromCelsius, double boilAt, double plateauTo, double celsius) {}
