package taperbook.input.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static taperbook.input.Given.goodSession;
import static taperbook.input.Given.problems;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.diagnostics.Checked;
import taperbook.input.Given;
import taperbook.session.Channel;
import taperbook.session.Session;
import taperbook.session.Trace;

final class TimeColumnTest {
  private static final String CLOCK_EXPECTED =
      "expected an ISO 8601 time, as in 2026-03-14T10:02:05+01:00, 2026-03-14T10:02:05 or 10:02:05."
          + " To fix: write the time in one of these forms. [cell-not-a-time]";

  @ParameterizedTest
  @CsvSource({
    "min:s,0:00,75:30,4530,0.5",
    "min:s,00:00,7:05.25,425.25,0.005",
    "h:min:s,0:00:00,1:15:30,4530,0.5",
    "h:min:s,0:00:00.0,01:15:30.5,4530.5,0.05",
    "s,0,4530,4530,0.5",
    "s,0,12.5,12.5,0.05",
    "min,0,75.5,4530,3",
    "min,0,75,4500,30",
    "h,0,1.25,4500,18"
  })
  void elapsed_times_are_parsed(
      String unit, String first, String second, double seconds, double half) {
    Trace trace = soc("elapsed [" + unit + "]", first, second);
    assertThat(trace.second(0)).isZero();
    assertThat(trace.second(1)).isEqualTo(seconds);
    assertThat(trace.clockHalfStep()).isCloseTo(half, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "2026-03-14T10:02:05Z,2026-03-14T10:02:35Z,30,0.5",
    "2026-03-14T10:02:05+01:00,2026-03-14T09:03:05.5Z,60.5,0.05",
    "2026-03-14T10:02:05+0100,2026-03-14T12:02:05+03,0,0.5",
    "2026-03-14T23:59:30-02:30,2026-03-15T02:30:00z,30,0.5",
    "2026-02-28T23:59:00,2026-03-01t00:01:00,120,0.5",
    "2026-03-14 10:02,2026-03-14 11:02,3600,30",
    "10:02:05,11:02:05,3600,0.5"
  })
  void clock_times_are_relative_to_the_first(
      String first, String second, double seconds, double half) {
    Trace trace = soc("clock [ISO 8601]", first, second);
    assertThat(trace.second(0)).isZero();
    assertThat(trace.second(1)).isEqualTo(seconds);
    assertThat(trace.clockHalfStep()).isCloseTo(half, within(1e-12));
  }

  @Test
  void times_of_day_may_pass_midnight_more_than_once() {
    Checked<Session> checked =
        Given.session(
            "clock [ISO 8601],soc [%]\n22:00,1\n23:30,2\n08:00,3\n19:00,4\n01:00,5\n",
            Given.CONDITIONS);
    assertThat(checked.value().orElseThrow().recorded().high()).isEqualTo(27 * 3600);
    assertThat(Given.sentences(checked)).hasSize(2).allMatch(s -> s.contains("past-midnight"));
  }

  @Test
  void elapsed_times_keep_their_zero() {
    Session session = goodSession("elapsed [min:s],soc [%]\n2:00,10\n3:00,11\n");
    assertThat(session.recorded().low()).isEqualTo(120);
  }

  @Test
  void a_decreasing_time_is_reported_once() {
    assertThat(problems("elapsed [min:s],soc [%]\n7:30,10\n7:05,11\n8:00,12\n"))
        .containsExactly(
            "r.csv:3:1: found \"7:05\" after \"7:30\" on line 2; expected a time that is not before"
                + " the one above. To fix: correct the time, or put the rows in order."
                + " [time-goes-back]");
    assertThat(problems("clock [ISO 8601],soc [%]\n10:05,10\n10:04,11\n10:06,12\n"))
        .singleElement()
        .asString()
        .startsWith("r.csv:3:1: found \"10:04\" after \"10:05\" on line 2;");
    assertThat(problems("clock [ISO 8601],soc [%]\n23:58,10\n00:02,11\n23:59,12\n"))
        .last()
        .asString()
        .startsWith("r.csv:4:1: found \"23:59\" after \"00:02\" on line 3;");
  }

  @Test
  void an_invalid_elapsed_time_is_refused() {
    assertThat(problems("elapsed [min:s],soc [%]\n7:5,10\n0:07:05,11\n\"7:05,5\",12\n7:60,13\n"))
        .containsExactly(
            "r.csv:2:1: found \"7:5\"; expected minutes and seconds, as in 75:30. To fix: write the"
                + " time in that form, seconds with two digits, or leave the cell empty."
                + " [cell-not-a-time]",
            "r.csv:3:1: found \"0:07:05\"; expected minutes and seconds, as in 75:30. To fix: write"
                + " minutes and seconds only (a spreadsheet may have turned 7:05 into 7:05:00), or"
                + " head the column [h:min:s] if its times are in hours. [cell-not-a-time]",
            "r.csv:4:1: found \"7:05,5\"; expected minutes and seconds, as in 75:30. To fix: write"
                + " a decimal point, or part the cells of the file with semicolons."
                + " [cell-not-a-time]",
            "r.csv:5:1: found \"7:60\"; expected minutes and seconds, as in 75:30. To fix: write"
                + " the time in that form, seconds with two digits, or leave the cell empty."
                + " [cell-not-a-time]");
    assertThat(problems("elapsed [h:min:s],soc [%]\n7:05,10\n1:00:00,11\n"))
        .containsExactly(
            "r.csv:2:1: found \"7:05\"; expected hours, minutes and seconds, as in 1:15:30."
                + " To fix: write the time in that form, seconds with two digits, or leave the cell"
                + " empty. [cell-not-a-time]");
  }

  @Test
  void elapsed_time_out_of_range_is_refused() {
    assertThat(problems("elapsed [s],soc [%]\n-1,10\n1,11\n"))
        .containsExactly(
            "r.csv:2:1: found \"-1\"; expected a time from 0 to 360000 s. To fix: count the time"
                + " from plugging in. [cell-out-of-range]");
    assertThat(problems("elapsed [min:s],soc [%]\n1:00,10\n6000:01,11\n"))
        .containsExactly(
            "r.csv:3:1: found \"6000:01\"; expected minutes and seconds, as in 75:30, up to 100 h."
                + " To fix: count the time from plugging in. [cell-out-of-range]");
  }

  @ParameterizedTest
  @CsvSource({"10h05", "2026-02-30T10:00", "25:00", "10:05Z", "14.3.2026 10:00", "10:00:60"})
  void an_invalid_clock_time_is_refused(String cell) {
    assertThat(problems("clock [ISO 8601],soc [%]\n" + cell + ",10\n10:05,11\n"))
        .containsExactly("r.csv:2:1: found \"" + cell + "\"; " + CLOCK_EXPECTED);
  }

  @Test
  void a_clock_column_has_one_time_format() {
    assertThat(problems("clock [ISO 8601],soc [%]\n2026-03-14T10:00,10\n10:05,11\n"))
        .containsExactly(
            "r.csv:3:1: found \"10:05\"; expected the same form of time as on line 2. To"
                + " fix: write all times of the column alike. [cell-not-a-time]");
  }

  private static Trace soc(String head, String first, String second) {
    return goodSession(head + ",soc [%]\n" + first + ",10\n" + second + ",11\n")
        .trace(Channel.SOC)
        .orElseThrow();
  }
}
