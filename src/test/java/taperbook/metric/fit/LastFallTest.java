package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.quantity.Interval;
import taperbook.session.RowRef;
import taperbook.session.Trace;

final class LastFallTest {
  private static Trace power(double halfStep, double clockHalfStep, double... kilowatts) {
    double[] seconds = IntStream.range(0, kilowatts.length).mapToDouble(i -> 60.0 * i).toArray();
    int[] lines = IntStream.range(2, kilowatts.length + 2).toArray();
    return new Trace("readings.csv", seconds, kilowatts, lines, halfStep, clockHalfStep);
  }

  @Test
  void the_last_of_several_falls_is_used() {
    Trace power = power(0, 0, 100, 70, 90, 85, 75, 60);
    LastFall fall = LastFall.below(power, 0.8).orElseThrow();
    // Halfway between 85 kW at 180 s and 75 kW at 240 s.
    assertThat(fall.second()).isCloseTo(210, within(1e-9));
    assertThat(fall.times()).isEqualTo(new Interval(180, 240));
    assertThat(fall.rows())
        .containsExactly(new RowRef("readings.csv", 5), new RowRef("readings.csv", 6));
  }

  @Test
  void readings_within_rounding_of_the_level_widen_the_bounds() {
    // The level is 80 +- 0.4 and a reading +- 0.5: the two readings of 80 are undecided.
    Trace power = power(0.5, 2, 100, 90, 80, 80, 70);
    LastFall fall = LastFall.below(power, 0.8).orElseThrow();
    assertThat(fall.second()).isCloseTo(180, within(1e-9));
    assertThat(fall.times()).isEqualTo(new Interval(58, 242));
  }

  @Test
  void a_session_that_ends_at_or_near_the_level_has_no_fall() {
    assertThat(LastFall.below(power(0.5, 0, 100, 90, 85), 0.8)).isEmpty();
    assertThat(LastFall.below(power(0.5, 0, 100, 90, 79.5), 0.8)).isEmpty();
    assertThat(LastFall.below(power(0, 0, 100, 70, 90), 0.8)).isEmpty();
  }
}
