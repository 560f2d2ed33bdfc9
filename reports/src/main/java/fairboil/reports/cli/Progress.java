package fairboil.reports.cli;

import java.io.Console;
import java.io.PrintStream;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import me.tongfei.progressbar.DelegatingProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/**
 * How far long work has come, as one line of a terminal that goes away when it is done. Work that
 * is over soon shows nothing, and does not pay for what would show it. Steps may be made by several
 * threads.
 */
final class Progress implements AutoCloseable {

  private static final long SOON = TimeUnit.MILLISECONDS.toNanos(1_500);
  private static final int WIDTH = 78;

  private final Optional<PrintStream> terminal;
  private final String what;
  private final long all;
  private final long soon;
  private final long start = System.nanoTime();
  private long done;
  private Optional<ProgressBar> bar = Optional.empty();

  Progress(Optional<PrintStream> terminal, String what, long all, long soon) {
    this.terminal = terminal;
    this.what = what;
    this.all = all;
    this.soon = soon;
  }

  /** Progress on the terminal, or unseen where there is none: in a pipe, or written to a file. */
  static Progress of(String what, long all) {
    Optional<PrintStream> terminal = isTerminal() ? Optional.of(System.err) : Optional.empty();
    return new Progress(terminal, what, all, SOON);
  }

  /** A console may stand for a pipe since Java 22, which therefore lets it be asked. */
  @SuppressWarnings("SystemConsoleNull")
  private static boolean isTerminal() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (Boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException e) {
      return true;
    }
  }

  /** One more of them is done. */
  synchronized void step() {
    done++;
    if (bar.isEmpty() && terminal.isPresent() && System.nanoTime() - start > soon) {
      bar = terminal.map(this::bar);
    }
    bar.ifPresent(shown -> shown.stepTo(done));
  }

  /** Plain characters without colour, so that any terminal can show it. */
  private ProgressBar bar(PrintStream out) {
    return new ProgressBarBuilder()
        .setTaskName(what)
        .setInitialMax(all)
        .setStyle(ProgressBarStyle.ASCII)
        .setUpdateIntervalMillis(200)
        .setConsumer(new DelegatingProgressBarConsumer(line -> show(line, out), WIDTH))
        .build();
  }

  private static void show(String line, PrintStream out) {
    out.print('\r' + line);
    out.flush();
  }

  /** Takes the line away. */
  @Override
  public synchronized void close() {
    bar.ifPresent(
        shown -> {
          shown.close();
          terminal.ifPresent(out -> show(" ".repeat(WIDTH) + '\r', out));
        });
    bar = Optional.empty();
  }
}
