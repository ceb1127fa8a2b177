package taperbook.input.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import taperbook.session.Samples;

/**
 * The sampling interval of a recording, if it is regular, and its dropouts. Interval: the 95th
 * percentile of all; dropout: over five times that. Common practice, no source.
 */
final class SamplingInterval {
  private static final int MIN_TIMES = 50;
  private static final double INTERVAL_QUANTILE = 0.95;
  private static final double DROPOUT_FACTOR = 5;

  private final Samples samples;
  private final OptionalDouble usualSeconds;

  /** Analyses readings whose times never decrease. */
  SamplingInterval(Samples samples) {
    this.samples = samples;
    this.usualSeconds = usual();
  }

  /** Returns the usual interval, s; empty if there are few times or none of them differ. */
  OptionalDouble usualSeconds() {
    return usualSeconds;
  }

  /** Returns each index whose time is much later than the previous one. */
  List<Integer> dropouts() {
    List<Integer> found = new ArrayList<>();
    for (int i = 1; usualSeconds.isPresent() && i < samples.size(); i++) {
      if (gap(i) > DROPOUT_FACTOR * usualSeconds.getAsDouble()) {
        found.add(i);
      }
    }
    return found;
  }

  /** Returns the time between an index and the previous one, s. */
  double gap(int index) {
    return samples.second(index) - samples.second(index - 1);
  }

  /** Returns the line of the reading with an index. */
  int line(int index) {
    return samples.line(index);
  }

  private OptionalDouble usual() {
    if (samples.size() < MIN_TIMES) {
      return OptionalDouble.empty();
    }
    double[] gaps = new double[samples.size() - 1];
    for (int i = 0; i < gaps.length; i++) {
      gaps[i] = gap(i + 1);
    }
    Arrays.sort(gaps);
    double usual = gaps[(int) Math.ceil(INTERVAL_QUANTILE * gaps.length) - 1];
    return usual > 0 ? OptionalDouble.of(usual) : OptionalDouble.empty();
  }
}
