package taperbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
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
}
