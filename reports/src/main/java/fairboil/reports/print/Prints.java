package fairboil.reports.print;

import fairboil.analysis.fault.Faults;
import fairboil.ingest.Study;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.quantity.Unit;
import fairboil.ingest.sheet.BuildsSheet;
import fairboil.ingest.sheet.Ring;
import fairboil.ingest.sheet.RingsSheet;
import fairboil.ingest.sheet.Settings;
import fairboil.ingest.sheet.SheetSchema;
import fairboil.reports.chart.Slugs;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * Draws everything that there is to print for a study: a run sheet, a form for reading holes, a
 * measuring strip for each ring in a wall and a disc for each base. Nothing is read or written: the
 * files are handed back, and the same study gives the same bytes.
 */
public final class Prints {

  /** The sheets that prints are made of. */
  public static final List<SheetSchema> SHEETS =
      List.of(Settings.SCHEMA, BuildsSheet.SCHEMA, RingsSheet.SCHEMA);

  /** Distance between divisions below which lines run together, mm. */
  private static final double CLOSEST = 1;

  /** Lengths are told to 0.1 mm; in m. */
  private static final double TENTH = 0.2e-3;

  private final Study study;
  private final Paper paper;
  private final Typefaces typefaces;
  private final List<Finding> findings = new ArrayList<>();
  private final Faults faults = new Faults();

  /** Named as they would be if all names were good and different. */
  private final List<Printed> drawn = new ArrayList<>();

  private Prints(Study study, Paper paper, Typefaces typefaces) {
    this.study = study;
    this.paper = paper;
    this.typefaces = typefaces;
  }

  /**
   * Draws the files of a study for one paper.
   *
   * @param study the study; of its lists only {@link #SHEETS} and names of builds are looked at
   * @param paper the paper
   */
  public static PrintJob of(Study study, Paper paper) {
    try (Typefaces typefaces = Typefaces.open()) {
      Prints prints = new Prints(study, paper, typefaces);
      prints.draw();
      return prints.job();
    }
  }

  /** Draws the files of a study for several papers; what could not be drawn is told once. */
  public static PrintJob of(Study study, List<Paper> papers) {
    List<PrintJob> jobs = papers.stream().map(paper -> of(study, paper)).toList();
    return new PrintJob(
        jobs.stream().flatMap(job -> job.files().stream()).toList(),
        jobs.stream().flatMap(job -> job.findings().stream()).distinct().sorted().toList(),
        jobs.stream().flatMap(job -> job.faults().stream()).distinct().toList());
  }

  private void draw() {
    contain("the run sheet", "run-sheet", this::runSheet);
    contain("the form for reading holes", "hole-form", this::holeForm);
    Owners owners = new Owners(study);
    owners.walls().forEach(wall -> containRing("the measuring strip", wall, this::strip));
    owners.bases().forEach(base -> containRing("the base disc", base, this::disc));
    if (study.rings().isEmpty()) {
      findings.add(
          Finding.warning(
              Place.of(RingsSheet.SCHEMA.file()),
              PrintSays.NO_RINGS.with(),
              PrintSays.ADD_RINGS.with()));
    }
  }

  private void contain(String part, String file, Runnable work) {
    faults.isDone(part, Place.of(file + "-" + paper.slug() + ".pdf"), work);
  }

  private void containRing(String what, Owners.Group group, Consumer<Owners.Group> work) {
    Ring ring = group.rings().get(0);
    faults.isDone(what + " of ring " + ring.name(), ring.row().place(), () -> work.accept(group));
  }

  private void runSheet() {
    FormHead head = head("Run sheet");
    add("run-sheet", head, RunSheet.of(head, study, typefaces));
  }

  private void holeForm() {
    FormHead head = head("Reading the holes");
    HoleForm.of(head, study, typefaces).ifPresent(pdf -> add("hole-form", head, pdf));
  }

  private void strip(Owners.Group group) {
    Ring ring = group.rings().get(0);
    String wish = "strip-" + ring.name() + owner(ring);
    Undrawn undrawn = Undrawn.of(study, group.rings());
    if (!undrawn.isEmpty()) {
      undrawn(wish, undrawn, group);
      return;
    }
    RingPlan.of(ring, findings)
        .filter(this::hasUsableWrap)
        .ifPresent(
            plan -> {
              FormHead head = head("Measuring strip: ring " + ring.name() + RingWords.air(plan));
              byte[] pdf = StripFile.of(head, plan, group.words(), typefaces);
              add(wish, head, pdf);
              if (plan.height().isPresent() && !plan.isDatumTold()) {
                findings.add(noDatum(plan));
              }
            });
  }

  /** The paper that says why there is no strip or disc, under the name that it would have. */
  private void undrawn(String wish, Undrawn undrawn, Owners.Group group) {
    FormHead head = head("Not drawn: " + undrawn.names());
    add(wish, head, undrawn.file(head, group.words(), typefaces));
    findings.addAll(undrawn.findings());
  }

  private static Finding noDatum(RingPlan plan) {
    return Finding.warning(
        plan.ring().row().place(RingsSheet.DATUM),
        PrintSays.NO_DATUM.with(Argument.name(plan.name())),
        PrintSays.TYPE_DATUM.with());
  }

  private boolean hasUsableWrap(RingPlan plan) {
    OptionalDouble wrap = plan.wrap();
    if (wrap.isEmpty()) {
      findings.add(noWrap(plan));
      return false;
    }
    double length = wrap.getAsDouble();
    boolean usable =
        length > 0 && length <= StripLayout.LONGEST && length / plan.divisions() >= CLOSEST;
    if (!usable) {
      findings.add(oddWrap(plan, length));
    }
    return usable;
  }

  private static Finding noWrap(RingPlan plan) {
    return Finding.error(
        plan.ring().row().place(RingsSheet.WRAP),
        PrintSays.NO_WRAP.with(Argument.name(plan.name())),
        PrintSays.MEASURE_WRAP.with(Argument.typed(0.314, 1e-3, Dimension.LENGTH)));
  }

  private static Finding oddWrap(RingPlan plan, double wrap) {
    return Finding.error(
        plan.ring().row().place(RingsSheet.WRAP),
        PrintSays.ODD_WRAP.with(
            Argument.name(plan.name()), Argument.count(plan.divisions()), length(wrap)),
        PrintSays.CORRECT_WRAP.with(length(StripLayout.LONGEST), length(CLOSEST)));
  }

  private static Argument length(double millimetres) {
    double metres = Unit.MILLIMETRE.toHeld(millimetres, Dimension.LENGTH);
    return Argument.value(metres, TENTH, Dimension.LENGTH);
  }

  private void disc(Owners.Group group) {
    String wish = "base-disc" + owner(group.rings().get(0));
    Undrawn undrawn = Undrawn.of(study, group.rings());
    List<RingPlan> plans =
        group.rings().stream()
            .filter(ring -> !undrawn.has(ring.name()))
            .flatMap(ring -> RingPlan.of(ring, findings).stream())
            .toList();
    if (plans.isEmpty() && !undrawn.isEmpty()) {
      undrawn(wish, undrawn, group);
      return;
    }
    findings.addAll(undrawn.findings());
    Disc.of(plans, findings)
        .ifPresent(
            disc -> {
              FormHead head = head("Base disc: " + group.title());
              add(wish, head, DiscFile.of(head, disc, undrawn, group.words(), typefaces));
            });
  }

  /** The design or build that a row names, as part of a file's name. */
  private static String owner(Ring ring) {
    Optional<String> owner =
        ring.row().value(RingsSheet.BUILD).or(() -> ring.row().value(RingsSheet.DESIGN));
    return owner.map(name -> "-" + name).orElse("");
  }

  private FormHead head(String title) {
    return new FormHead(paper, title, study.name());
  }

  private void add(String wish, FormHead head, byte[] pdf) {
    drawn.add(new Printed(wish, head.title(), pdf));
  }

  private PrintJob job() {
    List<String> slugs = Slugs.of(drawn.stream().map(Printed::name).toList());
    List<Printed> files = new ArrayList<>();
    for (int i = 0; i < drawn.size(); i++) {
      files.add(drawn.get(i).named(slugs.get(i) + "-" + paper.slug() + ".pdf"));
    }
    faults.all().forEach(fault -> findings.add(fault.finding()));
    return new PrintJob(files, findings.stream().distinct().sorted().toList(), faults.all());
  }
}
