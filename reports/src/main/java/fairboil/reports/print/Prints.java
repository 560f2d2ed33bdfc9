package fairboil.reports.print;

import fairboil.ingest.Study;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.sheet.Ring;
import fairboil.ingest.sheet.RingsSheet;
import fairboil.reports.chart.Slugs;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Draws everything that there is to print for a study: a run sheet, a form for reading holes, a
 * measuring strip for each ring in a wall and a disc for each base. Nothing is read or written: the
 * files are handed back, and the same study gives the same bytes.
 */
public final class Prints {

  /** Distance between divisions below which lines run together, mm. */
  private static final double CLOSEST = 1;

  private final Study study;
  private final Paper paper;
  private final Typefaces typefaces;
  private final List<Finding> findings = new ArrayList<>();

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
   * @param study the study; of its lists only settings, builds and rings are looked at
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
        jobs.stream().flatMap(job -> job.findings().stream()).distinct().sorted().toList());
  }

  private void draw() {
    FormHead run = head("Run sheet");
    add("run-sheet", run, RunSheet.of(run, study, typefaces));
    FormHead holes = head("Reading the holes");
    HoleForm.of(holes, study, typefaces).ifPresent(pdf -> add("hole-form", holes, pdf));
    Owners owners = new Owners(study);
    owners.walls().forEach(this::strip);
    owners.bases().forEach(this::disc);
    if (study.rings().isEmpty()) {
      findings.add(
          Finding.note(
              Place.of(RingsSheet.SCHEMA.file()),
              "no ring of holes is described, so there is no strip to print",
              "give each ring a row there to have strips and discs printed"));
    }
  }

  private void strip(Owners.Group group) {
    Ring ring = group.rings().get(0);
    RingPlan.of(ring, findings)
        .filter(this::hasUsableWrap)
        .ifPresent(
            plan -> {
              FormHead head = head("Measuring strip: ring " + ring.name() + RingWords.air(plan));
              byte[] pdf = StripFile.of(head, plan, group.words(), typefaces);
              add("strip-" + ring.name() + owner(ring), head, pdf);
            });
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
        "ring " + plan.name() + " has no wrap, so its strip cannot be drawn",
        "lay a strip of paper round the can and type its length, such as 314 mm (a diameter will"
            + " not do: cans are not round)");
  }

  private static Finding oddWrap(RingPlan plan, double wrap) {
    return Finding.error(
        plan.ring().row().place(RingsSheet.WRAP),
        "ring "
            + plan.name()
            + " has "
            + plan.divisions()
            + " divisions on a wrap of "
            + Lengths.both(wrap)
            + ", which cannot be drawn",
        "correct the wrap or its unit, or the divisions; a wrap is at most 5 m, and divisions are"
            + " at least 1 mm apart");
  }

  private void disc(Owners.Group group) {
    List<RingPlan> plans =
        group.rings().stream().flatMap(ring -> RingPlan.of(ring, findings).stream()).toList();
    Disc.of(plans, findings)
        .ifPresent(
            disc -> {
              FormHead head = head("Base disc: " + group.title());
              byte[] pdf = DiscFile.of(head, disc, group.words(), typefaces);
              add("base-disc" + owner(group.rings().get(0)), head, pdf);
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
    return new PrintJob(files, findings.stream().distinct().sorted().toList());
  }
}
