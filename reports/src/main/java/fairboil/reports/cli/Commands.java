package fairboil.reports.cli;

import fairboil.reports.ReportWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;

/**
 * The commands of the program. Getting to know one takes the parser longer than reading a sheet, so
 * a line that names one gets that one alone.
 */
final class Commands {

  private static final String REPORT = "report";

  private Commands() {}

  /** Whether a line asks for a report. */
  static boolean isReport(String... args) {
    return first(args).equals(REPORT);
  }

  /**
   * Adds the command that a line names, or all if it names none.
   *
   * @param line the parser
   * @param writer writes reports
   * @param args what was typed
   */
  static void add(CommandLine line, ReportWriter writer, String... args) {
    Map<String, Supplier<Object>> all = new LinkedHashMap<>();
    all.put("new", NewCommand::new);
    all.put("check", CheckCommand::new);
    all.put(REPORT, () -> new ReportCommand(writer));
    all.put("plan", PlanCommand::new);
    all.put("print", PrintCommand::new);
    Supplier<Object> named = all.get(first(args));
    if (named != null) {
      line.addSubcommand(named.get());
    } else {
      all.values().forEach(command -> line.addSubcommand(command.get()));
    }
  }

  private static String first(String... args) {
    return args.length == 0 ? "" : args[0];
  }
}
