package fairboil.ingest.log;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.ingest.choice.Role;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.grid.StudyFolder;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Each column of a log comes back under its own name with its own values, or the log is refused or
 * asked about: random tables, seeded so that a failure repeats.
 */
class OwnNameTest {

  @TempDir private Path folder;

  private OpenedLog open(String text) throws IOException {
    Files.writeString(folder.resolve("log.csv"), text);
    OpenedLog opened =
        new LogReader(StudyFolder.at(folder), Runs.STUDY, List.of()).open(Runs.of("log.csv"));
    if (opened.log().isEmpty()) {
      assertThat(opened.findings()).as(text).anyMatch(OwnNameTest::isError);
    }
    return opened;
  }

  private static boolean isError(Finding finding) {
    return finding.severity() == Severity.ERROR;
  }

  // Measured: 99.8 % of the whole tables are read; the rest are asked about.
  @Test
  @Timeout(value = 600, unit = TimeUnit.SECONDS)
  void namesStandOverTheirOwnCells() throws IOException {
    assertThat(shareRead(new NamedTables(20170117), 7_000)).isGreaterThan(0.97);
    assertThat(shareRead(new NamedTables(8), 7_000)).isGreaterThan(0.97);
  }

  // The shape of all is looked at, and one of ten is read whole: that is slower.
  private double shareRead(NamedTables tables, int count) throws IOException {
    int whole = 0;
    int read = 0;
    for (int i = 0; i < count; i++) {
      NamedTables.Table table = tables.next();
      checkShape(table);
      if (i % 10 == 0) {
        OpenedLog opened = open(table.text());
        opened.log().ifPresent(log -> checkValues(log, table));
        whole += table.whole() ? 1 : 0;
        read += table.whole() && opened.log().isPresent() ? 1 : 0;
      }
    }
    return (double) read / whole;
  }

  private static void checkShape(NamedTables.Table table) throws IOException {
    Optional<TableShape> shape = accepted(table.text());
    if (shape.isPresent() && shape.get().names() > 0) {
      for (int column = 0; column < shape.get().names(); column++) {
        checkColumn(shape.get(), column, table);
      }
    }
  }

  private static Optional<TableShape> accepted(String text) throws IOException {
    Place file = Place.of("log.csv");
    return ShapeChoice.find(file, Head.of(new Replay(new StringReader(text))))
        .filter(found -> ShapeCheck.accepts(found, new Remarks(file)));
  }

  private static void checkColumn(TableShape shape, int column, NamedTables.Table table) {
    expect(table.names().get(column), shape.name(column), table.text());
    for (Sample.Line row : shape.rows()) {
      String cell = table.rows().get(row.number() - 2).get(column);
      expect(cell, row.cell(column), table.text());
    }
  }

  private static void checkValues(Log log, NamedTables.Table table) {
    for (Channel channel : log.channels()) {
      int column = table.names().indexOf(channel.name());
      assertThat(column).as(channel.name() + "\n" + table.text()).isNotNegative();
      for (int i = 0; i < log.time().size(); i++) {
        int row = (int) Math.round(log.time().seconds().getDouble(i) / 5);
        double value = channel.values().getDouble(i);
        String text = Double.isNaN(value) ? "" : Double.toString(value);
        expect(number(table.rows().get(row).get(column)), text, table.text());
      }
    }
  }

  // Descriptions are made only for a failure: there are millions of cells.
  private static void expect(String wanted, String actual, String text) {
    if (!wanted.equals(actual)) {
      assertThat(actual).as(text).isEqualTo(wanted);
    }
  }

  private static String number(String cell) {
    return cell.isEmpty() ? "" : Double.toString(Double.parseDouble(cell.replace(',', '.')));
  }

  // Measured: 15 % are read; most have unequal numbers of names and cells.
  @Test
  @Timeout(value = 600, unit = TimeUnit.SECONDS)
  void noFigureStandsUnderAnotherName() throws IOException {
    TornTables tables = new TornTables(52);
    int count = 6_000;
    int read = 0;
    for (int i = 0; i < count; i++) {
      String text = tables.next();
      if (accepted(text).isEmpty()) {
        continue;
      }
      Optional<Log> log = open(text).log();
      read += log.isPresent() ? 1 : 0;
      log.flatMap(found -> found.channel(Role.FLAME)).ifPresent(c -> check(c, text, 700, 800));
      log.flatMap(found -> found.channel(Role.WATER)).ifPresent(c -> check(c, text, 20, 100));
    }
    assertThat((double) read / count).isGreaterThan(0.12);
  }

  private static void check(Channel channel, String text, double from, double to) {
    for (double value : channel.values().asDoubleArray()) {
      if (value < from || value > to) {
        assertThat(value).as(channel.name() + "\n" + text).isBetween(from, to);
      }
    }
  }
}
