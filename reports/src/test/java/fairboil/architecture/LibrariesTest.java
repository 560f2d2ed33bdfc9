package fairboil.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass.Predicates;
import com.tngtech.archunit.core.domain.properties.HasName;
import com.tngtech.archunit.core.domain.properties.HasOwner;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.io.Serializable;
import java.io.UncheckedIOException;

/**
 * Each library has its rooms, so that replacing one touches no other code. To let a library into
 * another package, add the package to its line.
 */
@AnalyzeClasses(packages = "fairboil", importOptions = DoNotIncludeTests.class)
final class LibrariesTest {

  @ArchTest
  static final ArchRule openCsv =
      only(
          "com.opencsv..",
          "fairboil.ingest.grid..",
          "fairboil.ingest.log..",
          "fairboil.reports.table..");

  @ArchTest
  static final ArchRule fastexcel =
      only("org.dhatim.fastexcel..", "fairboil.ingest.grid.workbook..");

  @ArchTest
  static final ArchRule commonsText =
      only("org.apache.commons.text..", "fairboil.ingest.sheet..", "fairboil.analysis.claim..");

  @ArchTest
  static final ArchRule tablesaw =
      only(
          "tech.tablesaw..",
          "fairboil.ingest.log..",
          "fairboil.analysis.run..",
          "fairboil.analysis.trace..",
          "fairboil.reports.table..");

  @ArchTest
  static final ArchRule commonsStatistics =
      only("org.apache.commons.statistics..", "fairboil.analysis..");

  @ArchTest static final ArchRule hipparchus = only("org.hipparchus..", "fairboil.analysis..");

  @ArchTest
  static final ArchRule xchart = only("org.knowm.xchart..", "fairboil.reports.chart.xchart..");

  /**
   * What stands for a value is drawn by XChart; what is drawn besides is a marker that XChart puts
   * in place, the key, leaders of moments, and paper behind words.
   */
  @ArchTest
  static final ArchRule marksOfCharts =
      noClasses()
          .that()
          .resideInAPackage("fairboil.reports.chart..")
          .and()
          .haveNameNotMatching(
              ".*\\.(GlyphMarker|SheetHeader|MomentLanes|DirectLabels|PanelPainter)(\\$.*)?")
          .should()
          .callMethodWhere(
              JavaCall.Predicates.target(
                      HasOwner.Predicates.With.owner(Predicates.assignableTo("java.awt.Graphics")))
                  .and(
                      JavaCall.Predicates.target(
                          HasName.Predicates.nameMatching(
                              "draw|fill|draw(Line|Rect|Oval|Arc|Polyline|Polygon)|fill(Oval|Arc|Polygon)"))));

  @ArchTest static final ArchRule pngencoder = only("com.pngencoder..", "fairboil.reports.chart..");

  @ArchTest
  static final ArchRule pdfBox =
      only("org.apache.pdfbox..", "fairboil.reports.print..", "fairboil.reports.chart.xchart..");

  @ArchTest
  static final ArchRule pdfBoxGraphics =
      only("de.rototor.pdfbox..", "fairboil.reports.chart.xchart..");

  @ArchTest
  static final ArchRule fontBox = only("org.apache.fontbox..", "fairboil.reports.print..");

  @ArchTest
  static final ArchRule jackson = only("com.fasterxml.jackson..", "fairboil.reports.table..");

  @ArchTest static final ArchRule jte = only("gg.jte..", "fairboil.reports.page..");

  @ArchTest
  static final ArchRule progressBar = only("me.tongfei.progressbar..", "fairboil.reports.cli..");

  @ArchTest static final ArchRule picocli = only("picocli..", "fairboil.reports.cli..");

  /** What others bring along is not ours to lean on: it goes when they do. */
  @ArchTest
  static final ArchRule nothingThatComesThroughAnotherLibrary =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "com.fasterxml.aalto..",
              "com.google.common..",
              "com.ibm.icu..",
              "com.univocity..",
              "it.unimi.dsi..",
              "org.apache.commons.beanutils..",
              "org.apache.commons.collections..",
              "org.apache.commons.codec..",
              "org.apache.commons.collections4..",
              "org.apache.commons.compress..",
              "org.apache.commons.io..",
              "org.apache.commons.lang3..",
              "org.apache.commons.math3..",
              "org.jline..",
              "org.codehaus.stax2..",
              "org.roaringbitmap..");

  /** Numbers in, numbers out; a thrown {@code IOException} of a log may pass through. */
  @ArchTest
  static final ArchRule analysisTouchesNoFile =
      noClasses()
          .that()
          .resideInAPackage("fairboil.analysis..")
          .should()
          .dependOnClassesThat(
              resideInAnyPackage(
                      "java.io..", "java.nio.file..", "java.nio.channels..", "java.net..")
                  .and(not(Predicates.type(IOException.class)))
                  .and(not(Predicates.type(UncheckedIOException.class)))
                  .and(not(Predicates.type(Serializable.class))));

  @ArchTest static final ArchRule painting = only("java.awt..", "fairboil.reports.chart..");

  @ArchTest static final ArchRule pictures = only("javax.imageio..", "fairboil.reports.chart..");

  private static ArchRule only(String library, String... rooms) {
    return noClasses()
        .that(not(resideInAnyPackage(rooms)))
        .should()
        .dependOnClassesThat(resideInAPackage(library))
        .as(library + " is used in " + String.join(", ", rooms) + " only")
        .allowEmptyShould(true);
  }
}
