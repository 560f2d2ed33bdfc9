package fairboil.reports.table;

import static fairboil.reports.table.TableColumn.text;

import fairboil.analysis.protocol.RunProtocol;
import fairboil.reports.words.ProtocolWords;
import java.util.List;

/** {@code protocol.csv}: whether each run kept to what the group agreed. */
final class ProtocolTable {

  static final TableSchema<RunProtocol> SCHEMA =
      new TableSchema<>(
          "protocol.csv",
          "a run, where a group agreed on a protocol",
          List.of(
              text("run", "name of the run", run -> run.run().name()),
              text(
                  "within_protocol",
                  "whether it kept to what was agreed: yes or no",
                  run -> run.isWithin() ? "yes" : "no"),
              text("reason", "in what it did not", ProtocolWords::reasons)));

  private ProtocolTable() {}
}
