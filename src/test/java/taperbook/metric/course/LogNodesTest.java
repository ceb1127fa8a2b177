package taperbook.metric.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.quantity.DistinctNumbers;
import taperbook.session.Channel;
import taperbook.session.Trace;

final class LogNodesTest {
  private static final double[] SECONDS = IntStream.rangeClosed(0, 1920).asDoubleStream().toArray();

  private static Optional<Trace> power(DoubleUnaryOperator kilowatt) {
    double[] power = Arrays.stream(SECONDS).map(kilowatt).toArray();
    return Sessions.session()
        .channel(Channel.POWER, 0.5, SECONDS, power)
        .build()
        .trace(Channel.POWER);
  }

  private static double[] nodes(Optional<Trace> power, int cells) {
    return LogNodes.of(DistinctNumbers.of(Arrays.stream(SECONDS)), power, cells);
  }

  @Test
  void nodes_are_evenly_spaced_without_power_and_at_steady_power() {
    double[] even = IntStream.rangeClosed(0, 160).mapToDouble(i -> 12 * i).toArray();
    assertThat(nodes(Optional.empty(), 160)).containsExactly(even, within(1e-9));
    assertThat(nodes(power(t -> 80), 160)).containsExactly(even, within(1e-9));
  }

  /** From 20 to 100 kW in 80 s, and to 60 kW in the rest: two thirds of the variation, 53 nodes. */
  @Test
  void half_the_nodes_follow_the_variation_of_the_power() {
    double[] nodes = nodes(power(t -> t < 80 ? 20 + t : 100 - (t - 80) / 46), 160);
    // An interval has one node at most, which is fewer than the ramp's share.
    assertThat(nodes).hasSizeBetween(140, 161);
    assertThat(nodes[0]).isZero();
    assertThat(nodes[nodes.length - 1]).isCloseTo(1920, within(1e-9));
    // Intervals of 2 s have one node at most: 40 of them in the ramp.
    assertThat(between(nodes, 0, 80)).isBetween(38L, 40L);
    // A quarter of the time of the rest, half of the nodes of time and a third of those of power.
    assertThat(between(nodes, 1000, 1460)).isBetween(25L, 28L);
  }

  @Test
  void a_step_between_two_rows_has_a_short_cell() {
    double[] nodes = nodes(power(t -> t < 1001 ? 100 : 70), 160);
    assertThat(between(nodes, 998, 1004)).isGreaterThanOrEqualTo(2);
    assertThat(between(nodes, 100, 900)).isBetween(32L, 35L);
  }

  @Test
  void a_log_of_few_rows_has_no_more_cells_than_rows() {
    double[] seconds = IntStream.range(0, 101).mapToDouble(i -> 30 * i).toArray();
    double[] nodes = LogNodes.of(DistinctNumbers.of(Arrays.stream(seconds)), Optional.empty(), 160);
    assertThat(nodes).containsExactly(seconds, within(1e-9));
  }

  private static long between(double[] nodes, double from, double to) {
    return Arrays.stream(nodes).filter(t -> t > from && t <= to).count();
  }
}
