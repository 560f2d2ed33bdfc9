package fairboil.analysis.layout;

import static fairboil.analysis.TestStudy.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairboil.analysis.TestStudy;
import fairboil.ingest.dimension.Dimension;
import fairboil.ingest.finding.Argument;
import fairboil.ingest.finding.CellFix;
import fairboil.ingest.finding.Finding;
import fairboil.ingest.finding.Place;
import fairboil.ingest.finding.Severity;
import fairboil.ingest.finding.Voice;
import fairboil.ingest.quantity.Given;
import fairboil.ingest.quantity.Quantity;
import fairboil.ingest.sheet.HolesSheet;
import fairboil.ingest.sheet.RingsSheet;
import fairboil.ingest.sheet.Row;
import fairboil.ingest.sheet.Settings;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.IntUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Rings round a wall: the arithmetic against worked values, the ring found back however numbered.
 */
class WallRingTest {

  /** 360 mm round, so that a millimetre is a degree. */
  private static TestStudy ring6() {
    return new TestStudy().build("A", "one").wall("upper", 6, 360);
  }

  /**
   * Nominal 60k degrees, measured 2.0, 61.5, 118.9, 183.2, 240.4, 300.8: circular mean of the
   * deviations by numpy 1.24, angle(mean(exp(1j * deviation))).
   */
  @Test
  void rotationIsTheCircularMean() {
    double[] measured = {2.0, 61.5, 118.9, 183.2, 240.4, 300.8};
    double[] residuals = {0.8666, 0.3666, -2.2334, 2.0666, -0.7334, -0.3334};
    TestStudy study = ring6();
    for (int i = 0; i < 6; i++) {
      study.hole("A", "upper", i + 1, measured[i], 15);
    }
    RingResult ring = only(study);
    assertThat(Math.toDegrees(ring.rotation().orNaN())).isCloseTo(1.13335063, within(1e-8));
    double squares = 0;
    for (int i = 0; i < 6; i++) {
      assertThat(ring.holes().get(i).alongError() * 1e3).isCloseTo(residuals[i], within(6e-5));
      squares += residuals[i] * residuals[i];
    }
    assertThat(ring.rms().orNaN() * 1e3).isCloseTo(Math.sqrt(squares / 6), within(1e-4));
    assertThat(ring.largest().orNaN() * 1e3).isCloseTo(2.2334, within(1e-4));
    assertThat(ring.rms().ifKnown().orElseThrow().standardUncertainty())
        .isCloseTo(0.3e-3 / Math.sqrt(6), within(1e-12));
  }

  /** The same over the join of the strip: the naive mean of differences would be 59.85. */
  @Test
  void rotationOverTheJoin() {
    double[] measured = {359.0, 58.5, 121.0, 179.2, 241.0, 300.4};
    TestStudy study = ring6();
    for (int i = 0; i < 6; i++) {
      study.hole("A", "upper", i + 1, measured[i], 15);
    }
    assertThat(Math.toDegrees(only(study).rotation().orNaN())).isCloseTo(-0.14999881, within(1e-8));
  }

  /** A print whose bar of 100 mm measures 98 mm shows 60 / 0.98 where there are 60 mm. */
  @Test
  void placesReadFromAPrintAreCorrectedByItsBar() {
    TestStudy study = ring6();
    double[] off = {0, 1.2, -0.4, 0.3, -0.8, 0.6};
    TestStudy printed = ring6();
    for (int i = 0; i < 6; i++) {
      double along = 60 * i + off[i];
      int number = i + 1;
      study.hole("A", "upper", number, along, 15);
      printed.hole(
          "A",
          "upper",
          number,
          row ->
              row.put(HolesSheet.ALONG, mm(along / 0.98))
                  .put(HolesSheet.HEIGHT, mm(15 / 0.98))
                  .put(HolesSheet.DIAMETER, mm(6))
                  .put(HolesSheet.BAR, mm(98)));
    }
    assertThat(only(printed).rms().orNaN()).isCloseTo(only(study).rms().orNaN(), within(1e-12));
    assertThat(only(printed).heightOffset().orNaN())
        .isCloseTo(only(study).heightOffset().orNaN(), within(1e-12));
  }

  @Test
  void barThatNoPrinterMakesIsToldAndNotUsed() {
    TestStudy study = ring6();
    for (int i = 0; i < 6; i++) {
      double along = 60.0 * i;
      study.hole(
          "A",
          "upper",
          i + 1,
          row ->
              row.put(HolesSheet.ALONG, mm(along))
                  .put(HolesSheet.HEIGHT, mm(15))
                  .put(HolesSheet.BAR, mm(10)));
    }
    LayoutResult result = HoleLayout.of(study.finish());
    assertThat(result.findings()).extracting(Finding::severity).contains(Severity.ERROR);
    assertThat(result.rings().get(0).rms().orNaN()).isCloseTo(0, within(1e-12));
  }

  @Test
  void heightsCountFromTheDatum() {
    TestStudy study = ring6();
    double[] heights = {16, 15, 15.5, 14.5, 16.5, 15.5};
    for (int i = 0; i < 6; i++) {
      study.hole("A", "upper", i + 1, 60 * i + 7, heights[i]);
    }
    RingResult ring = only(study);
    assertThat(ring.heightOffset().orNaN() * 1e3).isCloseTo(0.5, within(1e-9));
    // squares 1, 0, 0.25, 0.25, 2.25, 0.25
    assertThat(ring.rms().orNaN() * 1e3).isCloseTo(Math.sqrt(4.0 / 6), within(1e-9));
    assertThat(ring.spacingSd().orNaN()).isCloseTo(0, within(1e-12));
    // sigma 0.3 mm, one number fitted to six holes
    assertThat(ring.rmsFloor().orNaN() * 1e3).isCloseTo(0.3 * Math.sqrt(2 - 1.0 / 6), within(1e-9));
  }

  /** However a person starts and goes round, a ring with gaps in it is found back. */
  @Test
  void numbersStartAnywhereAndGoEitherWay() {
    List<IntUnaryOperator> numberings =
        List.of(i -> i, i -> (i + 4) % 10, i -> 9 - i, i -> Math.floorMod(3 - i, 10));
    for (IntUnaryOperator numbering : numberings) {
      for (int direction = 1; direction >= -1; direction -= 2) {
        RingResult ring = only(skippedRing(numbering, direction));
        assertThat(ring.rms().orNaN() * 1e3).isCloseTo(knownRms(), within(1e-3));
        assertThat(ring.holes()).hasSize(10);
      }
    }
  }

  /** Twelve divisions, two left out unevenly, so that each start differs. */
  private static TestStudy skippedRing(IntUnaryOperator numbering, int direction) {
    TestStudy study = new TestStudy().build("A", "one");
    study.ring(
        "upper",
        10,
        row ->
            row.put(RingsSheet.WRAP, mm(360))
                .put(RingsSheet.HEIGHT, mm(15))
                .put(RingsSheet.DIVISIONS, 12)
                .put(RingsSheet.SKIPPED, List.of(3, 8)));
    for (int i = 0; i < 10; i++) {
      double along = direction * (30.0 * DIVISIONS[i] + ERRORS[i]) + 100;
      study.hole(
          "A",
          "upper",
          numbering.applyAsInt(i) + 1,
          Math.floorMod((long) (along * 1000), 360000L) / 1000.0,
          15);
    }
    return study;
  }

  private static final int[] DIVISIONS = {0, 1, 3, 4, 5, 6, 8, 9, 10, 11};
  private static final double[] ERRORS = {1, -1, 2, -2, 0.5, -0.5, 1.5, -1.5, 0, 0};

  private static double knownRms() {
    double squares = 0;
    for (double error : ERRORS) {
      squares += error * error;
    }
    return Math.sqrt(squares / ERRORS.length);
  }

  /** Many drilled rings of known scatter, read without error: the RMS comes back within 1 %. */
  @Test
  void knownScatterComesBack() {
    Random random = new Random(11);
    double truth = 0;
    double found = 0;
    for (int trial = 0; trial < 400; trial++) {
      TestStudy study = new TestStudy().build("A", "one").wall("upper", 16, 314);
      double turn = 314 * random.nextDouble();
      double squares = 0;
      for (int i = 0; i < 16; i++) {
        double along = random.nextGaussian();
        double height = random.nextGaussian();
        squares += along * along + height * height;
        double place = ((314.0 / 16 * i + along + turn) % 314 + 314) % 314;
        study.hole("A", "upper", i + 1, place, 15 + height);
      }
      truth += squares;
      double rms = only(study).rms().orNaN() * 1e3;
      found += 16 * rms * rms;
    }
    // the rotation takes one of the 32 coordinates out
    assertThat(Math.sqrt(found / truth)).isCloseTo(Math.sqrt(31.0 / 32), within(0.01));
  }

  /** Of hole 4 nobody knows how far it is from hole 2 when the gap of hole 3 is not there. */
  @Test
  void behindAHoleThatIsNotThereGapsTellNoPlace() {
    TestStudy study = ring6();
    for (int number : new int[] {1, 2, 4, 5, 6}) {
      study.hole(
          "A",
          "upper",
          number,
          row -> row.put(HolesSheet.GAP, mm(60)).put(HolesSheet.HEIGHT, mm(15)));
    }
    LayoutResult result = HoleLayout.of(study.finish());
    assertThat(result.rings().get(0).holes()).extracting(HoleError::number).containsExactly(1, 2);
    assertThat(result.rings().get(0).largest().orNaN()).isCloseTo(0, within(1e-12));
    assertThat(result.findings())
        .extracting(finding -> finding.problem().toString())
        .contains("hole 4 of ring upper has no place along the wrap, so it is left out");
  }

  @Test
  void gapsAddUpAndClose() {
    TestStudy study = ring6();
    double[] gaps = {60.5, 59.5, 61, 60, 60, 62};
    for (int i = 0; i < 6; i++) {
      Quantity gap = mm(gaps[i]);
      study.hole(
          "A", "upper", i + 1, row -> row.put(HolesSheet.GAP, gap).put(HolesSheet.HEIGHT, mm(15)));
    }
    LayoutResult layout = HoleLayout.of(study.finish());
    assertThat(layout.findings())
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Severity.WARNING);
              assertThat(finding.problem().says(WallSays.GAPS_LONGER)).isTrue();
              Argument.Value by = (Argument.Value) finding.problem().arguments().get(2);
              assertThat(by.held()).isCloseTo(3e-3, within(1e-9));
            });
    // spread: each gap times 360/363; gap errors 0, -0.99.. and so on have mean 0
    double stretch = 360.0 / 363;
    double squares = 0;
    for (double gap : gaps) {
      squares += Math.pow(gap * stretch - 60, 2);
    }
    assertThat(layout.rings().get(0).spacingSd().orNaN() * 1e3)
        .isCloseTo(Math.sqrt(squares / 5), within(1e-9));
  }

  @Test
  void twoReadingsAreLaidOntoEachOtherAndAveraged() {
    TestStudy study = ring6();
    for (int i = 0; i < 6; i++) {
      int number = i + 1;
      double first = i == 0 ? 2 : 0;
      double second = i == 0 ? 1 : 0;
      study.hole("A", "upper", number, 60 * i + 5 + first, 15);
      study.hole(
          "A",
          "upper",
          number,
          row ->
              row.put(HolesSheet.READING, 2)
                  .put(HolesSheet.ALONG, mm((60 * number + 295 + second) % 360))
                  .put(HolesSheet.HEIGHT, mm(15)));
    }
    RingResult ring = only(study);
    // hole 1 is 1.5 mm off, the others 0, before the mean is taken out; turning the second strip
    // onto the first spreads 1/6 mm
    assertThat(ring.largest().orNaN() * 1e3).isCloseTo(1.5 * 5 / 6, within(0.01));
    assertThat(ring.rmsFloor().orNaN() * 1e3)
        .isCloseTo(0.3 / Math.sqrt(2) * Math.sqrt(2 - 1.0 / 6), within(1e-9));
  }

  @Test
  void readingsThatDifferTooMuchAreAFinding() {
    TestStudy study = ring6();
    for (int i = 0; i < 6; i++) {
      int number = i + 1;
      study.hole("A", "upper", number, 60 * i, 15);
      study.hole(
          "A",
          "upper",
          number,
          row ->
              row.put(HolesSheet.READING, 2)
                  .put(HolesSheet.ALONG, mm(60 * (number - 1) + (number % 2 == 0 ? 2 : 4)))
                  .put(HolesSheet.HEIGHT, mm(15)));
    }
    assertThat(HoleLayout.of(study.finish()).findings())
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.problem().toString()).contains("two readings");
              assertThat(finding.mend().orElseThrow().texts(Voice.RAW))
                  .containsEntry("setting", "hole reading uncertainty");
            });
  }

  @Test
  void theUncertaintyOfReadingIsSetWhereItStands() {
    Row.Builder settings = Row.at(Place.of("study.csv"));
    Place cell = Place.of("study.csv", 7, "value");
    Row made =
        settings.put(Settings.HOLE_READING_UNCERTAINTY, Given.of(mm(0.2), "0.2 mm", cell)).build();
    assertThat(new ReadingUncertainty(made).sigma()).isCloseTo(0.2e-3, within(1e-12));
    assertThat(new ReadingUncertainty(made).setTo(1e-3))
        .isEqualTo(
            new CellFix(
                Place.of("study.csv", 7),
                Map.of("value", Argument.typed(1e-3, 1e-5, Dimension.LENGTH))));
    Row none = Row.at(Place.of("study.csv")).build();
    assertThat(new ReadingUncertainty(none).setTo(1e-3).cells().keySet())
        .containsExactly("setting", "value");
  }

  @Test
  void badRowsAreFindingsAndTheRestIsJudged() {
    TestStudy study = ring6();
    for (int i = 0; i < 4; i++) {
      study.hole("A", "upper", i + 1, 60 * i, 15);
    }
    study.hole("A", "upper", 2, 61, 15);
    study.hole("A", "upper", 9, 61, 15);
    study.hole("A", "upper", 5, 2400, 15);
    study.hole("A", "upper", 6, 300, 150);
    study.hole("A", "lower", 1, 300, 15);
    LayoutResult layout = HoleLayout.of(study.finish());
    assertThat(layout.rings())
        .singleElement()
        .satisfies(ring -> assertThat(ring.holes()).hasSize(4));
    assertThat(layout.findings())
        .extracting(Finding::toString)
        .anySatisfy(text -> assertThat(text).contains("line 6, column hole", "already"))
        .anySatisfy(text -> assertThat(text).contains("line 7", "no hole 9"))
        .anySatisfy(text -> assertThat(text).contains("line 8, column along", "is at 2.4"))
        .anySatisfy(text -> assertThat(text).contains("line 9, column height", "off in height"))
        .anySatisfy(text -> assertThat(text).contains("no ring lower"))
        .anySatisfy(text -> assertThat(text).contains("holes 5, 6", "not measured"));
  }

  @Test
  void aHoleNearItsNeighboursPlaceIsCountedAndSaid() {
    TestStudy study = ring6();
    for (int i = 0; i < 6; i++) {
      study.hole("A", "upper", i + 1, 60 * i + (i == 3 ? 40 : 0), 15);
    }
    LayoutResult layout = HoleLayout.of(study.finish());
    assertThat(layout.rings().get(0).holes()).hasSize(6);
    assertThat(layout.findings())
        .singleElement()
        .satisfies(
            finding -> assertThat(finding.problem().toString()).contains("more than half the way"));
  }

  @Test
  void noWrapOrNoAgreementIsAFinding() {
    TestStudy noWrap = new TestStudy().build("A", "one").ring("upper", 6, row -> row);
    noWrap.hole("A", "upper", 1, 5, 15);
    assertThat(HoleLayout.of(noWrap.finish()).rings()).isEmpty();
    assertThat(HoleLayout.of(noWrap.finish()).findings())
        .singleElement()
        .satisfies(finding -> assertThat(finding.remedy().toString()).contains("0.314 m"));

    TestStudy disagreeing =
        new TestStudy().build("A", "one").ring("upper", 6, row -> row.put(RingsSheet.DIVISIONS, 8));
    disagreeing.hole("A", "upper", 1, 5, 15);
    assertThat(HoleLayout.of(disagreeing.finish()).rings()).isEmpty();
  }

  @Test
  void withoutHeightsTheWrapAloneIsJudged() {
    TestStudy study = ring6();
    for (int i = 0; i < 6; i++) {
      Quantity along = mm(60 * i + (i % 2));
      study.hole("A", "upper", i + 1, row -> row.put(HolesSheet.ALONG, along));
    }
    LayoutResult layout = HoleLayout.of(study.finish());
    RingResult ring = layout.rings().get(0);
    assertThat(ring.rms().orNaN() * 1e3).isCloseTo(0.5, within(1e-6));
    assertThat(ring.rmsFloor().orNaN() * 1e3).isCloseTo(0.3 * Math.sqrt(5.0 / 6), within(1e-9));
    assertThat(ring.heightOffset().isKnown()).isFalse();
    assertThat(layout.findings()).hasSize(1);
  }

  private static RingResult only(TestStudy study) {
    LayoutResult layout = HoleLayout.of(study.finish());
    assertThat(layout.findings()).isEmpty();
    assertThat(layout.rings()).hasSize(1);
    return layout.rings().get(0);
  }
}
