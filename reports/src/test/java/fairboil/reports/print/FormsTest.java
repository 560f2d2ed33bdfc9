package fairboil.reports.print;

import static org.assertj.core.api.Assertions.assertThat;

import fairboil.ingest.Study;
import fairboil.ingest.choice.BoilMeans;
import fairboil.ingest.choice.Choice;
import fairboil.ingest.choice.DisplayUnits;
import fairboil.ingest.choice.Event;
import fairboil.ingest.choice.StopwatchStart;
import fairboil.ingest.sheet.Column;
import fairboil.ingest.sheet.RingsSheet;
import fairboil.ingest.sheet.RunsSheet;
import fairboil.ingest.sheet.Settings;
import fairboil.ingest.sheet.StopwatchSheet;
import fairboil.reports.template.PlannedRun;
import fairboil.reports.words.Cautions;
import java.lang.reflect.Field;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FormsTest {

  private static String text(Study study, String name) {
    return Prints.of(study, Paper.A4).files().stream()
        .filter(file -> file.name().startsWith(name))
        .map(file -> Page.text(file.pdf()))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyFieldHasItsPlaceOnce() {
    List<Column<?>> columns = new ArrayList<>();
    RunFields.groups().forEach(group -> columns.addAll(group.columns()));
    assertThat(columns).containsExactlyInAnyOrderElementsOf(RunsSheet.SCHEMA.columns());
  }

  @Test
  void everyFieldIsPrintedWithItsMeaning() {
    String text = squeezed(text(Demo.study(), "run-sheet"));
    for (Column<?> column : RunsSheet.SCHEMA.columns()) {
      assertThat(text).contains(squeezed(column.name()));
    }
    for (Column<?> column : StopwatchSheet.SCHEMA.columns()) {
      assertThat(text).contains(squeezed(column.name()), squeezed(column.meaning()));
    }
    for (Event event : Event.values()) {
      assertThat(text).contains(squeezed(event.label()));
    }
  }

  /** A field with a fixed set of answers has them to tick; told by the type of its column. */
  @Test
  void everyChoiceIsThereToTick() throws IllegalAccessException {
    int choices = 0;
    for (Field field : RunsSheet.class.getFields()) {
      Class<?> answers = answers(field.getGenericType());
      if (Choice.class.isAssignableFrom(answers)) {
        List<String> labels = new ArrayList<>();
        for (Object answer : answers.getEnumConstants()) {
          labels.add(((Choice) answer).label());
        }
        assertThat(RunFields.choices((Column<?>) field.get(null)))
            .as(field.getName())
            .isEqualTo(labels);
        choices++;
      }
    }
    assertThat(choices).isGreaterThanOrEqualTo(8);
  }

  /** What the cells of a column are read as. */
  private static Class<?> answers(Type type) {
    return type instanceof ParameterizedType column
            && column.getActualTypeArguments()[0] instanceof Class<?> answers
        ? answers
        : Object.class;
  }

  @Test
  void cautionsAndOrderOfStepsAreThere() {
    String text = squeezed(text(Demo.study(), "run-sheet"));
    for (Cautions.Caution caution : Cautions.POINTS) {
      assertThat(text).contains(squeezed(caution.text()));
    }
    assertThat(text)
        .contains(
            squeezed(Cautions.RULE),
            squeezed("Leave the pot on 60 s after it boils"),
            squeezed("Weigh cold"));
  }

  @Test
  void cautionsGoWithStripsAndDiscs() {
    assertThat(Safety.drilling()).hasSize(2);
    for (String name : List.of("strip-", "base-disc")) {
      String text = squeezed(text(Demo.study(), name));
      Safety.drilling().forEach(caution -> assertThat(text).contains(squeezed(caution)));
    }
  }

  @Test
  void settingsOfTheStudyAreFollowed() {
    Study study =
        Sheets.study()
            .settings(
                s ->
                    s.put(Settings.STOPWATCH_STARTED_AT, StopwatchStart.POT_ON)
                        .put(Settings.BOIL_MEANS, BoilMeans.ROLLING)
                        .put(Settings.SHOW_UNITS, DisplayUnits.US))
            .read();
    assertThat(text(study, "run-sheet"))
        .contains("stopwatch starts at “pot on”", "seen to boil: rolling", "°F", "oz", "ft");
  }

  @Test
  void eachBuildHasItsFormWithARowForEachHole() {
    Study study =
        Sheets.study()
            .build("K1", "two-wall")
            .build("M1", "one-wall")
            .ring(
                "upper",
                4,
                r ->
                    r.put(RingsSheet.DESIGN, "two-wall")
                        .put(RingsSheet.WRAP, Sheets.mm(240))
                        .put(RingsSheet.SKIPPED, List.of(2, 5)))
            .read();
    String text = text(study, "hole-form");
    assertThat(text)
        .contains("build K1", "Ring upper", "reading 1", "reading 2")
        .doesNotContain("M1");
    // Divisions 1, 3, 4 and 6 of 6 on a wrap of 240 mm.
    assertThat(text).contains("1 0.0 2 80.0 3 120.0 4 200.0");
  }

  @Test
  void correctionOfReadingsIsToldInWords() {
    assertThat(text(Demo.study(), "strip-upper"))
        .contains("true length = length read × bar ÷ 100 mm")
        .contains("With a bar of 98.5 mm, a reading of 150.0 counts as 147.8 mm");
    assertThat(150.0 * 98.5 / 100).isEqualTo(147.75);
  }

  @Test
  void runningOrderHasALineForEachBurn() {
    List<PlannedRun> runs = new ArrayList<>();
    for (int i = 1; i <= 60; i++) {
      runs.add(new PlannedRun(i, (i + 3) / 4, Optional.of("North"), "K" + i % 4, "K" + i + "-9"));
    }
    for (Paper paper : Paper.values()) {
      Printed form = OrderForm.of("my study", runs, paper);
      String text = Page.text(form.pdf());
      assertThat(form.name()).isEqualTo("running-order-" + paper.slug() + ".pdf");
      assertThat(text).contains("Block 1, at North", "Block 15, at North", "carbon monoxide");
      runs.forEach(run -> assertThat(text).contains(run.order() + " " + run.name()));
      assertThat(OrderForm.of("my study", runs, paper).pdf()).isEqualTo(form.pdf());
    }
  }

  /** Text as it is drawn may break anywhere. */
  private static String squeezed(String text) {
    return text.replaceAll("\\s+", "");
  }
}
