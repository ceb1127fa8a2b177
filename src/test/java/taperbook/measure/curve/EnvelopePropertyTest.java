package taperbook.measure.curve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.model.Interval;
import taperbook.model.Trace;

/**
 * The bounds against truths drawn from a closed form: P(s) = a - k s kW into C kWh, whose course is
 * s(t) = (a - (a - k s0) exp(-100 k t / (3600 C))) / k. Read at random times, rounded and thinned.
 */
final class EnvelopePropertyTest {
  private static final double FULL = 60;

  static IntStream seeds() {
    return IntStream.rangeClosed(1, 200);
  }

  private record Truth(double a, double k, double start) {
    double soc(double second) {
      double rate = 100 * k / (3600 * FULL);
      return (a - (a - k * start) * Math.exp(-rate * second)) / k;
    }

    double second(double soc) {
      return 3600 * FULL / (100 * k) * Math.log((a - k * start) / (a - k * soc));
    }
  }

  private static Truth truth(Random random) {
    return new Truth(
        100 + 100 * random.nextDouble(), 0.4 + 0.6 * random.nextDouble(), 15 * random.nextDouble());
  }

  private static Trace readings(Truth truth, Random random) {
    double end = truth.second(85);
    int n = 8 + random.nextInt(60);
    double[] seconds = new double[n];
    double[] soc = new double[n];
    int[] lines = new int[n];
    for (int i = 0; i < n; i++) {
      double jitter = i == 0 || i == n - 1 ? 0 : 0.6 * (random.nextDouble() - 0.5);
      double true_ = end * (i + jitter) / (n - 1);
      seconds[i] = Math.rint(true_);
      soc[i] = Math.rint(truth.soc(true_));
      lines[i] = i + 2;
    }
    return new Trace("r", seconds, soc, lines, 0.5, 0.5);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void the_true_course_stays_inside_the_bounds(int seed) {
    Random random = new Random(seed);
    Truth truth = truth(random);
    Trace trace = readings(truth, random);
    Envelope envelope = new Envelope(trace);
    for (int i = 0; i < 300; i++) {
      double second = trace.lastSecond() * i / 300;
      Interval bounds = envelope.at(second);
      assertThat(bounds.contains(truth.soc(second)))
          .as(second + " s: " + truth.soc(second) + " in " + bounds)
          .isTrue();
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void the_true_time_of_a_value_lies_between_earliest_and_latest(int seed) {
    Random random = new Random(seed);
    Truth truth = truth(random);
    Trace trace = readings(truth, random);
    Envelope envelope = new Envelope(trace);
    for (double soc = Math.ceil(truth.start() + 1); soc <= 84; soc += 0.5) {
      Optional<Interval> times = envelope.timesOf(Interval.exactly(soc));
      assertThat(times).isPresent();
      assertThat(times.get().contains(truth.second(soc)))
          .as(soc + " %: " + truth.second(soc) + " s in " + times.get())
          .isTrue();
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void a_later_value_is_never_reached_earlier(int seed) {
    Random random = new Random(seed);
    Trace trace = readings(truth(random), random);
    Envelope envelope = new Envelope(trace);
    double earliest = Double.NEGATIVE_INFINITY;
    double latest = Double.NEGATIVE_INFINITY;
    for (double soc = trace.firstValue() + 1; soc <= trace.lastValue(); soc += 0.25) {
      assertThat(envelope.earliest(soc)).isGreaterThanOrEqualTo(earliest - 1e-9);
      assertThat(envelope.latest(soc)).isGreaterThanOrEqualTo(latest - 1e-9);
      earliest = envelope.earliest(soc);
      latest = envelope.latest(soc);
    }
  }
}
