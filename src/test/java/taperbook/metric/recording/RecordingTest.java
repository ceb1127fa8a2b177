package taperbook.metric.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Message;
import taperbook.metric.Sessions;
import taperbook.metric.course.Courses;
import taperbook.metric.trip.ChargeTimes;
import taperbook.quantity.Interval;
import taperbook.quantity.SocWindow;
import taperbook.session.Channel;
import taperbook.session.Session;

/** Channels of a session, and the reasons why something cannot be measured. */
final class RecordingTest {
  private static final double[] SECONDS = {0, 200, 400, 600, 800, 1000};
  private static final double[] SOC = {20, 30, 40, 50, 60, 70};
  private static final double[] POWER = {90, 100, 100, 90, 80, 70};

  private static Recording recording(Session session) {
    NumberFormatter formatter =
        new NumberFormatter(Sessions.plan(List.of(new SocWindow(20, 70)), List.of()).style());
    return Recording.of(session, Optional.empty(), Courses.FEW, formatter);
  }

  private static Recording of(double... soc) {
    double[] seconds = Arrays.copyOf(SECONDS, soc.length);
    return recording(Sessions.session().channel(Channel.SOC, 0.5, seconds, soc).build());
  }

  private static String reason(Finding<?> finding) {
    return finding.reason().map(Message::text).orElse("");
  }

  @Test
  void a_charge_is_reached_between_two_rows() {
    Recording recording = of(SOC);
    assertThat(recording.reached(45).rows()).extracting(r -> r.line()).containsExactly(4, 5);
    assertThat(recording.reached(40).rows()).extracting(r -> r.line()).contains(4);
    assertThat(recording.between(25, 45).rows())
        .extracting(r -> r.line())
        .containsExactly(2, 3, 4, 5);
  }

  @Test
  void a_charge_outside_the_readings_is_not_reached() {
    assertThat(reason(of(SOC).reached(19))).isEqualTo("the session began at 20\u00a0%");
    assertThat(reason(of(SOC).reached(71))).isEqualTo("the session ended at 70\u00a0%");
    // The first of two reasons is given.
    assertThat(reason(of(SOC).between(19, 71))).isEqualTo("the session began at 20\u00a0%");
  }

  @Test
  void too_few_rows_and_a_constant_charge_give_no_times() {
    assertThat(reason(of(20, 30, 40).reached(30))).startsWith("fewer than 4 rows were read");
    assertThat(reason(of(20, 20, 20, 20, 20).reached(20)))
        .startsWith("the state of charge gained is not more");
    assertThat(of(20, 20, 20, 20, 20).clock().value()).isEmpty();
  }

  @Test
  void the_clock_runs_through_the_readings() {
    ChargeTimes clock = of(SOC).clock().value().orElseThrow();
    assertThat(clock.low()).isEqualTo(20);
    assertThat(clock.high()).isEqualTo(70);
    // Ten per cent in 200 s, less than a step of the display away.
    assertThat(clock.seconds(30, 60)).isCloseTo(600, within(20.0));
  }

  @Test
  void energy_follows_from_the_counter_or_from_power() {
    Session power = Sessions.session().channel(Channel.POWER, 0.5, SECONDS, POWER).build();
    assertThat(reason(of(SOC).energy())).isEqualTo("neither energy nor power was recorded");
    assertThat(recording(power).energy().value()).isPresent();
    assertThat(reason(recording(power).charge())).isEqualTo("no state of charge was recorded");
    assertThat(reason(of(SOC).powers())).isEqualTo("no power was recorded");
  }

  @Test
  void readings_are_used_only_around_their_times() {
    Message otherwise = Message.of("metric.soc_time_metrics.no_power_was_read_there");
    Recording power =
        recording(Sessions.session().channel(Channel.POWER, 0.5, SECONDS, POWER).build());
    assertThat(power.powersWithin(1000, 1200, otherwise).value()).isPresent();
    assertThat(power.powersWithin(1001, 1200, otherwise).reason()).contains(otherwise);
    assertThat(of(SOC).chargeAround(new Interval(-5, 0)).value()).isPresent();
    assertThat(reason(of(SOC).chargeAround(new Interval(1001, 1002))))
        .startsWith("the state of charge was not read");
  }
}
