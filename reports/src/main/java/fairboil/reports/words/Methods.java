package fairboil.reports.words;

import fairboil.analysis.figure.Interval;
import fairboil.analysis.sensor.BeadRadiation;
import fairboil.ingest.dimension.Dimension;
import java.util.List;
import java.util.Optional;

/** How each figure is worked out, for those who wish to check or to criticise. */
public final class Methods {

  /**
   * How one figure is worked out.
   *
   * @param figure the figure
   * @param how how it is worked out, in sentences
   * @param formula the formula, where one says it better
   * @param source where it comes from; a convention of ours says so
   */
  public record Method(String figure, String how, Optional<String> formula, String source) {}

  /** Of runs, of holes, then of the study; unmodifiable. */
  public static final List<Method> ALL =
      List.of(
          method(
              "Boil time",
              "From the later of lit and pot on to the boil. The boil is where the line through"
                  + " the last 8\u00a0K of heating meets the mean of the plateau that follows; the"
                  + " plateau must last at least 60\u00a0s (15\u00a0s with a larger uncertainty) and agree"
                  + " with the boiling point. Where the log shows none, the stopwatch counts.",
              "A convention of this report. What people call a boil is kept beside it."),
          method(
              "Joining of clocks",
              "Stopwatch and log are joined by what both saw: lighting and the first rise of the"
                  + " flame, flame out and its fall, pot on and pot off and the water; never by the"
                  + " boil that a person marked. Marks are moved only by more than twice the"
                  + " uncertainty of the offset; it counts wherever log and stopwatch are taken"
                  + " together. An offset beyond a minute is an error in the findings.",
              "offset = weighted mean of (time in the log − time of the mark)",
              "Weighted mean with the ratio of Birge (1932); how sharply an event shows is judged"
                  + " from its trace."),
          method(
              "Boiling point",
              "Of pure water at the air pressure of the place: the pressure read there; else that"
                  + " of the forecast, reduced to the altitude; else that of the standard"
                  + " atmosphere at the altitude, give or take 0.8\u00a0K for the weather.",
              "IAPWS-IF97, region 4; ISO 2533:1975."),
          method(
              "Clean trace",
              "Fault codes and empty cells are set aside, lone spikes as well. Nothing is filled in"
                  + " across gaps of more than 5 readings. Every reading set aside is in the ledger"
                  + " above.",
              "Spikes by the filter of Hampel (1974)."),
          method(
              "Peak",
              "The highest value, while the pot is on and the flame burns, of the flame"
                  + " temperature averaged over the hold. The highest of a noisy average reads"
                  + " high: by how much is reckoned from the noise, taken off, and counted in the"
                  + " uncertainty. It is the temperature of a bead, not of the gas, which is"
                  + " hotter.",
              "A convention of this report."),
          method(
              "Steady flame",
              "The median flame temperature from gas lit (or else pot on) to flame out.",
              "A convention of this report."),
          method(
              "Normalised peak",
              "The peak restated for the reference air temperature, degree for degree. A bead"
                  + " follows the air by somewhat less.",
              "normalised peak = peak + (reference air − air)",
              "A convention of this report."),
          method(
              "Net power",
              "Heat gained by water and pot from the start to the boil, over the boil time.",
              "P = C (T boil − T start) / t,  C = heat capacity of water and pot",
              "Heat capacity of water by IAPWS-IF97; of the pot by handbook values of its"
                  + " material."),
          method(
              "Normalised boil time, by energy scaling",
              "How long the same net power would take for the reference water, from the reference"
                  + " start to the boiling point at the reference altitude. It restates the task of"
                  + " the pot; not the temperature of the air, and not the fire.",
              "t normalised = C ref (T boil ref − T start ref) / P",
              "Heat balance of the pot."),
          method(
              "Normalised boil time, by heat balance",
              "The heat that the pot loses is had from its cooling on a cold stand beside the fire,"
                  + " or from coolings of other runs with the same pot, lid and wind; under a lid no"
                  + " steam is taken to leave. With that held, the heating shows how the fire grew;"
                  + " its power is such that the balance boils the water in the boil time seen. The"
                  + " same fire, from pot on, is then put under the reference water in the reference"
                  + " air. The loss is never had from the heating: a growing fire would look the"
                  + " same. In the fire the pot is taken to lose 1 ± 0.25 times as much as"
                  + " beside it, all values alike; air to be half saturated. Where that dominates,"
                  + " the interval is drawn (JCGM 101:2008).",
              "C dT/dt = P0 (1 + g t) − UA (T − Ta) − k [ps(T) − e]",
              "Heat balance of the pot; steam pressure by IAPWS-IF97. The range of UA in the fire is"
                  + " a judgement."),
          method(
              "Dry fuel",
              "The moist fuel burnt, less its water; what it takes to dry it and the heat left in"
                  + " the char are taken off as dry fuel of as much heat. Moisture of dry basis is"
                  + " turned into wet basis, w = d / (1 + d). Heating values are those of the sheet;"
                  + " else 19.1\u00a0MJ/kg for wood of conifers, 18.9 of broadleaved trees, 19.0"
                  + " where only wood is told, 18.8 for cones; 29.5 for char.",
              "dry fuel = (m [q (1 − w) − w (h boil − h air + L)] − c q char) / q",
              "Lower heating values of dry wood: Stolarski and others (2022); ISO 17225-1, from"
                  + " memory; of cones: Aniszewska and Gendek; of char: common practice, no source."
                  + " Formulas in the form of the water boiling tests of stove laboratories, from"
                  + " memory."),
          method(
              "Burning rate and firepower",
              "Dry fuel, and its heat, over the time from lit to flame out, which the weighings"
                  + " cover; over the time to the boil or to pot off where the fuel was smothered and"
                  + " weighed then.",
              "firepower = dry fuel × q / t",
              "Heat balance of the fuel."),
          method(
              "Efficiency",
              "Heat that warmed and boiled away the water, over the heat set free. With char: what"
                  + " is left in the char counts as not used. Without: it counts as burnt. None where"
                  + " the pot came off before the fuel was weighed. Pot and stove are not counted"
                  + " as heated.",
              "efficiency = (M (h boil − h start) + (M − M left) L) / (dry fuel × q)",
              "Heat of water by IAPWS; otherwise as dry fuel."),
          method(
              "Specific consumption and fuel per boil",
              "Specific consumption is dry fuel per mass of water left of what was heated, cut to"
                  + " the share of the way to boiling. Fuel per boil is the dry fuel that at the"
                  + " efficiency of the run brings the reference water from its start to the boil.",
              "fuel per boil = M ref (h boil ref − h start ref) / (efficiency × q)",
              "A convention of this report."),
          method(
              "Uncertainty",
              "Each cause of doubt is given a standard uncertainty, and the causes are combined as"
                  + " the root of the sum of squares. What runs share, such as the tolerance of"
                  + " one probe, does not average out and cancels in differences.",
              "JCGM 100:2008 (GUM), equations (11a) and (G.2b)."),
          method(
              "Mean of a build",
              "The mean over the runs that count, with the interval of Student's t. A mean of"
                  + " what only a boil gives is given only where no run that counts failed to boil."
                  + " Runs of which nobody saw the boil count neither as boiled nor as failed.",
              "mean ± t · s / √n, with n − 1 degrees of freedom",
              "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2."),
          method(
              "Hole error",
              "The measured holes are turned (on a base, also shifted) as a whole until they fit"
                  + " their intended places best; then each hole's distance from its place is its"
                  + " deviation, and the RMS over the ring is its hole error. The floor is the RMS"
                  + " that the uncertainty of reading alone would give. True position is twice the"
                  + " deviation.",
              "RMS = √(Σ deviation² / n)",
              "ISO 1101; ASME Y14.5."),
          method(
              "Hole effect",
              "Hole error belongs to a build, so that the build is the unit: five burns of one"
                  + " stove are not five stoves. A weighted line is fitted through the means of"
                  + " builds; its interval has as many degrees of freedom as there are builds,"
                  + " less the terms of the line. Where the burns of each build show that the response"
                  + " does not follow the air as its normalising assumes, air temperature is allowed"
                  + " for as they show it; where there are several designs, so is design; and the"
                  + " sentence says so. Where several rings are asked about, each interval is made"
                  + " wider (Bonferroni), and with builds enough all are put into one line beside.",
              "weight = 1 / (s² between builds + s² between runs / n)",
              "Variance between builds by Mandel and Paule (1970), standard error by Knapp and"
                  + " Hartung (2003); the mixed model by REML, Satterthwaite's degrees of freedom."),
          method(
              "Reading error of holes",
              "What reading adds to an RMS adds in squares, so that of perfect holes is taken off"
                  + " each build's; what its scatter still does to the slope is found by adding more"
                  + " of it in simulation and going back along the curve. It is not tried where"
                  + " rings were placed about as truly as they were read.",
              "RMS² true = RMS² − floor²",
              "SIMEX: Cook and Stefanski (1994), Stefanski and Cook (1995)."),
          method(
              "Differences",
              "Of builds, those very stoves: their runs, scatter pooled over all builds, intervals"
                  + " that hold for all pairs together. Of designs: the means of their builds, scatter"
                  + " pooled over designs. Without pooling as a check beside. Of conditions, such as"
                  + " lids: differences within the builds that had both. Where claims name what they"
                  + " compare with, every other one against that one as well. Two things are called"
                  + " no different only if a difference that does not matter is named and the whole"
                  + " interval of two one-sided tests lies within it.",
              "Tukey and Kramer (1956), Games and Howell (1976), Welch (1947), Dunnett (1955),"
                  + " Schuirmann (1987); effect size by Hedges (1981)."),
          method(
              "Verdict of a claim",
              "Read off the interval: supported if it lies wholly within what is claimed,"
                  + " contradicted if wholly outside, else not settled. With several claims each"
                  + " interval is made wider, so that all of them hold together at the confidence"
                  + " of the study.",
              "confidence of each = 1 − (1 − confidence) / number of claims",
              "Bonferroni."));

  /** What is taken for granted; unmodifiable. */
  public static final List<String> ASSUMPTIONS =
      List.of(
          "Runs are left out for faults of the test alone, and only where the sheet says so: never by"
              + " a rule, and never for a fault of the stove. A run that did not boil is a result."
              + " Batch and fed burns are never taken together: where both are told, those of the"
              + " rarer kind do not count.",
          "The builds stand for others like them; a verdict is about such builds, not about every"
              + " stove of the kind.",
          "Burns of one build scatter about its mean as a normal distribution would, and do not"
              + " depend on each other.",
          "The flame probe sat in the same place in every run. A bead loses heat by radiation and"
              + " reads below the gas about it; only differences between like runs mean much.",
          "Pot and water are equally warm, and boiling stirs the water, so that the plateau tells"
              + " the temperature of all of it.");

  private Methods() {}

  /**
   * How far a bare bead may read low by radiation, and what that range assumes.
   *
   * @param celsius what it reads, °C
   */
  public static String ofBareBead(double celsius, Display show) {
    BeadRadiation bead = BeadRadiation.SMALL_FLAME;
    Interval low = bead.readsLow(celsius);
    Dimension difference = Dimension.TEMPERATURE_DIFFERENCE;
    return "A bare bead at "
        + show.value(celsius, 10, Dimension.TEMPERATURE)
        + " may read "
        + show.number(low.low(), 10, difference)
        + " to "
        + show.value(low.high(), 10, difference)
        + " low, as it radiates: h (T gas − T bead) = ε σ (T bead⁴ − T walls⁴), with an emissivity ε"
        + " of "
        + bead.emissivity().low()
        + " to "
        + bead.emissivity().high()
        + ", heat transfer h of "
        + Math.round(bead.heatTransfer().low())
        + " to "
        + Math.round(bead.heatTransfer().high())
        + " W/(m² K), and walls of "
        + show.number(bead.walls().low(), 10, Dimension.TEMPERATURE)
        + " to "
        + show.value(bead.walls().high(), 10, Dimension.TEMPERATURE)
        + ", all judged. Nothing of this is added to any figure.";
  }

  private static Method method(String figure, String how, String source) {
    return new Method(figure, how, Optional.empty(), source);
  }

  private static Method method(String figure, String how, String formula, String source) {
    return new Method(figure, how, Optional.of(formula), source);
  }
}
