package taperbook.input;

import static org.assertj.core.api.Assertions.assertThat;
import static taperbook.input.Given.CONDITIONS;

import java.util.List;
import org.junit.jupiter.api.Test;
import taperbook.diagnostics.Problem;
import taperbook.session.Session;

final class StopsCheckTest {
  private static Session session(String old, String other) {
    assertThat(CONDITIONS).contains(old);
    return Given.good(
        Given.session("elapsed [s],soc [%]\n0,10\n1,11\n", CONDITIONS.replace(old, other)));
  }

  private static final Session MAIN = session("12000", "12000");

  @Test
  void stops_of_one_car_on_one_day_are_accepted() {
    assertThat(StopsCheck.check(MAIN, List.of(MAIN, session("12000", "12210")))).isEmpty();
    assertThat(StopsCheck.check(MAIN, List.of())).isEmpty();
  }

  @Test
  void a_stop_of_another_vehicle_or_another_day_is_refused() {
    List<Session> stops =
        List.of(session("Northmoor Finch", "Veldt Carrier"), session("2026-03-14", "2026-03-15"));
    assertThat(StopsCheck.check(MAIN, stops).stream().map(Problem::sentence))
        .containsExactly(
            "c.csv:3: found a stop whose vehicle is \"Veldt Carrier\"; expected the vehicle of the"
                + " reported session, \"Northmoor Finch\". To fix: take the stop out of the front"
                + " matter, or fix what is wrong. [facts-contradict]",
            "c.csv:2: found a stop whose date is \"2026-03-15\"; expected the date of the"
                + " reported session, \"2026-03-14\". To fix: take the stop out of the front"
                + " matter, or fix what is wrong. [facts-contradict]");
  }
}
