package fairboil.ingest;

import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.sheet.Key;
import fairboil.ingest.sheet.Mark;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** The runs of several studies, each of a site: that of its row, else its folder. */
final class PooledRuns {

  private final Map<String, Study> studies;
  private final PooledBuilds builds;
  private final Set<String> repeatedNames;
  private final Set<String> repeatedSites;
  private final Map<Key, Key> keys = new LinkedHashMap<>();
  private final Map<Key, Run> originals = new LinkedHashMap<>();
  private final List<Run> runs = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  private PooledRuns(Map<String, Study> studies, PooledBuilds builds) {
    this.studies = studies;
    this.builds = builds;
    this.repeatedNames =
        PoolNames.repeated(
            studies.values().stream()
                .map(study -> study.runs().stream().map(run -> run.key().name()).toList())
                .toList());
    this.repeatedSites =
        PoolNames.repeated(
            studies.values().stream().map(study -> List.copyOf(sites(study))).toList());
  }

  /**
   * Joins runs.
   *
   * @param studies by folder, all places told from outside it
   * @param builds the builds that were burnt
   */
  static PooledRuns of(Map<String, Study> studies, PooledBuilds builds) {
    PooledRuns pooled = new PooledRuns(studies, builds);
    studies.forEach(pooled::add);
    return pooled;
  }

  private static Set<String> sites(Study study) {
    Set<String> sites = new LinkedHashSet<>();
    study.runs().forEach(run -> run.row().value(RunsSheet.SITE).ifPresent(sites::add));
    return sites;
  }

  private void add(String folder, Study study) {
    for (Run run : study.runs()) {
      String name = run.key().name();
      Key key = new Key(folder, repeatedNames.isEmpty() ? name : folder + " " + name);
      keys.put(run.key(), key);
      originals.put(key, run);
      runs.add(new Run(key, builds.key(run.build()), withSite(run.row(), folder)));
    }
    sites(study).stream().filter(repeatedSites::contains).forEach(site -> tell(study, site));
  }

  private Row withSite(Row row, String folder) {
    Optional<Given<String>> told = row.cell(RunsSheet.SITE);
    if (told.isPresent() && !repeatedSites.contains(told.get().value())) {
      return row;
    }
    String site = told.map(cell -> folder + " " + cell.value()).orElse(folder);
    return row.copy().put(RunsSheet.SITE, Given.of(site, site, row.place(RunsSheet.SITE))).build();
  }

  private void tell(Study study, String site) {
    Place place =
        study.runs().stream()
            .flatMap(run -> run.row().cell(RunsSheet.SITE).stream())
            .filter(cell -> cell.value().equals(site))
            .findFirst()
            .orElseThrow()
            .place();
    findings.add(
        Finding.note(place, PoolSays.TWO_SITES.with(Argument.name(site)), PoolSays.NAME_SITES));
  }

  List<Run> runs() {
    return runs;
  }

  /** The marks of all runs. */
  List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    for (Study study : studies.values()) {
      for (Mark mark : study.marks()) {
        Key run = keys.getOrDefault(mark.run(), mark.run());
        marks.add(new Mark(run, mark.event(), mark.text(), mark.time(), mark.by()));
      }
    }
    return marks;
  }

  /** A run as its own folder knows it. */
  Run original(Key key) {
    return Objects.requireNonNull(originals.get(key));
  }

  List<Finding> findings() {
    return findings;
  }
}
