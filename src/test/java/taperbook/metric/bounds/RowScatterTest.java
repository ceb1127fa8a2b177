package taperbook.metric.bounds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.session.Trace;

final class RowScatterTest {
  private static final int ROWS = 3000;

  /** Returns a log of a curve with normal noise. */
  static Trace log(DoubleUnaryOperator curve, double noise) {
    return trace(ROWS, curve, noise);
  }

  private static Trace trace(int rows, DoubleUnaryOperator curve, double noise) {
    Random random = new Random(8);
    double[] seconds = IntStream.range(0, rows).asDoubleStream().toArray();
    double[] values = new double[rows];
    for (int i = 0; i < rows; i++) {
      values[i] = curve.applyAsDouble(i) + noise * random.nextGaussian();
    }
    return new Trace("r", seconds, values, IntStream.range(2, rows + 2).toArray(), 0.05, 0);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 1, 5})
  void it_is_the_standard_deviation_of_normal_noise(double noise) {
    assertThat(RowScatter.of(log(t -> 150 - t / 50, noise))).isCloseTo(noise, within(0.05 * noise));
  }

  @Test
  void ramps_and_steps_do_not_fluctuate() {
    assertThat(RowScatter.of(log(t -> t < 90 ? t : t < 900 ? 90 : 60, 0))).isZero();
  }

  @Test
  void two_hundred_readings_are_by_hand_and_one_more_is_a_log() {
    assertThat(RowScatter.of(trace(200, t -> 50, 1))).isZero();
    assertThat(RowScatter.of(trace(201, t -> 50, 1))).isBetween(0.7, 1.3);
  }
}
