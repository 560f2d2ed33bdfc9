package fairboil.analysis.run;

import fairboil.ingest.Study;
import fairboil.ingest.choice.Feed;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.Message;
import fairboil.ingest.finding.Template;
import fairboil.ingest.sheet.Run;
import fairboil.ingest.sheet.RunsSheet;
import java.util.Optional;

/**
 * How the fires of a study were fed. A batch burns down, a fed fire goes on as it is fed: the two
 * are never pooled, so that where both are told, runs of the rarer kind do not count.
 *
 * @param commonest how most included runs were fed; batch where as many were fed
 */
record Feeds(Optional<Feed> commonest) {

  private static final Template APART =
      Template.of("its feed is {cell}, and that of most runs {cell}: the two are never mixed");
  private static final Template DOES_NOT_COUNT =
      Template.of("run {name} does not count, as {clause}");
  private static final Template OWN_STUDY = Template.of("put these runs into a study of their own");

  static Feeds of(Study study) {
    long batch = count(study, Feed.BATCH);
    long fed = count(study, Feed.FED);
    return batch + fed == 0
        ? new Feeds(Optional.empty())
        : new Feeds(Optional.of(fed > batch ? Feed.FED : Feed.BATCH));
  }

  private static long count(Study study, Feed feed) {
    return study.runs().stream()
        .filter(run -> run.row().value(RunsSheet.EXCLUDE).isEmpty())
        .filter(run -> feedOf(run).filter(feed::equals).isPresent())
        .count();
  }

  private static Optional<Feed> feedOf(Run run) {
    return run.row().value(RunsSheet.FEED);
  }

  /** Why a run does not count with the others, told as a finding too; empty if it does. */
  Optional<Message> apart(RunContext context) {
    Optional<Feed> feed = feedOf(context.run());
    if (feed.isEmpty() || feed.equals(commonest)) {
      return Optional.empty();
    }
    Message reason =
        APART.with(
            Argument.cell(feed.get().label()), Argument.cell(commonest.orElseThrow().label()));
    context
        .findings()
        .warning(
            context.place(RunsSheet.FEED),
            DOES_NOT_COUNT.with(Argument.name(context.run().key().name()), Argument.clause(reason)),
            OWN_STUDY.with());
    return Optional.of(reason);
  }
}
