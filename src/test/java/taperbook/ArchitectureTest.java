package taperbook;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
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
import java.io.PrintStream;
import java.io.RandomAccessFile;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import taperbook.app.Main;
import taperbook.app.looks.Entrance;
import taperbook.app.looks.QuickLook;
import taperbook.app.publish.ReportLock;
import taperbook.app.stamp.ProgramStamp;
import taperbook.model.InputFile;
import taperbook.model.LibraryResult;
import taperbook.model.RangeTest;
import taperbook.model.Session;
import taperbook.model.Trace;
import taperbook.read.PlainFile;

/** The one-way flow read, check, measure, draw, write; who may use which library. */
@AnalyzeClasses(packages = "taperbook", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {
  /** The nouns of all stages, and what has not been split yet. */
  private static final String[] STILL_LARGE = {
    "taperbook.model", "taperbook.read", "taperbook.claims", "taperbook.write.page"
  };

  @ArchTest
  static final ArchRule model_knows_nothing_of_ours =
      only("taperbook.model..", "taperbook.model..").because("it is what all others speak of");

  @ArchTest
  static final ArchRule problem_knows_nothing_of_ours =
      only("taperbook.problem..", "taperbook.problem..").because("every stage may use it");

  @ArchTest
  static final ArchRule words_know_the_model =
      only("taperbook.words..", "taperbook.words..", "taperbook.model..")
          .because("a figure becomes text in one place that depends on nothing else");

  @ArchTest
  static final ArchRule reading_knows_no_later_stage =
      only("taperbook.read..", "taperbook.read..", "taperbook.model..", "taperbook.problem..")
          .because("data flows one way");

  @ArchTest
  static final ArchRule checking_knows_reading_only =
      only(
              "taperbook.check..",
              "taperbook.check..",
              "taperbook.read..",
              "taperbook.model..",
              "taperbook.problem..")
          .because("data flows one way");

  @ArchTest
  static final ArchRule measuring_knows_model_and_words_only =
      only("taperbook.measure..", "taperbook.measure..", "taperbook.model..", "taperbook.words..")
          .because("a number must not depend on how it was read or is drawn");

  @ArchTest
  static final ArchRule holding_figures_against_results_knows_no_stage =
      only(
              "taperbook.claims..",
              "taperbook.claims..",
              "taperbook.model..",
              "taperbook.words..",
              "taperbook.problem..")
          .because("a verdict on a typed figure follows from the article and the results alone");

  @ArchTest
  static final ArchRule drawing_knows_model_and_words_only =
      only("taperbook.draw..", "taperbook.draw..", "taperbook.model..", "taperbook.words..")
          .because("a chart shows numbers and does not make any");

  @ArchTest
  static final ArchRule writing_knows_no_earlier_stage_but_drawing =
      only(
              "taperbook.write..",
              "taperbook.write..",
              "taperbook.draw..",
              "taperbook.model..",
              "taperbook.words..",
              "taperbook.problem..")
          .because("a page shows numbers and charts and does not make any");

  @ArchTest
  static final ArchRule measuring_is_pure =
      noClasses()
          .that()
          .resideInAPackage("taperbook.measure..")
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
          .haveFullyQualifiedName(LibraryResult.class.getName())
          .should()
          .transitivelyDependOnClassesThat()
          .belongToAnyOf(Session.class, Trace.class, RangeTest.class, InputFile.class)
          .because("thousands of sessions must fit into memory as rows");

  @ArchTest
  static final ArchRule only_app_touches_the_process =
      noClasses()
          .that()
          .resideOutsideOfPackage("taperbook.app..")
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
  static final ArchRule only_messages_print =
      noClasses()
          .that()
          .resideOutsideOfPackage("taperbook.app.process..")
          .and()
          .doNotBelongToAnyOf(Main.class, Entrance.class, QuickLook.class)
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
          .doNotBelongToAnyOf(PlainFile.class, ProgramStamp.class, ReportLock.class)
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
  static final ArchRule commons_csv_is_for_reading =
      library("org.apache.commons.csv..", "taperbook.read..");

  @ArchTest
  static final ArchRule packages_stay_small_enough_to_look_through =
      classes()
          .that()
          .resideOutsideOfPackages(STILL_LARGE)
          .should(standAmongAtMost(20))
          .because("a newcomer finds things by name");

  @ArchTest
  static final ArchRule the_command_line_knows_no_stage =
      only(
              "taperbook.app.line..",
              "taperbook.app.line..",
              "taperbook.app.process..",
              "taperbook.model..",
              "taperbook.problem..")
          .because("what can be asked for does not depend on how it is done");

  @ArchTest
  static final ArchRule xchart_is_for_painting =
      library("org.knowm.xchart..", "taperbook.draw.paint..");

  @ArchTest
  static final ArchRule batik_is_for_pictures =
      library("org.apache.batik..", "taperbook.draw.picture..");

  @ArchTest
  static final ArchRule freemarker_is_for_writing = library("freemarker..", "taperbook.write..");

  @ArchTest
  static final ArchRule flexmark_is_for_writing =
      library("com.vladsch.flexmark..", "taperbook.write..");

  @ArchTest
  static final ArchRule pdfbox_is_for_writing_and_for_proof =
      library("org.apache.pdfbox..", "taperbook.write..", "taperbook.proof..");

  @ArchTest
  static final ArchRule proof_reads_what_was_published_and_makes_nothing =
      only("taperbook.proof..", "taperbook.proof..", "taperbook.model..", "taperbook.problem..")
          .because("what was published must be read without the stages that made it");

  @ArchTest
  static final ArchRule openhtmltopdf_is_for_writing =
      library("com.openhtmltopdf..", "taperbook.write..");

  private static ArchCondition<JavaClass> standAmongAtMost(int types) {
    return new ArchCondition<>("stand in packages of at most " + types + " types") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        long here =
            type.getPackage().getClasses().stream().filter(ArchitectureTest::isType).count();
        events.add(
            new SimpleConditionEvent(
                type, here <= types, type.getName() + " stands among " + here + " types"));
      }
    };
  }

  private static boolean isType(JavaClass type) {
    return type.isTopLevelClass() && !type.getName().endsWith("package-info");
  }

  private static ArchRule only(String stage, String... allowed) {
    return classes()
        .that()
        .resideInAPackage(stage)
        .should()
        .onlyDependOnClassesThat(
            resideInAnyPackage(allowed)
                .or(DescribedPredicate.not(resideInAPackage("taperbook.."))));
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
