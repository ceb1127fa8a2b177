package taperbook.input;

import static org.assertj.core.api.Assertions.assertThat;
import static taperbook.input.Given.CONDITIONS;
import static taperbook.input.Given.RANGE_TEST;

import java.util.List;
import org.junit.jupiter.api.Test;
import taperbook.diagnostics.Problem;
import taperbook.plan.ReportPlan.Season;
import taperbook.session.RangeTest;
import taperbook.session.Session;

final class SeasonCheckTest {
  private static final String WARM = "ambient temperature,12,Cel,measured";

  private static Session session(String old, String other) {
    assertThat(CONDITIONS).contains(old);
    return Given.good(
        Given.session("elapsed [s],soc [%]\n0,10\n1,11\n", CONDITIONS.replace(old, other)));
  }

  private static RangeTest drive(String old, String other) {
    assertThat(RANGE_TEST).contains(old);
    return Given.good(Given.rangeTest(RANGE_TEST.replace(old, other)));
  }

  private static final Session MAIN = session(WARM, WARM);

  private static List<String> problems(List<Session> sessions, List<RangeTest> drives) {
    return SeasonCheck.check(MAIN, new Season<>(sessions, drives)).stream()
        .map(Problem::sentence)
        .toList();
  }

  @Test
  void a_warm_and_a_cold_run_of_the_reported_car_are_accepted() {
    assertThat(
            problems(
                List.of(MAIN, session(WARM, WARM.replace("12", "9.9"))),
                List.of(drive("50,degF", "70,degF"), drive("50,degF", "50,degF"))))
        .isEmpty();
    assertThat(problems(List.of(), List.of())).isEmpty();
  }

  @Test
  void temperatures_that_are_too_close_or_in_the_wrong_order_are_refused() {
    assertThat(problems(List.of(MAIN, session(WARM, WARM.replace("12", "10"))), List.of()))
        .containsExactly(
            "c.csv:6: found 10 Cel for the cold run of a pair under season; expected more than 2 Cel"
                + " below the 12 Cel of the warm run in c.csv. To fix: name the warm run first, or"
                + " take the pair out of season. [facts-contradict]");
    assertThat(problems(List.of(session(WARM, WARM.replace("12", "-3")), MAIN), List.of()))
        .singleElement()
        .asString()
        .contains("found 12 Cel for the cold run");
    assertThat(
            problems(List.of(), List.of(drive("50,degF", "50,degF"), drive("50,degF", "51,degF"))))
        .singleElement()
        .asString()
        .startsWith("t.csv:9: found 51 degF for the cold run");
  }

  @Test
  void an_unknown_temperature_is_refused() {
    assertThat(
            problems(List.of(MAIN, session(WARM, "ambient temperature,,Cel,unknown")), List.of()))
        .containsExactly(
            "c.csv:6: found an ambient temperature that is not known, of a run under season;"
                + " expected the temperature of the air, which distinguishes warm from cold. To fix: state"
                + " it, or take the pair out of season. [item-missing]");
  }

  @Test
  void a_run_of_another_vehicle_is_refused() {
    assertThat(
            problems(
                List.of(),
                List.of(drive("50,degF", "70,degF"), drive("Northmoor Finch", "Veldt Carrier"))))
        .containsExactly(
            "t.csv:3: found the vehicle \"Veldt Carrier\" of a run under season; expected the"
                + " vehicle of the reported session, \"Northmoor Finch\". To fix: write the vehicle"
                + " alike if it is the same, or take the pair out of season. [facts-contradict]");
  }
}
