package taperbook.metric.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.diagnostics.Problem;
import taperbook.input.Given;
import taperbook.metric.ReportMetrics;
import taperbook.metric.Sessions;
import taperbook.plan.RoadTopic;
import taperbook.plan.RoadWishes;
import taperbook.plan.Trip;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.Numbers;
import taperbook.result.ReportResult;
import taperbook.session.Session;

final class StopPhaseMetricsTest {
  private static final String READINGS =
      """
      elapsed [min:s],soc [%],power [kW]
      0:00,10,50
      10:00,40,100
      20:00,70,100
      30:00,80,50
      """;

  private static final String CLOCK =
      """
      clock [ISO 8601],soc [%],power [kW]
      23:50:00,10,0
      23:50:30,10,50
      00:10:00,70,100
      00:20:00,80,0
      """;

  private static Session session(String readings, String more) {
    return Given.session(readings, Given.CONDITIONS + more).value().orElseThrow();
  }

  private static Estimate of(Session session, String id) {
    return Sessions.measure(session).main().numbers().estimate(id).orElseThrow();
  }

  @Test
  void phases_of_a_stop_are_differences_of_its_times() {
    Session session =
        session(
            READINGS,
            """
            arrived,-4:30,min:s,
            plugged in,-1:00,min:s,
            first power,-0:20,min:s,
            unplugged,30:30,min:s,
            left,32:00,min:s,
            """);
    assertThat(of(session, "arrival_to_power_time"))
        .isEqualTo(new Estimate(250, new Interval(249, 251)));
    assertThat(of(session, "plug_in_to_power_time").value()).isEqualTo(40);
    assertThat(of(session, "stop_door_to_door").value()).isEqualTo(36.5 * 60);
    // 36:30 minus 30:50 of charging.
    assertThat(of(session, "stop_overhead")).isEqualTo(new Estimate(340, new Interval(338, 342)));
  }

  @Test
  void clock_times_may_be_before_and_after_midnight() {
    Session session =
        session(
            CLOCK,
            """
            arrived,23:46:00,ISO 8601,
            plugged in,23:49:00,ISO 8601,
            left,00:21:00,ISO 8601,
            """);
    assertThat(of(session, "stop_door_to_door").value()).isEqualTo(35 * 60);
    // Power flows from 23:50:30, and was last displayed at 0:10.
    assertThat(of(session, "arrival_to_power_time"))
        .isEqualTo(new Estimate(270, new Interval(239, 271)));
    assertThat(of(session, "stop_overhead").bounds().contains(35 * 60 - 19.5 * 60)).isTrue();
  }

  @Test
  void missing_times_withhold_dependent_phases_and_no_times_give_no_phases() {
    Numbers some = Sessions.measure(session(READINGS, "arrived,-3:00,min:s,\n")).main().numbers();
    assertThat(some.get("stop_door_to_door").withheld())
        .contains("the time of leaving is not stated");
    assertThat(some.estimate("arrival_to_power_time")).isPresent();
    Numbers none = Sessions.measure(session(READINGS, "")).main().numbers();
    assertThat(none.find("stop_door_to_door")).isEmpty();
  }

  @Test
  void a_trip_without_stated_overhead_uses_the_measured_one() {
    Session session =
        session(
            READINGS,
            """
            arrived,-4:30,min:s,
            first power,-0:20,min:s,
            unplugged,30:30,min:s,
            left,32:00,min:s,
            """);
    assertThat(trip(session, Trip.Overhead.USUAL).secondsPerStop()).isEqualTo(340);
    assertThat(trip(session, Trip.Overhead.STATED).secondsPerStop()).isEqualTo(300);
    assertThat(trip(session(READINGS, ""), Trip.Overhead.USUAL).secondsPerStop()).isEqualTo(300);
  }

  private static Trip trip(Session session, Trip.Overhead overhead) {
    Trip trip =
        new Trip(
            new WantedDistance(800, Unit.KILOMETRE),
            new WantedDistance(50, Unit.KILOMETRE),
            300,
            100,
            10,
            OptionalDouble.empty(),
            overhead);
    ReportResult result =
        ReportMetrics.measure(
            Sessions.roadPlan(List.of(), new RoadWishes(Set.of(RoadTopic.TRIP), Optional.of(trip))),
            session,
            List.of(),
            List.of(Sessions.rangeTest(Map.of())));
    return result.plan().wishes().road().trip().orElseThrow();
  }

  @Test
  void the_first_row_is_plugging_in_only_if_its_power_is_zero() {
    String id = "session_time";
    assertThat(label(session(READINGS, ""), id)).isEqualTo("Time from the first row to the end");
    assertThat(label(session(CLOCK, ""), id)).isEqualTo("Time from plugging in to the end");
    assertThat(label(session(READINGS, "plugged in,0:00,min:s,\n"), id))
        .isEqualTo("Time from plugging in to the end");
    assertThat(label(session(CLOCK, "plugged in,23:49:00,ISO 8601,\n"), id))
        .isEqualTo("Time from the first row to the end");
  }

  private static String label(Session session, String id) {
    return Sessions.measure(session).main().numbers().get(id).label();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          arrived,2:00,min:s, | "2:00"; expected a time not after the power on r.csv:2 for arrived
          left,29:00,min:s, | "29:00"; expected a time not before the power on r.csv:5 for left
          first power,10:00,min:s, | "10:00"; expected a time not after the power on r.csv:2 for first power
          left,12:00:00,ISO 8601, | "12:00:00"; expected a time in the form that the readings have for left
          left,noon,ISO 8601, | "noon"; expected an ISO 8601 time
          left,31:00,, | no unit
          left,31,min:s, | "31"; expected minutes and seconds
          """)
  void impossible_times_are_reported_at_their_location(String row, String part) {
    List<Problem> problems = Given.session(READINGS, Given.CONDITIONS + row + "\n").problems();
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).sentence()).contains(part.strip());
    assertThat(problems.get(0).place().line()).isGreaterThan(1);
  }
}
