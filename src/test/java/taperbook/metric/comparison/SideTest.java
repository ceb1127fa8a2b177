package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.metric.course.Courses;
import taperbook.metric.recording.Finding;
import taperbook.quantity.Estimate;
import taperbook.session.Channel;
import taperbook.session.RowRef;

/** A side of five rows, 10 % apart, whose power was read over a part of the time. */
final class SideTest {
  private static final double[] SECONDS = {0, 100, 200, 300, 1000};
  private static final double[] SOC = {10, 20, 30, 40, 50};
  private static final double[] POWER = {90, 100, 110, 100, 80};

  private static Finding<Side> side(UnaryOperator<Sessions> channels) {
    return Side.of(
        new Courses(
            channels.apply(Sessions.session().named("s")).build(), Optional.empty(), Courses.FEW));
  }

  private static Side side(double[] powerSeconds, double[] power) {
    return side(s ->
            s.channel(Channel.SOC, 0.5, SECONDS, SOC)
                .channel(Channel.POWER, 0.5, powerSeconds, power))
        .value()
        .orElseThrow();
  }

  @Test
  void ends_that_were_read_are_known_within_half_a_step() {
    Side side = side(SECONDS, POWER);
    assertThat(side.start()).isEqualTo(Estimate.around(10, 0.5));
    assertThat(side.end()).isEqualTo(Estimate.around(50, 0.5));
  }

  @Test
  void ends_where_power_was_read_later_or_until_earlier_are_interpolated() {
    Side side = side(new double[] {50, 150, 270}, new double[] {90, 100, 110});
    assertThat(side.start().value()).isCloseTo(15, within(1e-9));
    assertThat(side.end().value()).isCloseTo(37, within(1e-9));
    // The true charge lies between the readings around it, within half a step, but less certainly
    // than at a reading.
    assertThat(side.start().bounds().low()).isBetween(9.5, 14.4);
    assertThat(side.start().bounds().high()).isBetween(15.6, 20.5);
    assertThat(side.end().bounds().low()).isBetween(29.5, 36.4);
    assertThat(side.end().bounds().high()).isBetween(37.6, 40.5);
  }

  @Test
  void the_rows_of_a_stretch_are_those_around_its_times_in_both_channels() {
    Side side = side(new double[] {0, 150, 1000}, new double[] {90, 100, 80});
    // 20 % is at 100 s, 35 % at 250 s: state of charge in rows 2 to 4, power in rows 1 to 3.
    assertThat(side.rows(20, 35)).extracting(RowRef::line).containsExactly(3, 4, 5, 2, 3, 4);
    assertThat(side.rows(12, 12)).extracting(RowRef::line).containsExactly(2, 3, 2, 3);
    assertThat(side.rows(10, 10)).extracting(RowRef::line).containsExactly(2, 2);
  }

  @Test
  void a_wide_gap_of_either_channel_counts() {
    // 300 s to 1000 s is longer than a minute and than 6 % of the time, 100 s is as well.
    Side both = side(SECONDS, POWER);
    assertThat(both.isInWideGap(45)).isTrue();
    assertThat(both.isInWideGap(50)).isFalse();
    double[] close = new double[51];
    double[] soc = new double[51];
    double[] power = new double[51];
    for (int i = 0; i < close.length; i++) {
      close[i] = 20 * i;
      soc[i] = 10 + i;
      power[i] = 100;
    }
    double[] gap = {0, 20, 40, 200, 220, 1000};
    double[] six = {100, 100, 100, 100, 100, 100};
    Side ofPower =
        side(s -> s.channel(Channel.SOC, 0.5, close, soc).channel(Channel.POWER, 0.5, gap, six))
            .value()
            .orElseThrow();
    assertThat(ofPower.isInWideGap(11.5)).isFalse();
    assertThat(ofPower.isInWideGap(14)).isTrue();
    assertThat(ofPower.isInWideGap(20.5)).isFalse();
    double[] charges = {10, 11, 12, 20, 21, 60};
    Side ofCharge =
        side(s -> s.channel(Channel.SOC, 0.5, gap, charges).channel(Channel.POWER, 1, close, power))
            .value()
            .orElseThrow();
    assertThat(ofCharge.isInWideGap(11.5)).isFalse();
    assertThat(ofCharge.isInWideGap(14)).isTrue();
    assertThat(ofCharge.isInWideGap(20.5)).isFalse();
  }

  @Test
  void a_missing_channel_is_the_reason() {
    assertThat(reason(s -> s.channel(Channel.SOC, 0.5, SECONDS, SOC)))
        .isEqualTo("no power was recorded in s");
    assertThat(reason(s -> s.channel(Channel.POWER, 0.5, SECONDS, POWER)))
        .isEqualTo("no state of charge was recorded in s");
  }

  @Test
  void channels_need_two_rows_of_power_and_a_common_time() {
    String reason = "power and state of charge were not read over the same time in s";
    double[] once = {0};
    assertThat(
            reason(
                s ->
                    s.channel(Channel.SOC, 0.5, SECONDS, SOC)
                        .channel(Channel.POWER, 0.5, once, once)))
        .isEqualTo(reason);
    double[] later = {1000, 1100, 1200};
    assertThat(
            reason(
                s ->
                    s.channel(Channel.SOC, 0.5, SECONDS, SOC)
                        .channel(Channel.POWER, 0.5, later, later)))
        .isEqualTo(reason);
  }

  private static String reason(UnaryOperator<Sessions> channels) {
    return side(channels).reason().orElseThrow().text();
  }
}
