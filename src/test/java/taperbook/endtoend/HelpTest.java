package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.cli.Command;
import taperbook.cli.ExitStatus;
import taperbook.cli.Help;
import taperbook.cli.Terminal;
import taperbook.diagnostics.ProblemCode;

/** Help texts and messages of the command line. */
@Tag("slow")
final class HelpTest {
  private static final int WIDTH = 80;

  @TempDir private Path folder = Path.of("");

  @Test
  void the_help_has_the_commands_options_and_statuses_of_the_contract() {
    assertThat(Help.overview(WIDTH))
        .contains("taperbook report", "taperbook check", "taperbook explain", "taperbook verify")
        .contains("taperbook blank", "taperbook watch", "--folder DIR", "--version", "--help")
        .contains("0 done", "1 input refused", "2 wrong usage", "3 a fault of the program");
    assertFits(Help.overview(WIDTH));
  }

  @ParameterizedTest
  @EnumSource(Command.class)
  void each_command_has_help_with_examples_and_statuses(Command command) {
    Workplace place = new Workplace(folder);
    assertThat(place.run(command.word(), "--help")).isEqualTo(ExitStatus.DONE);
    assertThat(place.out())
        .contains("taperbook " + command.word(), "Examples:", "Exit status:", "2 wrong usage");
    String page = place.out();
    assertThat(place.run("help", command.word())).isEqualTo(ExitStatus.DONE);
    assertThat(place.out()).isEqualTo(page);
    assertFits(Help.of(command, WIDTH));
  }

  /** No line is longer than the terminal, except examples that must be copied unchanged. */
  private static void assertFits(String help) {
    assertThat(help.lines().filter(line -> !line.startsWith("  taperbook ")))
        .allMatch(line -> line.length() <= WIDTH);
  }

  @Test
  void help_lists_everything_and_suggests_the_nearest_command() {
    Workplace place = new Workplace(folder);
    assertThat(place.run("help")).isEqualTo(ExitStatus.DONE);
    assertThat(place.out()).isEqualTo(Help.overview(Terminal.DEFAULT_WIDTH));
    assertThat(place.run("help", "explian")).isEqualTo(ExitStatus.WRONG_USAGE);
    assertThat(place.err()).contains("no command 'explian'; did you mean explain?");
    assertThat(place.run("report", "--foldr=x")).isEqualTo(ExitStatus.WRONG_USAGE);
    assertThat(place.err()).contains("no option --foldr=x; did you mean --folder?");
  }

  static Stream<String> examples() {
    return Arrays.stream(Command.values())
        .flatMap(c -> c.examples().stream())
        .map(Command.Example::call);
  }

  @ParameterizedTest
  @MethodSource("examples")
  void each_example_of_the_help_works_on_the_demo(String example) throws IOException {
    Workplace place = Workplace.withMadeDemo(folder);
    List<String> arguments =
        Stream.of(example.split(" ", -1))
            .skip(1)
            .map(w -> w.endsWith(".pdf") ? place.path(w).toString() : w)
            .toList();
    assertThat(place.run(new ScriptedClock(), arguments.toArray(new String[0])))
        .as(place.err())
        .isEqualTo(ExitStatus.DONE);
    assertThat(place.out() + place.err()).isNotEmpty();
  }

  @Test
  void the_first_steps_lead_from_an_empty_folder_to_a_report_that_lacks_only_values()
      throws IOException {
    Workplace place = new Workplace(folder);
    assertThat(place.run("check")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.run("report")).isEqualTo(ExitStatus.INPUT_REFUSED);
    List<String> calls =
        place.err().lines().filter(l -> l.startsWith("  taperbook ")).map(String::strip).toList();
    assertThat(calls).hasSize(3);
    for (String call : calls) {
      String[] arguments = call.split("  ", 2)[0].replaceFirst("taperbook ", "").split(" ", -1);
      assertThat(place.run(arguments)).as(call).isEqualTo(ExitStatus.DONE);
    }
    assertThat(place.err()).doesNotContain("There is no report yet");
    assertThat(place.run("check")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err().lines().filter(l -> l.startsWith("    [")).distinct())
        .containsExactlyInAnyOrder("    [csv-empty]", "    [item-missing]", "    [key-missing]");
  }

  @Test
  void a_folder_with_sessions_only_gets_a_hint_how_to_start_a_report() throws IOException {
    Workplace place = Workplace.withDemo(folder);
    for (String report : List.of("finch-first-look", "library", "veldt-long-plateau")) {
      Files.delete(place.path("reports/" + report + ".md"));
    }
    assertThat(place.run("report")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err())
        .contains("  taperbook blank report first-report finch-quarry-lane finch-ring-road  ")
        .doesNotContain("error");
    assertThat(place.run("check")).isEqualTo(ExitStatus.DONE);
    assertThat(place.out())
        .isEqualTo("checked 6 sessions, 6 range tests, 0 reports: 0 errors, 0 notices\n");
  }

  @Test
  void a_folder_that_does_not_exist_is_reported() {
    Workplace place = new Workplace(folder.resolve("nowhere"));
    assertThat(place.run("check")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err()).contains("there is no folder " + folder.resolve("nowhere"));
  }

  @Test
  void help_and_problems_wrap_at_words_on_a_narrow_terminal() throws IOException {
    Workplace place = Workplace.withDemo(folder).onTerminal(60, Map.of("NO_COLOR", "1"));
    place.replace("sessions/finch-quarry-lane/readings.csv", "11:40,57,121", "11:40,57,12l");
    assertThat(place.run("check", "finch-first-look")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err())
        .contains(
            """
                to fix    write the number alone; the unit is in the
                          column head
            """)
        .doesNotContain("\u001b[3");
    place.onTerminal(60, Map.of());
    place.run("check", "finch-first-look");
    assertThat(place.err()).contains("\u001b[31merror\u001b[0m");
  }

  @Test
  void every_kind_of_problem_has_a_distinct_sentence() {
    assertThat(Arrays.stream(ProblemCode.values()).map(ProblemCode::meaning))
        .doesNotHaveDuplicates()
        .allMatch(meaning -> meaning.matches("[A-Z].{10,}[^.]\\."));
  }

  /**
   * The lists of the reference are the only source of codes and statuses, and each of them is used.
   */
  @Test
  void every_kind_of_problem_and_every_exit_status_occurs_in_a_test() throws IOException {
    StringBuilder tests = new StringBuilder();
    try (Stream<Path> all = Files.walk(Path.of("src/test"))) {
      for (Path file : all.filter(HelpTest::mayContainCode).sorted().toList()) {
        tests.append(Files.readString(file));
      }
    }
    String text = tests.toString();
    assertThat(ProblemCode.values())
        .allMatch(c -> text.contains("ProblemCode." + c.name()) || text.contains("[" + c.slug()));
    assertThat(ExitStatus.values()).allMatch(s -> text.contains("ExitStatus." + s.name() + ")"));
  }

  private static boolean mayContainCode(Path file) {
    String name = file.toString();
    return (name.endsWith("Test.java") && !name.endsWith("HelpTest.java"))
        || name.endsWith("cases.txt");
  }

  @Test
  void the_exit_statuses_of_the_contract_are_the_codes_of_the_program() {
    assertThat(Arrays.stream(ExitStatus.values()).map(ExitStatus::code))
        .containsExactly(0, 1, 2, 3);
  }
}
