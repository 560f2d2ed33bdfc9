package fairboil.reports.cli;

import fairboil.analysis.Results;
import fairboil.analysis.StudyAnalysis;
import fairboil.analysis.measure.Measure;
import fairboil.analysis.plan.Asked;
import fairboil.analysis.plan.Plan;
import fairboil.analysis.plan.PlanException;
import fairboil.analysis.plan.Plans;
import fairboil.analysis.plan.Wish;
import fairboil.ingest.OpenedStudy;
import fairboil.ingest.StudyException;
import fairboil.ingest.StudyReader;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.quantity.DecimalMark;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.quantity.QuantityText;
import fairboil.ingest.quantity.Reading;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.Settings;
import fairboil.reports.PlanWriter;
import fairboil.reports.chart.ChartException;
import fairboil.reports.output.OutputFolder;
import fairboil.reports.words.Display;
import fairboil.reports.words.PlanWords;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code fairboil plan STUDY --out DIR}: how many builds and runs, and a running order. */
@Command(
    name = "plan",
    description = "Tells how many stoves and burns the next tests need, and in which order.",
    footer = {
      "",
      "Sizes carry their unit. Scatter that is not stated is that of the study's own runs.",
      "Examples:",
      "  fairboil plan my-study --difference \"25 K\" --out my-plan",
      "  fairboil plan my-study --hole-effect \"8 K\" --largest-error \"3 mm\" --out my-plan",
      "  fairboil plan my-study --measure \"boil time\" --burn-sd \"20 s\" --stove-sd \"25 s\""
          + " --half-width \"15 s\" --out my-plan"
    })
final class PlanCommand implements Callable<Integer> {

  /** What is said of options holds no values, so that units do not matter. */
  private static final Display ON_COMMAND_LINE = Display.in(DisplayUnits.METRIC);

  @Spec private CommandSpec spec;
  @Mixin private StudyParameter study;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "Folder to write the plan to.")
  @SuppressWarnings("NullAway.Init") // it is required
  private Path out;

  @Option(
      names = "--measure",
      paramLabel = "NAME",
      description = "What is measured (default: normalised peak).")
  private String measure = Measure.NORMALISED_PEAK.label();

  @Option(
      names = "--half-width",
      paramLabel = "SIZE",
      description = "Wanted: the mean of a design, known to so much on either side.")
  private @Nullable String halfWidth;

  @Option(
      names = "--difference",
      paramLabel = "SIZE",
      description = "Wanted: to find a difference of that size between designs.")
  private @Nullable String difference;

  @Option(
      names = "--margin",
      paramLabel = "SIZE",
      description = "Wanted: to find designs that do not differ to be no different within this.")
  private @Nullable String margin;

  @Option(
      names = "--hole-effect",
      paramLabel = "SIZE",
      description = "Wanted: to find a hole effect of that size for each mm of RMS hole error.")
  private @Nullable String holeEffect;

  @Option(
      names = "--largest-error",
      paramLabel = "LENGTH",
      description = "The largest RMS hole error to drill on purpose.")
  private @Nullable String largestError;

  @Option(
      names = "--power",
      paramLabel = "SHARE",
      description = "How often it is to come true (default: 80 %%; 90 %% is usual too).")
  private String power = "80 %";

  @Option(
      names = "--burn-sd",
      paramLabel = "SIZE",
      description = "Scatter from burn to burn of one stove, a standard deviation.")
  private @Nullable String burnSd;

  @Option(
      names = "--stove-sd",
      paramLabel = "SIZE",
      description = "Scatter from stove to stove of one design, a standard deviation.")
  private @Nullable String stoveSd;

  @Option(
      names = "--builds",
      paramLabel = "N",
      description = "Stoves in the running order (default: as many as are needed).")
  private @Nullable Integer builds;

  @Option(
      names = "--runs",
      paramLabel = "N",
      description = "Burns of each stove in the running order (default: as advised).")
  private @Nullable Integer runs;

  @Option(
      names = "--site",
      paramLabel = "NAME",
      description = "A site that the stoves are sent round to; once for each.")
  private List<String> sites = new ArrayList<>();

  @Override
  public Integer call() throws StudyException, ChartException, IOException {
    Asked asked = asked();
    OpenedStudy opened = StudyReader.open(study.folder());
    Results results;
    Plan plan;
    FaultFile faults;
    try (OutputFolder folder = OutputFolder.open(out, List.of(study.folder()))) {
      results = StudyAnalysis.of(opened.study(), opened.logs());
      plan = planned(results, asked);
      results = results.with(PlanWriter.write(results, plan, folder));
      faults = FaultFile.in(folder, out, results.faults());
      folder.commit();
    }
    List<Finding> findings =
        Stream.concat(opened.study().told(plan.findings()).stream(), results.findings().stream())
            .distinct()
            .sorted()
            .toList();
    FindingList list =
        new FindingList(findings, results.study().settings().get(Settings.SHOW_UNITS));
    PrintWriter err = spec.commandLine().getErr();
    list.printWorst(err);
    err.println(list.summary());
    err.flush();
    PrintWriter result = spec.commandLine().getOut();
    Display display = Display.in(opened.study().settings().get(Settings.SHOW_UNITS));
    new PlanWords(plan, display).answer().forEach(result::println);
    result.println("The plan: " + out.resolve("index.html"));
    faults.tell(spec.commandLine().getErr());
    return faults.status(list.status()).code();
  }

  private Plan planned(Results results, Asked asked) {
    try {
      return Plans.of(results, asked);
    } catch (PlanException e) {
      Display display = Display.in(results.study().settings().get(Settings.SHOW_UNITS));
      throw new ParameterException(spec.commandLine(), display.say(e.reason()) + ".", e);
    }
  }

  private Asked asked() {
    Measure asked =
        Measure.named(measure)
            .filter(each -> each.level() == Measure.Level.RUN)
            .orElseThrow(() -> wrong("--measure", "there is no measure “" + measure + "” of runs"));
    Dimension size = asked.dimension().ofDifference();
    List<Wish> wishes = new ArrayList<>();
    wish(Wish.Kind.HALF_WIDTH, "--half-width", halfWidth, size, 1).ifPresent(wishes::add);
    wish(Wish.Kind.DIFFERENCE, "--difference", difference, size, 1).ifPresent(wishes::add);
    wish(Wish.Kind.MARGIN, "--margin", margin, size, 1).ifPresent(wishes::add);
    if (holeEffect != null
        && asked != Measure.NORMALISED_PEAK
        && asked != Measure.NORMALISED_BOIL_TIME) {
      throw wrong("--hole-effect", "it is one on normalised peak or normalised boil time");
    }
    double metre = Unit.MILLIMETRE.toHeld(1, Dimension.LENGTH);
    wish(Wish.Kind.HOLE_EFFECT, "--hole-effect", holeEffect, size, 1 / metre)
        .ifPresent(wishes::add);
    double share = read("--power", power, Dimension.RATIO).orElse(0.8);
    if (!(share >= 0.5) || !(share <= 0.99)) {
      throw wrong("--power", "it must lie between 50 % and 99 %");
    }
    return new Asked(
        asked,
        wishes,
        share,
        read("--burn-sd", burnSd, size),
        read("--stove-sd", stoveSd, size),
        read("--largest-error", largestError, Dimension.LENGTH),
        count("--builds", builds, 500),
        count("--runs", runs, 50),
        sites);
  }

  private Optional<Wish> wish(
      Wish.Kind kind, String option, @Nullable String text, Dimension dimension, double factor) {
    OptionalDouble size = read(option, text, dimension);
    if (size.isPresent() && !(size.getAsDouble() > 0)) {
      throw wrong(option, "it must be more than 0");
    }
    return size.isPresent()
        ? Optional.of(new Wish(kind, size.getAsDouble() * factor))
        : Optional.empty();
  }

  private OptionalDouble read(String option, @Nullable String text, Dimension dimension) {
    if (text == null) {
      return OptionalDouble.empty();
    }
    Reading<Quantity> reading =
        QuantityText.read(text, List.of(dimension), Optional.empty(), DecimalMark.UNKNOWN);
    if (reading instanceof Reading.Read<Quantity> read && read.value().value() >= 0) {
      return OptionalDouble.of(read.value().value());
    }
    throw reading instanceof Reading.Refused<Quantity> no
        ? wrong(option, ON_COMMAND_LINE.say(no.problem()) + "; " + ON_COMMAND_LINE.say(no.remedy()))
        : wrong(option, "it must be a size with its unit, not below 0");
  }

  private OptionalInt count(String option, @Nullable Integer number, int most) {
    if (number == null) {
      return OptionalInt.empty();
    }
    if (number < 1 || number > most) {
      throw wrong(option, "it must lie between 1 and " + most);
    }
    return OptionalInt.of(number);
  }

  private ParameterException wrong(String option, String why) {
    return new ParameterException(spec.commandLine(), option + ": " + why + ".");
  }
}
