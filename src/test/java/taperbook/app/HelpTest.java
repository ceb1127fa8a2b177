package taperbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import taperbook.problem.ProblemCode;

/** What the program says of itself. */
final class HelpTest {
  @Test
  void the_help_has_the_commands_options_and_statuses_of_the_contract() {
    assertThat(Help.text())
        .contains("taperbook report", "taperbook check", "taperbook explain", "taperbook verify")
        .contains("taperbook blank", "taperbook watch", "--folder DIR", "--version", "--help")
        .contains("0 done", "1 input refused", "2 wrong usage", "3 a fault of the program");
    assertThat(Help.text().lines().mapToInt(String::length).max().orElseThrow())
        .isLessThanOrEqualTo(100);
  }

  @Test
  void every_kind_of_problem_has_a_sentence_of_its_own() {
    assertThat(Arrays.stream(ProblemCode.values()).map(ProblemCode::meaning))
        .doesNotHaveDuplicates()
        .allMatch(meaning -> meaning.matches("[A-Z].{10,}[^.]\\."));
  }

  /** The lists of the reference are the one place for codes and statuses; nothing there is idle. */
  @Test
  void every_kind_of_problem_and_every_exit_status_occurs_in_a_test() throws IOException {
    StringBuilder tests = new StringBuilder();
    try (Stream<Path> all = Files.walk(Path.of("src/test"))) {
      for (Path file : all.filter(HelpTest::mayHoldACode).sorted().toList()) {
        tests.append(Files.readString(file));
      }
    }
    String text = tests.toString();
    assertThat(ProblemCode.values())
        .allMatch(c -> text.contains("ProblemCode." + c.name()) || text.contains("[" + c.slug()));
    assertThat(ExitStatus.values()).allMatch(s -> text.contains("ExitStatus." + s.name() + ")"));
  }

  private static boolean mayHoldACode(Path file) {
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
