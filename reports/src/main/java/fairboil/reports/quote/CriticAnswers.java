package fairboil.reports.quote;

import fairboil.analysis.Results;
import fairboil.analysis.claim.ClaimResult;
import fairboil.analysis.effect.EffectChecks;
import fairboil.analysis.effect.HoleEffect;
import fairboil.analysis.run.BoilState;
import fairboil.analysis.run.RunResult;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.sheet.ClaimsSheet;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import fairboil.reports.words.CheckWords;
import fairboil.reports.words.ClaimWords;
import fairboil.reports.words.Display;
import fairboil.reports.words.EffectWords;
import fairboil.reports.words.ExcludedWords;
import fairboil.reports.words.FairnessTable;
import fairboil.reports.words.FindingGroup;
import fairboil.reports.words.FindingWords;
import fairboil.reports.words.Methods;
import fairboil.reports.words.Plural;
import fairboil.reports.words.RunWords;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a critic may ask, answered from the data. */
final class CriticAnswers {

  private static final int MOST_FINDINGS = 50;

  private final Results results;
  private final Markdown text = new Markdown();

  private CriticAnswers(Results results) {
    this.results = results;
  }

  static String of(Results results, String citation) {
    CriticAnswers answers = new CriticAnswers(results);
    answers.text.title("Answers for a critic");
    answers.leftOut();
    answers.failed();
    answers.fair();
    answers.written();
    answers.otherWays();
    answers.trouble();
    answers.assumptions();
    answers.text.heading("Can this be checked?");
    answers.text.paragraph(
        "Yes: data.zip holds every file that was read and the command that makes the report anew,"
            + " byte for byte.");
    answers.text.paragraph(citation);
    return answers.text.toString();
  }

  private void leftOut() {
    text.heading("What was left out, and would it change the answer?");
    Display display = Display.in(results.study().settings().get(Settings.SHOW_UNITS));
    List<List<String>> rows = new ArrayList<>();
    for (RunResult run : results.runs()) {
      RunWords.exclusion(run.inclusion(), display)
          .ifPresent(
              reason ->
                  rows.add(
                      List.of(
                          name(run),
                          run.build().key().name(),
                          RunWords.counts(run.inclusion()),
                          reason)));
    }
    if (rows.isEmpty()) {
      text.paragraph("No run was left out.");
      return;
    }
    text.paragraph(
        "Runs are left out for faults of the test, where the sheet says so, and where batch and fed"
            + " burns would be mixed; never for what they found."
            + (RunWords.anyLost(results.runs())
                ? " Others are left out because the program failed at them."
                : ""));
    text.table(List.of("run", "build", "what", "reason"), rows);
    text.list(ExcludedWords.verdicts(results));
    ExcludedRows with = new ExcludedRows(results);
    if (!with.means().isEmpty()) {
      text.paragraph("Means of the builds concerned, without those runs and with them:");
      text.table(List.of("build", "measure", "without, as reported", "with"), with.means());
    }
    if (!with.effects().isEmpty()) {
      text.paragraph("The effect of hole position, without those runs and with them:");
      text.table(List.of("response", "ring", "without, as reported", "with"), with.effects());
    }
  }

  private void failed() {
    text.heading("What failed?");
    List<List<String>> rows =
        results.runs().stream()
            .filter(RunResult::didNotBoil)
            .map(
                run ->
                    List.of(
                        name(run),
                        run.build().key().name(),
                        run.state().label(),
                        RunWords.counts(run.inclusion())))
            .toList();
    if (rows.isEmpty()) {
      text.paragraph("In no run is the water known not to have boiled.");
    } else {
      text.paragraph(
          "A run that did not boil is a result. A stove of which such a run counts has no plain"
              + " mean of what only a boil gives: to skip its failures would flatter it.");
      text.table(List.of("run", "build", "outcome", "in the results"), rows);
    }
    long unseen =
        results.runs().stream().filter(run -> run.state() instanceof BoilState.NotSeen).count();
    if (unseen > 0) {
      text.paragraph(
          "Of "
              + Plural.of(unseen, "run")
              + " nobody and nothing saw whether the water boiled. They count neither as boiled nor"
              + " as failed.");
    }
  }

  private void fair() {
    text.heading("Was it a fair comparison?");
    List<FairnessTable> tables = FairnessTable.of(results);
    if (tables.isEmpty()) {
      text.paragraph("Nothing was compared.");
    }
    for (FairnessTable table : tables) {
      List<String> columns = new ArrayList<>(List.of(table.level()));
      columns.addAll(table.conditions().keySet());
      List<List<String>> rows = new ArrayList<>();
      for (int i = 0; i < table.names().size(); i++) {
        List<String> row = new ArrayList<>(List.of(table.names().get(i)));
        for (List<String> values : table.conditions().values()) {
          row.add(values.get(i));
        }
        rows.add(row);
      }
      text.table(columns, rows);
    }
    text.list(FairnessTable.remarks(results));
  }

  private void written() {
    text.heading("When was each claim written down?");
    if (results.claims().isEmpty()) {
      text.paragraph("The study makes no claims.");
      return;
    }
    List<LocalDate> days =
        results.runs().stream()
            .flatMap(run -> run.run().row().value(RunsSheet.DATE).stream())
            .sorted()
            .toList();
    text.paragraph(
        days.isEmpty()
            ? "No run tells its day, so that claims cannot be set before or after the burns."
            : "The first burn of which the day is told was on "
                + days.get(0)
                + ", the last on "
                + days.get(days.size() - 1)
                + ".");
    text.table(
        List.of("claim", "written on", "and so", "verdict"),
        results.claims().stream().map(claim -> written(claim, days)).toList());
  }

  private static List<String> written(ClaimResult claim, List<LocalDate> days) {
    Optional<LocalDate> day = claim.claim().row().value(ClaimsSheet.WRITTEN_ON);
    return List.of(
        claim.claim().key().name(),
        day.map(LocalDate::toString).orElse("not told"),
        day.filter(written -> !days.isEmpty())
            .map(written -> ClaimWords.beside(written, days.get(0), days.get(days.size() - 1)))
            .orElse("not known"),
        claim.verdict().label());
  }

  private void otherWays() {
    EffectWords effects = EffectWords.of(results);
    CheckWords checks = CheckWords.of(results);
    for (HoleEffect effect : results.holeEffects()) {
      text.heading(
          "Does hole position matter for "
              + effect.response().label()
              + ", ring "
              + effect.ring()
              + "?");
      text.paragraph(effects.sentence(effect));
      effects.naive(effect).ifPresent(text::paragraph);
      text.list(
          results.effectChecks().stream()
              .filter(check -> isOf(check, effect))
              .flatMap(check -> checks.sentences(check).stream())
              .toList());
    }
  }

  private static boolean isOf(EffectChecks check, HoleEffect effect) {
    return check.response() == effect.response() && check.ring().equals(effect.ring());
  }

  private void trouble() {
    FindingWords words =
        new FindingWords(Display.in(results.study().settings().get(Settings.SHOW_UNITS)));
    text.heading("What was wrong with the data?");
    if (results.findings().isEmpty()) {
      text.paragraph("Nothing was found.");
      return;
    }
    text.paragraph(Plural.sentence(FindingGroup.counts(results.findings())) + ".");
    List<String> grave =
        results.findings().stream()
            .filter(finding -> finding.severity() != Severity.NOTE)
            .map(words::line)
            .toList();
    text.list(grave.stream().limit(MOST_FINDINGS).toList());
    if (grave.size() > MOST_FINDINGS) {
      text.paragraph(
          "And " + (grave.size() - MOST_FINDINGS) + " more, in tables/findings.csv of the report.");
    }
  }

  private void assumptions() {
    text.heading("What is taken for granted?");
    text.list(Methods.ASSUMPTIONS);
  }

  private static String name(RunResult run) {
    return run.run().key().name();
  }
}
