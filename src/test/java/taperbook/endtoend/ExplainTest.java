package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.SortedMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.cli.ExitStatus;

/** Output of {@code taperbook explain} for the demo, with the line numbers of the demo's files. */
@Tag("slow")
final class ExplainTest {
  private static final String REPORT = "finch-first-look";

  @TempDir private Path folder = Path.of("");
  private Workplace place = new Workplace(Path.of(""));

  @BeforeEach
  void copyTheDemo() throws IOException {
    place = Workplace.withDemo(folder);
  }

  /** The output with normalized whitespace. */
  private String explain(String... arguments) {
    String[] all = new String[arguments.length + 2];
    all[0] = "explain";
    all[1] = REPORT;
    System.arraycopy(arguments, 0, all, 2, arguments.length);
    assertThat(place.run(all)).isEqualTo(ExitStatus.DONE);
    assertThat(place.err()).isEmpty();
    return place.out().replaceAll("\\s+", " ");
  }

  @Test
  void a_simulated_time_has_formula_budget_and_rows() {
    assertThat(explain("time_to_add_100_km"))
        .startsWith("Time to add 100 km, by the driven range Value ")
        .contains("a 95 % coverage interval by Monte Carlo (JCGM 101:2008)")
        .contains("Basis driven")
        .contains("Session finch-quarry-lane")
        .contains("t - t[1] with q(t) - q(t[1]) = 100 * D / R")
        .contains("(JCGM 100:2008, 4.3.7 and F.2.2.1: the resolution of a display")
        .contains("rounding of the state of charge")
        .contains("To know it better next time: ")
        .contains("sessions/finch-quarry-lane/readings.csv:2 elapsed [min:s] 0:00, soc [%] 9,")
        .contains("sessions/finch-ring-road/range-test.csv:")
        .contains(" - Range test: ");
  }

  @Test
  void a_reading_has_its_unit_and_its_row() {
    assertThat(explain("peak_power"))
        .contains("Value 168 kW, give or take 0.5 kW")
        .contains("max(P[1], ..., P[n]), give or take step / 2")
        .contains("sessions/finch-quarry-lane/readings.csv:8 elapsed [min:s] 2:50, soc [%] 21,")
        .contains("bounds that hold if the assumptions do");
  }

  @Test
  void bounds_are_labelled_as_bounds() {
    assertThat(explain("time_share_above_100_kw"))
        .contains("bounds that hold if the assumptions do")
        .doesNotContain("coverage interval", "To know it better");
  }

  @Test
  void a_withheld_number_has_its_reason_and_method() {
    assertThat(explain("charging_loss"))
        .contains("Value withheld: the station's energy was not recorded, or only once")
        .contains("Losses while charging")
        .contains("loss = S - E")
        .doesNotContain("The rows it rests on");
  }

  @Test
  void an_interval_that_was_not_simulated_is_not_labelled_as_simulated() {
    assertThat(explain("energy_per_soc_fitted"))
        .contains("a 95 % coverage interval, by the method below")
        .doesNotContain("Monte Carlo");
  }

  @Test
  void rows_after_the_twelfth_are_summarized() {
    String explain = explain("energy_per_soc_fitted");
    assertThat(explain)
        .containsPattern("\\.\\.\\. and \\d+ more, sessions/\\S+ lines \\d+ to \\d+");
    assertThat(explain.split("readings\\.csv:", -1)).hasSize(13);
  }

  @Test
  void the_third_argument_names_a_compared_session() {
    assertThat(explain("peak_power", "finch-quarry-lane-first"))
        .contains("Session finch-quarry-lane-first")
        .contains("sessions/finch-quarry-lane-first/readings.csv:");
  }

  @Test
  void a_number_of_a_pair_names_both_sessions_and_the_session_of_each_caveat() {
    String explain = explain("mean_lead_shared", "finch-quarry-lane-first");
    assertThat(explain)
        .contains("Session finch-quarry-lane Against finch-quarry-lane-first Id mean_lead_shared")
        .contains("sessions/finch-quarry-lane-first/readings.csv:")
        .contains("How far a car's displays of power and state of charge are off is not known.")
        .contains("Preconditioning: finch-quarry-lane-first: Preconditioning began only");
    // There is only one pair, so that the compared session is optional.
    assertThat(explain("mean_lead_shared")).isEqualTo(explain);
  }

  @Test
  void a_mistyped_number_of_a_pair_is_refused_with_the_nearest_name() {
    assertThat(place.run("explain", REPORT, "mean_laed_shared"))
        .isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err()).contains("Perhaps mean_lead_shared");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"time_to_add_100_km", "peak_power", "charging_loss", "energy_per_soc_fitted"})
  void no_line_is_longer_than_80_characters(String id) {
    explain(id);
    assertThat(place.out().lines()).allMatch(line -> line.length() <= 80).hasSizeGreaterThan(10);
  }

  @Test
  void an_unknown_number_is_refused_with_the_nearest_name() {
    assertThat(place.run("explain", REPORT, "peak_pwoer")).isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.out()).isEmpty();
    assertThat(place.err()).contains("'peak_pwoer'", "Perhaps peak_power");
  }

  @Test
  void an_unknown_report_or_session_is_refused_with_the_nearest_name() {
    assertThat(place.run("explain", "finch-first-lok", "peak_power"))
        .isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err()).contains("Perhaps finch-first-look?");
    assertThat(place.run("explain", REPORT, "peak_power", "finch-quarry-lane-frist"))
        .isEqualTo(ExitStatus.INPUT_REFUSED);
    assertThat(place.err()).contains("Perhaps finch-quarry-lane-first");
  }

  @Test
  void too_few_or_too_many_arguments_are_wrong_usage() {
    assertThat(place.run("explain", REPORT)).isEqualTo(ExitStatus.WRONG_USAGE);
    assertThat(place.err()).contains("usage: taperbook explain NAME ID [SESSION]");
    assertThat(place.run("explain", REPORT, "a", "b", "c")).isEqualTo(ExitStatus.WRONG_USAGE);
  }

  @Test
  void nothing_is_written() throws IOException {
    SortedMap<String, String> before = place.files("");
    explain("time_to_add_100_km");
    assertThat(place.files("")).isEqualTo(before);
  }
}
