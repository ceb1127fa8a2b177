package taperbook;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.FileReader;
import java.io.FileWriter;
import java.io.IOException;
import java.io.PrintStream;
import java.io.RandomAccessFile;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import taperbook.buildinfo.BuildInfo;
import taperbook.input.folder.RegularFile;
import taperbook.plan.LibraryPlan;
import taperbook.result.LeftOut;
import taperbook.result.LibraryResult;
import taperbook.result.LibraryRow;
import taperbook.result.Ranking;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;
import taperbook.session.InputFile;
import taperbook.session.RangeTest;
import taperbook.session.Session;
import taperbook.session.Trace;
import taperbook.uptodate.UpToDateCheck;
import taperbook.workspace.ReportLock;

/** The one-way flow of data through the packages, and which packages may use which library. */
@AnalyzeClasses(packages = "taperbook", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {
  /** Packages that exceed the size limit of a package. */
  private static final String[] STILL_LARGE = {
    "taperbook.output.view", "taperbook.result", "taperbook.session"
  };

  private static final List<String> NOUNS =
      List.of("i18n", "quantity", "session", "plan", "result");

  /** The packages that each package and its subpackages may use, in addition to themselves. */
  private static final Map<String, List<String>> MAY_USE =
      Map.ofEntries(
          entry("i18n", List.of()),
          entry("quantity", List.of("i18n")),
          entry("diagnostics", List.of("i18n")),
          entry("session", List.of("i18n", "quantity")),
          entry("plan", List.of("i18n", "quantity")),
          entry("result", List.of("i18n", "quantity", "session", "plan")),
          entry("format", NOUNS),
          entry("input", with(NOUNS, "diagnostics")),
          entry("metric", with(NOUNS, "format")),
          entry("prosecheck", with(NOUNS, "format", "diagnostics")),
          entry("chart", with(NOUNS, "format")),
          entry("output", with(NOUNS, "format", "diagnostics", "chart")),
          entry("verify", with(NOUNS, "diagnostics")),
          entry("cli", List.of("i18n", "plan", "diagnostics", "buildinfo")),
          entry("uptodate", List.of("input.folder")),
          entry("buildinfo", with(NOUNS, "uptodate")));

  private static final String[] PROCESS = {
    "taperbook",
    "taperbook.cli..",
    "taperbook.command..",
    "taperbook.workspace..",
    "taperbook.build..",
    "taperbook.buildinfo..",
    "taperbook.uptodate.."
  };

  @ArchTest
  static void data_flows_one_way(JavaClasses program) {
    MAY_USE.forEach((name, allowed) -> only(name, allowed).check(program));
  }

  @ArchTest
  static void no_two_classes_have_the_same_name(JavaClasses program) {
    assertThat(
            program.stream()
                .filter(ArchitectureTest::isType)
                .map(JavaClass::getSimpleName)
                .toList())
        .hasSizeGreaterThan(500)
        .doesNotHaveDuplicates();
  }

  @ArchTest
  static void the_architecture_page_names_every_package(JavaClasses program) throws IOException {
    String page = Files.readString(Path.of("src/docs/architecture.md"));

    assertThat(
            program.stream()
                .map(type -> type.getPackageName().replaceFirst("taperbook\\.?", ""))
                .filter(name -> !name.isEmpty())
                .distinct())
        .allSatisfy(name -> assertThat(page).contains("`" + name + "`"));
  }

  @ArchTest
  static final ArchRule metrics_are_pure =
      noClasses()
          .that()
          .resideInAPackage("taperbook.metric..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "java.io..", "java.nio..", "java.net..", "java.sql..", "java.time..", "javax..")
          .orShould()
          .callMethod(System.class, "nanoTime")
          .orShould()
          .callMethod(System.class, "currentTimeMillis")
          .because("the same session must always give the same numbers");

  @ArchTest
  static final ArchRule a_library_keeps_no_readings_and_no_files =
      noClasses()
          .that()
          .belongToAnyOf(LibraryPlan.class, LibraryRow.class, LeftOut.class, Ranking.class)
          .should()
          .transitivelyDependOnClassesThat()
          .belongToAnyOf(Session.class, Trace.class, RangeTest.class, InputFile.class)
          .because("thousands of sessions must fit into memory as rows");

  @ArchTest
  static final ArchRule a_library_keeps_nothing_but_rows =
      noClasses()
          .that()
          .haveFullyQualifiedName(LibraryResult.class.getName())
          .should()
          .dependOnClassesThat()
          .belongToAnyOf(
              ReportResult.class,
              SessionResult.class,
              Session.class,
              Trace.class,
              RangeTest.class,
              InputFile.class)
          .because("its interface, Results, also describes reports, which keep readings");

  @ArchTest
  static final ArchRule stages_do_not_touch_the_process =
      noClasses()
          .that()
          .resideOutsideOfPackages(PROCESS)
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err")
          .orShould()
          .callMethod(System.class, "exit", int.class)
          .orShould()
          .callMethod(System.class, "getenv", String.class)
          .because("a stage is a function of its arguments");

  @ArchTest
  static final ArchRule only_the_command_line_prints =
      noClasses()
          .that()
          .resideOutsideOfPackage("taperbook.cli..")
          .and()
          .doNotBelongToAnyOf(Main.class, UpToDateCheck.class)
          .should()
          .callMethodWhere(
              DescribedPredicate.describe(
                  "they print", call -> call.getTargetOwner().isAssignableTo(PrintStream.class)))
          .orShould()
          .callMethodWhere(
              DescribedPredicate.describe(
                  "they print a stack trace",
                  call -> call.getTarget().getName().equals("printStackTrace")))
          .because("what comes from elsewhere is made printable there");

  @ArchTest
  static final ArchRule files_of_a_project_are_opened_in_one_place =
      noClasses()
          .that()
          .doNotBelongToAnyOf(RegularFile.class, BuildInfo.class, ReportLock.class)
          .should()
          .callMethodWhere(
              DescribedPredicate.describe(
                  "they open a file",
                  call ->
                      call.getTargetOwner().isAssignableTo(Files.class)
                          && call.getTarget()
                              .getName()
                              .matches("(read(All.*|String)|lines|new(In|Out).*|newB.*|write.*)")))
          .orShould()
          .dependOnClassesThat()
          .belongToAnyOf(
              FileChannel.class,
              FileInputStream.class,
              FileOutputStream.class,
              FileReader.class,
              FileWriter.class,
              RandomAccessFile.class)
          .because("a project may come from anywhere: links, pipes and devices must not be opened");

  @ArchTest
  static final ArchRule stages_have_no_cycles =
      slices().matching("taperbook.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule packages_have_no_cycles =
      slices().matching("taperbook.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule commons_csv_is_for_csv =
      library("org.apache.commons.csv..", "taperbook.input.csv..");

  @ArchTest
  static final ArchRule packages_stay_small_enough_to_look_through =
      classes()
          .that()
          .resideOutsideOfPackages(STILL_LARGE)
          .should(beAmongAtMost(25))
          .because("a newcomer finds things by name");

  @ArchTest
  static final ArchRule xchart_is_for_rendering =
      library("org.knowm.xchart..", "taperbook.chart.render..");

  @ArchTest
  static final ArchRule batik_is_for_rendering =
      library("org.apache.batik..", "taperbook.chart.render..");

  @ArchTest
  static final ArchRule freemarker_is_for_output = library("freemarker..", "taperbook.output..");

  @ArchTest
  static final ArchRule flexmark_is_for_output =
      library("com.vladsch.flexmark..", "taperbook.output..");

  @ArchTest
  static final ArchRule pdfbox_is_for_output_and_verify =
      library("org.apache.pdfbox..", "taperbook.output..", "taperbook.verify..");

  @ArchTest
  static final ArchRule openhtmltopdf_is_for_pdf =
      library("com.openhtmltopdf..", "taperbook.output.pdf..");

  private static ArchCondition<JavaClass> beAmongAtMost(int types) {
    return new ArchCondition<>("be in packages of at most " + types + " types") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        long here =
            type.getPackage().getClasses().stream().filter(ArchitectureTest::isType).count();
        events.add(
            new SimpleConditionEvent(
                type, here <= types, type.getName() + " is one of " + here + " types"));
      }
    };
  }

  private static boolean isType(JavaClass type) {
    return type.isTopLevelClass() && !type.isArray() && !type.getName().endsWith("package-info");
  }

  private static ArchRule only(String name, List<String> allowed) {
    String[] packages =
        Stream.concat(Stream.of(name), allowed.stream())
            .map(other -> "taperbook." + other + "..")
            .toArray(String[]::new);
    return classes()
        .that()
        .resideInAPackage("taperbook." + name + "..")
        .should()
        .onlyDependOnClassesThat(
            resideInAnyPackage(packages)
                .or(DescribedPredicate.not(resideInAPackage("taperbook.."))))
        .because("data flows one way");
  }

  private static List<String> with(List<String> names, String... more) {
    return Stream.concat(names.stream(), Stream.of(more)).toList();
  }

  private static ArchRule library(String packages, String... users) {
    return noClasses()
        .that()
        .resideOutsideOfPackages(users)
        .should()
        .dependOnClassesThat()
        .resideInAPackage(packages)
        .because("a library stays behind one stage's door");
  }
}
