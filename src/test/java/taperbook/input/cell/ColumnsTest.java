package taperbook.input.cell;

import static org.assertj.core.api.Assertions.assertThat;
import static taperbook.input.Given.problems;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ColumnsTest {
  @Test
  void a_column_without_unit_is_refused_with_the_allowed_units() {
    assertThat(problems("elapsed,soc,power\n0:00,10,5\n1:00,11,5\n"))
        .containsExactly(
            "r.csv:1:1: found \"elapsed\"; expected one of the units [min:s], [h:min:s], [s],"
                + " [min], [h] in square brackets. To fix: write \"elapsed [min:s]\" if that is its"
                + " unit. [column-without-unit]",
            "r.csv:1:2: found \"soc\"; expected the unit [%] in square brackets. To fix: write"
                + " \"soc [%]\". [column-without-unit]",
            "r.csv:1:3: found \"power\"; expected one of the units [kW], [W] in square brackets."
                + " To fix: write \"power [kW]\" if that is its unit. [column-without-unit]");
  }

  @Test
  void a_unit_without_square_brackets_is_refused() {
    assertThat(problems("elapsed [s],soc (%),power kW\n0,10,5\n1,11,5\n"))
        .containsExactly(
            "r.csv:1:2: found \"soc (%)\"; expected the unit [%] in square brackets. To fix: write"
                + " \"soc [%]\". [column-without-unit]",
            "r.csv:1:3: found \"power kW\"; expected one of the units [kW], [W] in square brackets."
                + " To fix: write \"power [kW]\". [column-without-unit]");
  }

  @Test
  void unknown_unit_is_refused() {
    assertThat(problems("elapsed [s],power [PS]\n0,10\n1,11\n"))
        .containsExactly(
            "r.csv:1:2: found \"power [PS]\"; expected one of the units [kW], [W]. To fix: convert"
                + " the column and write its unit, as in \"power [kW]\". [column-unit-unknown]");
    assertThat(problems("elapsed [s],soc [%],note [text]\n0,10,\n1,11,\n"))
        .containsExactly(
            "r.csv:1:3: found \"note [text]\"; expected no unit. To fix: write \"note\"."
                + " [column-unit-unknown]");
  }

  @ParameterizedTest
  @CsvSource({
    "battery temperature [\u00b0C],battery temperature [Cel]",
    "battery temperature [C],battery temperature [Cel]",
    "battery temperature [F],battery temperature [degF]",
    "battery temperature [\u00b0f],battery temperature [degF]",
    "energy added [KWh],energy added [kWh]",
    "power [kw],power [kW]",
    "soc [percent],soc [%]",
    "range shown [miles],range shown [mi]",
    "range shown [KM],range shown [km]",
    "voltage [volts],voltage [V]",
    "current [amps],current [A]",
    "elapsed [mm:ss],elapsed [min:s]",
    "elapsed [HH:MM:SS],elapsed [h:min:s]",
    "elapsed [sec],elapsed [s]",
    "clock [ISO8601],clock [ISO 8601]",
  })
  void exact_symbol_is_suggested_for_a_common_spelling(String head, String meant) {
    assertThat(problems(head + ",x\n1,\n"))
        .anyMatch(
            p ->
                p.startsWith("r.csv:1:1: found \"" + head + "\"; expected")
                    && p.endsWith("To fix: write \"" + meant + "\". [column-unit-unknown]"));
  }

  @Test
  void cells_below_a_refused_head_are_checked_in_the_same_run() {
    assertThat(problems("elapsed [sec],soc\nx,10\n1,101\n"))
        .extracting(p -> p.substring(0, p.indexOf(" found")))
        .containsExactly("r.csv:1:1:", "r.csv:1:2:", "r.csv:2:1:", "r.csv:3:2:");
  }

  @Test
  void same_column_twice_is_refused() {
    assertThat(problems("elapsed [s],soc [%],SOC [%]\n0,10,1\n1,11,1\n"))
        .containsExactly(
            "r.csv:1:3: found \"SOC [%]\" again; expected one column \"soc\". To fix: remove"
                + " one of them, or give it another name. [column-twice]");
    assertThat(problems("elapsed [s],clock [ISO 8601],soc [%]\n0,10:00,1\n1,10:01,1\n"))
        .containsExactly(
            "r.csv:1: found both an elapsed and a clock column; expected one column for the time."
                + " To fix: remove one of them, or give it another name. [column-twice]");
  }

  @Test
  void missing_columns_are_reported_with_the_existing_columns() {
    assertThat(problems("voltage [V],\"a\nb\"\n400,\n401,\n"))
        .filteredOn(p -> p.contains("column-missing"))
        .containsExactly(
            "r.csv:1: found the columns \"voltage [V]\", \"a b\"; expected a column for the time,"
                + " as in \"elapsed [min:s]\". To fix: add a column of elapsed times, or of clock"
                + " times headed \"clock [ISO 8601]\". [column-missing]",
            "r.csv:1: found the columns \"voltage [V]\", \"a b\"; expected at least one of the"
                + " columns \"soc [%]\", \"power [kW]\", \"energy added [kWh]\". To fix: add one of"
                + " them. [column-missing]");
  }

  @Test
  void long_header_is_not_quoted_in_full() {
    assertThat(problems("x,".repeat(40) + "y\n" + "1,".repeat(40) + "1\n"))
        .filteredOn(p -> p.contains("[column-missing]"))
        .hasSize(2)
        .allMatch(p -> p.contains("found the columns \"x\", ") && p.contains("\"x\" and more;"));
  }

  @Test
  void a_non_breaking_space_is_a_space() {
    assertThat(problems("elapsed\u00a0[s],energy\u00a0added [kWh]\n0,1\n1,2\n")).isEmpty();
  }

  @Test
  void a_foreign_layout_is_refused_as_a_whole() {
    assertThat(problems("elapsed_s,soc_pct,power_kw\n0,1,2\n1,2,3\n"))
        .filteredOn(p -> p.contains("[column-missing]"))
        .hasSize(2);
  }
}
