package taperbook.diagnostics;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class ProblemLogTest {
  private final ProblemLog log = new ProblemLog("a.csv");

  @Test
  void problems_are_sorted_by_location() {
    log.add(ProblemCode.SOC_FALLS, 3, 1, "f", "e", "r");
    log.add(ProblemCode.CELL_NOT_A_NUMBER, 2, 2, "f", "e", "r");
    log.add(ProblemCode.CELL_NOT_A_NUMBER, 2, 1, "f", "e", "r");
    log.add(ProblemCode.ITEM_MISSING, "f", "e", "r");
    assertThat(log.list().stream().map(p -> p.place().toString()))
        .containsExactly("a.csv", "a.csv:2:1", "a.csv:2:2", "a.csv:3:1");
  }

  @Test
  void fifty_problems_are_listed_and_one_states_the_number_of_others() {
    for (int line = 1; line <= 53; line++) {
      log.add(ProblemCode.CELL_NOT_A_NUMBER, line, 1, "f", "e", "r" + line);
    }
    assertThat(log.list()).hasSize(51);
    assertThat(log.list().get(50).sentence())
        .isEqualTo(
            "a.csv: found 3 more problems; expected a file without problems."
                + " To fix: fix those above, then check again. [more-problems]");
  }

  @Test
  void notices_never_displace_an_error() {
    for (int line = 1; line <= 60; line++) {
      log.add(ProblemCode.SOC_FALLS, line, 1, "f", "e", "r" + line);
    }
    assertThat(log.hasErrors()).isFalse();
    log.add(ProblemCode.ENERGY_FALLS, 61, 1, "f", "e", "r");
    assertThat(log.hasErrors()).isTrue();
    assertThat(log.list()).hasSize(51);
    assertThat(log.list().get(49).code()).isEqualTo(ProblemCode.ENERGY_FALLS);
    assertThat(log.list().get(50).found()).isEqualTo("11 more problems");
  }

  @Test
  void exactly_fifty_problems_are_listed_without_a_count() {
    for (int line = 1; line <= 50; line++) {
      log.add(ProblemCode.CELL_NOT_A_NUMBER, line, 1, "f", "e", "r" + line);
    }
    assertThat(log.list()).hasSize(50);
    log.add(ProblemCode.SOC_FALLS, 51, 1, "f", "e", "r");
    assertThat(log.list().get(50).found()).isEqualTo("one more problem");
  }

  @Test
  void up_to_five_similar_problems_are_listed_individually() {
    for (int line = 1; line <= 5; line++) {
      log.add(ProblemCode.SOC_FALLS, line, 2, "found " + line, "e", "r");
    }
    assertThat(log.list().stream().map(p -> p.found()))
        .containsExactly("found 1", "found 2", "found 3", "found 4", "found 5");
  }

  @Test
  void more_similar_problems_are_grouped_after_the_first_three() {
    for (int line : new int[] {2, 3, 5, 7, 8, 9, 14, 1000}) {
      log.add(ProblemCode.CELL_NOT_A_NUMBER, line, 2, "found " + line, "e", "r");
    }
    log.add(ProblemCode.CELL_NOT_A_NUMBER, 6, 3, "other column", "e", "r");
    assertThat(log.list().stream().map(p -> p.place() + " " + p.found()))
        .containsExactly(
            "a.csv:2:2 found 2",
            "a.csv:3:2 found 3",
            "a.csv:5:2 found 5",
            "a.csv:6:3 other column",
            "a.csv:7:2 5 more like these, on lines 7 to 9, 14, 1000");
  }

  @Test
  void many_scattered_lines_are_abbreviated() {
    for (int line = 1; line <= 41; line += 2) {
      log.add(ProblemCode.CELL_NOT_A_NUMBER, line, 1, "f", "e", "r");
    }
    assertThat(log.list().get(3).found())
        .isEqualTo("18 more like these, on lines 7, 9, 11, 13, 15, 17 and on to 41");
  }
}
