package taperbook.input;

import static org.assertj.core.api.Assertions.assertThat;
import static taperbook.input.Given.CONDITIONS;
import static taperbook.input.Given.RANGE_TEST;

import java.util.List;
import org.junit.jupiter.api.Test;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.Severity;
import taperbook.session.RangeTest;
import taperbook.session.Session;

final class VehicleCheckTest {
  private static final String READINGS = "elapsed [s],soc [%]\n0,10\n1,11\n";
  private final Session finch = session("Northmoor Finch");
  private final Session carrier = session("Veldt Carrier");

  @Test
  void a_range_test_of_the_sessions_vehicle_is_accepted() {
    assertThat(
            VehicleCheck.check(
                List.of(carrier, finch), List.of(rangeTest("Northmoor Finch")), List.of()))
        .isEmpty();
  }

  @Test
  void range_test_of_another_vehicle_is_reported_as_a_notice() {
    List<Problem> problems =
        VehicleCheck.check(
            List.of(finch, carrier),
            List.of(rangeTest("Northmor Finch"), rangeTest("Bicycle")),
            List.of());
    assertThat(problems).allMatch(p -> p.severity() == Severity.NOTICE);
    assertThat(problems.stream().map(Problem::sentence))
        .containsExactly(
            "t.csv:3: found the vehicle \"Northmor Finch\"; expected the vehicle of a session in the"
                + " report: \"Northmoor Finch\", \"Veldt Carrier\". To fix: write \"Northmoor"
                + " Finch\" if they are the same. [vehicle-differs]",
            "t.csv:3: found the vehicle \"Bicycle\"; expected the vehicle of a session in the report:"
                + " \"Northmoor Finch\", \"Veldt Carrier\". To fix: name a range test of that"
                + " vehicle, or leave this one out. [vehicle-differs]");
  }

  @Test
  void drives_that_agree_are_all_used() {
    RangeTest test = rangeTest("Northmoor Finch");
    assertThat(VehicleCheck.check(List.of(finch), List.of(test, test), List.of())).isEmpty();
  }

  @Test
  void a_drive_in_other_weather_is_reported_as_unused() {
    assertThat(reported("temperature,50", "temperature,70"))
        .containsExactly(
            "t.csv:9: found the ambient temperature 70 degF, and 50 degF in t.csv, which is named"
                + " first: no number rests on this drive; expected air temperatures within 5 Cel of"
                + " the first. To fix: name a drive in like weather, or take this one out of the"
                + " front matter. [range-test-unused]");
  }

  @Test
  void a_drive_in_other_weather_that_a_season_needs_is_used() {
    RangeTest warm = Given.good(Given.rangeTest(RANGE_TEST.replace("ture,50", "ture,70")));
    assertThat(
            VehicleCheck.check(
                List.of(finch), List.of(rangeTest("Northmoor Finch"), warm), List.of(warm)))
        .isEmpty();
  }

  @Test
  void a_drive_at_a_second_speed_is_reported_as_unused() {
    assertThat(reported("average speed,110", "average speed,90"))
        .containsExactly(
            "t.csv:8: found the average speed 90 km/h, and 110 km/h in t.csv, which is named"
                + " first: no number rests on this drive; expected a speed within 3 km/h of the"
                + " first, or drives at three speeds for a range over speed. To fix: name a drive"
                + " at a third speed, or take this one out of the front matter. [range-test-unused]");
  }

  @Test
  void drives_at_three_speeds_are_all_used() {
    RangeTest slow = Given.good(Given.rangeTest(RANGE_TEST.replace("speed,110", "speed,90")));
    RangeTest fast = Given.good(Given.rangeTest(RANGE_TEST.replace("speed,110", "speed,130")));
    List<RangeTest> all = List.of(rangeTest("Northmoor Finch"), slow, fast);
    assertThat(VehicleCheck.check(List.of(finch), all, List.of())).isEmpty();
  }

  private List<String> reported(String fact, String other) {
    assertThat(RANGE_TEST).contains(fact);
    RangeTest second = Given.good(Given.rangeTest(RANGE_TEST.replace(fact, other)));
    return VehicleCheck.check(
            List.of(finch), List.of(rangeTest("Northmoor Finch"), second), List.of())
        .stream()
        .map(Problem::sentence)
        .toList();
  }

  private static Session session(String vehicle) {
    return Given.good(Given.session(READINGS, CONDITIONS.replace("Northmoor Finch", vehicle)));
  }

  private static RangeTest rangeTest(String vehicle) {
    return Given.good(Given.rangeTest(RANGE_TEST.replace("Northmoor Finch", vehicle)));
  }
}
