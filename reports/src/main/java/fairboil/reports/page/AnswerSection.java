package fairboil.reports.page;

import fairboil.analysis.claim.ClaimResult.Verdict;
import fairboil.analysis.group.BoilCount;
import fairboil.analysis.run.RunResult;
import fairboil.reports.chart.Picture;
import fairboil.reports.page.view.AnswerView;
import fairboil.reports.page.view.FactView;
import fairboil.reports.page.view.FigureView;
import fairboil.reports.words.AnswerWords;
import fairboil.reports.words.Display;
import fairboil.reports.words.EffectWords;
import fairboil.reports.words.FindingGroup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The question, its answer and the one chart that shows it. */
final class AnswerSection {

  private AnswerSection() {}

  static AnswerView of(Materials from) {
    AnswerWords words = AnswerWords.of(from.results());
    return new AnswerView(
        words.question(),
        words.answer(),
        from.results().holeEffects().stream().anyMatch(effect -> effect.headline().isPresent())
            ? EffectWords.of(from.results()).origin()
            : "",
        facts(from),
        chart(from).map(picture -> figure(from, picture)));
  }

  /** The chart of the first hole effect; else the first of all charts. */
  static Optional<Picture> chart(Materials from) {
    Optional<Picture> effect =
        from.results().holeEffects().stream()
            .findFirst()
            .flatMap(first -> EffectCharts.of(from, first));
    return effect.or(() -> from.model().charts().stream().findFirst());
  }

  private static FigureView figure(Materials from, Picture picture) {
    return from.results().holeEffects().stream()
        .filter(effect -> EffectCharts.key(effect).equals(picture.key()))
        .findFirst()
        .map(effect -> EffectCharts.figure(from, effect, picture))
        .orElseGet(() -> StudyCharts.figure(from, picture));
  }

  private static List<FactView> facts(Materials from) {
    List<RunResult> runs = from.results().runs();
    long counted = runs.stream().filter(run -> run.inclusion().included()).count();
    BoilCount boils = BoilCount.of(runs);
    List<FactView> facts = new ArrayList<>();
    int builds = from.results().builds().size();
    facts.add(new FactView(builds == 1 ? "build" : "builds", "" + builds, designs(from)));
    facts.add(
        new FactView(
            counted == 1 ? "run that counts" : "runs that count",
            "" + counted,
            "of " + runs.size()));
    facts.add(boiled(boils));
    if (!from.results().claims().isEmpty()) {
      facts.add(claims(from));
    }
    int findings = from.results().findings().size();
    facts.add(
        new FactView(
            findings == 1 ? "finding" : "findings",
            Display.whole(findings),
            findings == 0 ? "" : FindingGroup.counts(from.results().findings())));
    return facts;
  }

  /** Of the runs of which it is known. */
  private static FactView boiled(BoilCount boils) {
    String unseen = boils.unseen() == 0 ? "" : boils.unseen() + " not seen";
    return boils.judged() == 0
        ? new FactView(
            "boiled", "not seen", boils.unseen() == 0 ? "" : "in any of " + boils.unseen())
        : new FactView(
            "boiled",
            "" + boils.boiled(),
            "of " + boils.judged() + (unseen.isEmpty() ? "" : ", " + unseen));
  }

  private static String designs(Materials from) {
    long designs =
        from.results().builds().stream()
            .flatMap(build -> build.build().design().stream())
            .distinct()
            .count();
    return designs == 0 ? "" : "of " + designs + (designs == 1 ? " design" : " designs");
  }

  private static FactView claims(Materials from) {
    long supported =
        from.results().claims().stream()
            .filter(claim -> claim.verdict() == Verdict.SUPPORTED)
            .count();
    return new FactView(
        supported == 1 ? "claim supported" : "claims supported",
        "" + supported,
        "of " + from.results().claims().size());
  }
}
