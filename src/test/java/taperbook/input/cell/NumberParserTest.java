package taperbook.input.cell;

import static org.assertj.core.api.Assertions.assertThat;
import static taperbook.input.Given.problems;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.diagnostics.ProblemLog;

final class NumberParserTest {
  private static final String EXPECTED = "expected a number from -50 to 4000 kW. To fix: ";

  @Test
  void plain_decimals_are_those_that_the_pattern_gives() {
    Random random = new Random(1);
    NumberParser numbers = NumberParser.forCells(false, new ProblemLog("r.csv"));
    for (int i = 0; i < 20_000; i++) {
      String digits = Long.toString(random.nextLong(1_000_000_000_000L));
      int point = random.nextInt(digits.length());
      String cell =
          (random.nextBoolean() ? "-" : "")
              + (point == 0 ? digits : digits.substring(0, point) + "." + digits.substring(point));
      CellNumber expected = CellNumber.parse(cell);

      assertThat(numbers.read(cell, 2, 1, "a number")).as(cell).contains(expected);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"-", "n/a", "N/A", "\u2013", "?", "NaN", "none", "null", "NIL", "unknown"})
  void a_word_for_no_value_is_refused_in_favour_of_an_empty_cell(String cell) {
    assertThat(problems("elapsed [s],power [kW]\n0," + cell + "\n1,5\n"))
        .containsExactly(
            "r.csv:2:2: found \""
                + cell
                + "\"; "
                + EXPECTED
                + "leave the cell empty. [cell-not-a-number]");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'57,6'|write a decimal point, or part the cells of the file with semicolons",
        "'1,234.5'|write the digits without grouping, as in 1234.5",
        "'1 234'|write the digits without grouping, as in 1234.5",
        "57 kW|write the number alone; the unit is in the column head",
        "57.6kW|write the number alone; the unit is in the column head",
        "fast|write a plain number, as in 57.6, or leave the cell empty",
        "+|write a plain number, as in 57.6, or leave the cell empty",
        ".|write a plain number, as in 57.6, or leave the cell empty",
        "0x10|write a plain number, as in 57.6, or leave the cell empty",
        "\u0661\u0662|write a plain number, as in 57.6, or leave the cell empty",
        "1e999|write a plain number, as in 57.6, or leave the cell empty",
        "Infinity|write a plain number, as in 57.6, or leave the cell empty"
      })
  void every_other_text_has_its_remedy(String cell, String remedy) {
    assertThat(problems("elapsed [s],power [kW]\n0,\"" + cell + "\"\n1,5\n"))
        .containsExactly(
            "r.csv:2:2: found \"" + cell + "\"; " + EXPECTED + remedy + ". [cell-not-a-number]");
  }

  @Test
  void grouped_digits_are_refused_in_files_with_semicolons_too() {
    assertThat(problems("elapsed [s];power [kW]\n0;1.234,5\n1;5\n"))
        .containsExactly(
            "r.csv:2:2: found \"1.234,5\"; "
                + EXPECTED
                + "write the digits without grouping, as in 1234.5. [cell-not-a-number]");
  }

  @Test
  void a_file_with_two_decimal_marks_is_refused() {
    assertThat(problems("elapsed [s];power [kW]\n0;57,6\n1;5\n2;1.234\n3;6,5\n"))
        .containsExactly(
            "r.csv:4:2: found \"1.234\"; expected the decimal mark \",\" as on line 2. To"
                + " fix: write all numbers of the file with one decimal mark and without grouping"
                + " digits. [cell-not-a-number]");
  }

  @Test
  void huge_exponent_is_out_of_range() {
    assertThat(problems("elapsed [s],power [kW]\n0,1e99\n1,5\n"))
        .containsExactly(
            "r.csv:2:2: found \"1e99\"; "
                + EXPECTED
                + "correct the value, or the unit in the column head. [cell-out-of-range]");
  }
}
