package fairboil.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.regex.Pattern;

/**
 * Same study, same bytes: no code asks for the locale, zone, clock, chance or console of the
 * machine it happens to run on. Members are given as patterns of their full names, such as {@code
 * java.lang.String.format(java.lang.String, [Ljava.lang.Object;)}.
 */
@AnalyzeClasses(packages = "fairboil", importOptions = DoNotIncludeTests.class)
final class AmbientTest {

  private static final DescribedPredicate<JavaClass> EVERYWHERE = DescribedPredicate.alwaysTrue();

  private static final DescribedPredicate<JavaClass> OUTSIDE_THE_COMMAND_LINE =
      not(resideInAnyPackage("fairboil.reports.cli.."));

  private static final DescribedPredicate<JavaClass> OUTSIDE_MAIN =
      not(name("fairboil.reports.cli.Main"));

  @ArchTest
  static final ArchRule noDefaultLocale =
      none(
          EVERYWHERE,
          "the machine's locale (give Locale.ROOT)",
          "java\\.util\\.Locale\\.getDefault\\(.*",
          "java\\.lang\\.String\\.to(Lower|Upper)Case\\(\\)",
          "java\\.lang\\.String\\.format\\(java\\.lang\\.String, .*",
          "java\\.lang\\.String\\.formatted\\(.*",
          "java\\.io\\.Print(Stream|Writer)\\.(format|printf)\\(java\\.lang\\.String, .*",
          "java\\.util\\.Formatter\\.(<init>|format)\\((?!.*java\\.util\\.Locale).*",
          "java\\.util\\.Scanner\\.<init>\\(.*",
          // All of java.text but Bidi, which goes by the letters alone.
          "java\\.text\\.(?!Bidi\\.)\\w+\\.(<init>|get\\w*Instance)\\((?!.*(java\\.util\\.Locale"
              + "|java\\.text\\.DecimalFormatSymbols|java\\.text\\.DateFormatSymbols)).*",
          "java\\.time\\.format\\.DateTimeFormatter\\.ofPattern\\(java\\.lang\\.String\\)",
          "java\\.time\\.format\\.DateTimeFormatter\\.ofLocalized.*",
          "java\\.time\\.format\\.DateTimeFormatterBuilder\\.toFormatter\\(\\)");

  @ArchTest
  static final ArchRule noDefaultZone =
      none(
          EVERYWHERE,
          "the machine's time zone",
          "java\\.time\\.ZoneId\\.systemDefault\\(\\)",
          "java\\.util\\.(TimeZone\\.getDefault|Calendar\\.getInstance)\\(.*");

  @ArchTest
  static final ArchRule noDefaultCharsetOrLineEnd =
      none(
          EVERYWHERE,
          "the machine's encoding or line ends (give UTF_8, write \\n)",
          "java\\.nio\\.charset\\.Charset\\.defaultCharset\\(\\)",
          "java\\.lang\\.System\\.lineSeparator\\(\\)",
          "java\\.io\\.BufferedWriter\\.newLine\\(\\)");

  @ArchTest
  static final ArchRule noClock =
      none(
          OUTSIDE_THE_COMMAND_LINE,
          "the clock",
          "java\\.time\\..*\\.now\\(.*",
          "java\\.time\\.Clock\\..*",
          "java\\.util\\.Date\\.<init>\\(\\)",
          "java\\.lang\\.System\\.(currentTimeMillis|nanoTime)\\(\\)");

  @ArchTest
  static final ArchRule noChanceWithoutASeed =
      none(
          EVERYWHERE,
          "chance without a seed",
          "java\\.lang\\.Math\\.random\\(\\)",
          "java\\.util\\.(Random|SplittableRandom)\\.<init>\\(\\)",
          "java\\.util\\.concurrent\\.ThreadLocalRandom\\..*",
          "java\\.security\\.SecureRandom\\..*",
          "java\\.util\\.UUID\\.randomUUID\\(\\)",
          "java\\.util\\.Collections\\.shuffle\\(java\\.util\\.List\\)");

  @ArchTest
  static final ArchRule noConsole =
      none(
          OUTSIDE_THE_COMMAND_LINE,
          "the console",
          "java\\.lang\\.System\\.(in|out|err)",
          "java\\.lang\\.System\\.console\\(\\)",
          ".*\\.printStackTrace\\(\\)");

  @ArchTest
  static final ArchRule onlyMainEndsTheProgram =
      none(
          OUTSIDE_MAIN,
          "the end of the program",
          "java\\.lang\\.System\\.exit\\(.*",
          "java\\.lang\\.Runtime\\.(exit|halt)\\(.*");

  private static ArchRule none(
      DescribedPredicate<JavaClass> where, String what, String... members) {
    Pattern forbidden = Pattern.compile(String.join("|", members));
    return noClasses()
        .that(where)
        .should()
        .accessTargetWhere(
            describe(
                "it is " + what,
                (JavaAccess<?> access) ->
                    forbidden.matcher(access.getTarget().getFullName()).matches()))
        .as("nobody uses " + what)
        .allowEmptyShould(true);
  }
}
