package fairboil.analysis.run;

import fairboil.ingest.Study;
import fairboil.ingest.choice.Feed;
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
  Optional<String> apart(RunContext context) {
    Optional<Feed> feed = feedOf(context.run());
    if (feed.isEmpty() || feed.equals(commonest)) {
      return Optional.empty();
    }
    String reason =
        "its feed is “"
            + feed.get().label()
            + "”, and that of most runs “"
            + commonest.orElseThrow().label()
            + "”: the two are never taken together";
    context
        .findings()
        .warning(
            context.place(RunsSheet.FEED),
            "run " + context.run().key().name() + " does not count, as " + reason,
            "make a study of its own of these runs");
    return Optional.of(reason);
  }
}
