package fairboil.analysis.precision;

import fairboil.analysis.measure.Measure;
import fairboil.ingest.sheet.Key;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What the sites found of one stove that went round, side by side (ISO 5725-2:1994, 7.3).
 * Statistics mark a site to look at; no run is removed for them.
 *
 * @param measure the measure
 * @param stove the stove
 * @param sites one row a site, in the order of the study; unmodifiable
 * @param cochran the largest of the sites' variances as a share of their sum; empty where fewer
 *     than two sites have two runs
 * @param cochranFlag whether it is larger than chance makes it
 */
public record Round(
    Measure measure, Key stove, List<AtSite> sites, OptionalDouble cochran, Flag cochranFlag) {

  /** Copies the list. */
  public Round {
    sites = List.copyOf(sites);
  }

  /**
   * What one site, or tester, found.
   *
   * @param site its name
   * @param runs how many runs count, at least 1
   * @param mean their mean, in the unit of the measure
   * @param sd their standard deviation, in the unit of a difference; empty for one run
   * @param h Mandel's h: how far its mean lies from the mean of the sites' means, in standard
   *     deviations of those; empty for fewer than three sites
   * @param hFlag whether h is larger than chance makes it
   * @param k Mandel's k: its standard deviation over that of all sites; empty for one run
   * @param kFlag whether k is larger than chance makes it
   * @param grubbs whether its mean, or the pair with its neighbour at the end, fails Grubbs's test
   */
  public record AtSite(
      String site,
      int runs,
      double mean,
      OptionalDouble sd,
      OptionalDouble h,
      Flag hFlag,
      OptionalDouble k,
      Flag kFlag,
      Flag grubbs) {

    /** Whether any statistic marks it. */
    public boolean isMarked() {
      return hFlag != Flag.NONE || kFlag != Flag.NONE || grubbs != Flag.NONE;
    }
  }
}
