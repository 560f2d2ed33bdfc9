package fairboil.ingest.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import fairboil.ingest.dimension.Dimension;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Templates, their arguments, and what becomes of them. */
final class MessageTest {

  private static final Template ROWS = Template.of("{count|row} of {name} {clause}");
  private static final Template ARE_EMPTY = Template.of("are empty");

  @Test
  void countsCarryTheirNoun() {
    Template batches = Template.of("{count|batch|batches}");
    assertThat(batches.with(Argument.count(1))).hasToString("1 batch");
    assertThat(batches.with(Argument.count(2))).hasToString("2 batches");
    assertThat(batches.with(new Argument.Count(1, 3))).hasToString("1 to 3 batches");
    assertThat(batches.with(Argument.count(0))).hasToString("0 batches");
  }

  @Test
  void cellsAreQuotedAndListsJoined() {
    Template cells = Template.of("not {cell}, but {list}");
    assertThat(
            cells.with(
                Argument.cell("a\nb"),
                Argument.anyOf(
                    List.of(Argument.word("x"), Argument.word("y"), Argument.name("z")))))
        .hasToString("not “a b”, but x, y or z");
  }

  @Test
  void messagesStandWithinMessages() {
    Message rows =
        ROWS.with(Argument.count(2), Argument.name("runs"), Argument.clause(ARE_EMPTY.with()));
    assertThat(rows).hasToString("2 rows of runs are empty");
    assertThat(rows.says(ROWS)).isTrue();
    assertThat(rows.map(each -> each instanceof Argument.Name ? Argument.name("pots") : each))
        .hasToString("2 rows of pots are empty");
  }

  @Test
  void valuesKeepTheirDimensionAndDatesTheirForm() {
    Template hot = Template.of("{value} on {date}, {date}, {share}");
    Message message =
        hot.with(
            Argument.value(98.25, 0.1, Dimension.TEMPERATURE),
            Argument.date(LocalDate.of(2026, 3, 2)),
            Argument.moment(LocalDateTime.of(2026, 3, 2, 9, 5, 7)),
            Argument.share(0.5));
    assertThat(message).hasToString("98.25 °C on 2026-03-02, 2026-03-02 09:05:07, 50.0 %");
  }

  @Test
  void aSheetMayBeATab() {
    Template in = Template.of("type it in {sheet}");
    assertThat(in.with(Argument.sheet("runs.csv"))).hasToString("type it in runs.csv");
    assertThat(in.with(new Argument.Sheet("runs.csv", Optional.of("study.xlsx"))))
        .hasToString("type it in the tab runs of study.xlsx");
  }

  @Test
  void argumentsMustFit() {
    assertThatIllegalArgumentException().isThrownBy(() -> ROWS.with(Argument.count(2)));
    assertThatIllegalArgumentException().isThrownBy(() -> ARE_EMPTY.with(Argument.count(2)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Template.of("{count}").with(Argument.name("2")));
    assertThatIllegalArgumentException().isThrownBy(() -> Template.of("{colour}"));
    assertThatIllegalArgumentException().isThrownBy(() -> Template.of("{count"));
  }

  @Test
  void equalWordingIsOneTemplate() {
    assertThat(Template.of("are empty")).isEqualTo(ARE_EMPTY).hasSameHashCodeAs(ARE_EMPTY);
    assertThat(ARE_EMPTY.with()).isEqualTo(Template.of("are empty").with());
  }

  @Test
  void nothingSaysNothing() {
    assertThat(Message.NONE.isEmpty()).isTrue();
    assertThat(ARE_EMPTY.with().isEmpty()).isFalse();
  }
}
