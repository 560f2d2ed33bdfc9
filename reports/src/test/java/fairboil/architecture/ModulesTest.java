package fairboil.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Imports run one way, {@code ingest <- analysis <- reports}, and never in a circle. */
@AnalyzeClasses(packages = "fairboil", importOptions = DoNotIncludeTests.class)
final class ModulesTest {

  private static final String INGEST = "fairboil.ingest..";
  private static final String ANALYSIS = "fairboil.analysis..";
  private static final String REPORTS = "fairboil.reports..";

  @ArchTest
  static final ArchRule ingestKnowsNeitherAnalysisNorReports =
      noClasses()
          .that()
          .resideInAPackage(INGEST)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(ANALYSIS, REPORTS);

  @ArchTest
  static final ArchRule analysisDoesNotKnowReports =
      noClasses()
          .that()
          .resideInAPackage(ANALYSIS)
          .should()
          .dependOnClassesThat()
          .resideInAPackage(REPORTS);

  @ArchTest
  static final ArchRule noPackagesDependOnEachOtherInACircle =
      slices().matching("fairboil.(**)").should().beFreeOfCycles();

  /** The other rules would hold if they looked at nothing. */
  @ArchTest
  static void theRulesSeeEveryModule(JavaClasses classes) {
    assertThat(classes)
        .extracting(JavaClass::getPackageName)
        .anyMatch(name -> name.startsWith("fairboil.ingest"))
        .anyMatch(name -> name.startsWith("fairboil.analysis"))
        .anyMatch(name -> name.startsWith("fairboil.reports"))
        .noneMatch(name -> name.startsWith("fairboil.architecture"));
  }
}
