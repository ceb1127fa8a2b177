package taperbook.input.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import taperbook.session.Samples;

/**
 * The rhythm of a recording: whether it has a usual interval, and where it stops for much longer.
 * Interval: the 95th percentile of all; dropout: over five times that. Common practice, no source.
 */
final class SamplingInterval {
  private static final int FEWEST_TIMES = 50;
  private static final double USUAL_SHARE = 0.95;
  private static final double DROPOUT_FACTOR = 5;

  private final Samples samples;
  private final OptionalDouble usualSeconds;

  /** The rhythm of readings whose times rise or stay. */
  SamplingInterval(Samples samples) {
    this.samples = samples;
    this.usualSeconds = usual();
  }

  /** The usual interval, s; none if times are few or none of them differ. */
  OptionalDouble usualSeconds() {
    return usualSeconds;
  }

  /** Each index whose time comes much later than the one before. */
  List<Integer> dropouts() {
    List<Integer> found = new ArrayList<>();
    for (int i = 1; usualSeconds.isPresent() && i < samples.size(); i++) {
      if (gap(i) > DROPOUT_FACTOR * usualSeconds.getAsDouble()) {
        found.add(i);
      }
    }
    return found;
  }

  /** Time between an index and the one before, s. */
  double gap(int index) {
    return samples.second(index) - samples.second(index - 1);
  }

  /** The line that the reading with an index stands on. */
  int line(int index) {
    return samples.line(index);
  }

  private OptionalDouble usual() {
    if (samples.size() < FEWEST_TIMES) {
      return OptionalDouble.empty();
    }
    double[] gaps = new double[samples.size() - 1];
    for (int i = 0; i < gaps.length; i++) {
      gaps[i] = gap(i + 1);
    }
    Arrays.sort(gaps);
    double usual = gaps[(int) Math.ceil(USUAL_SHARE * gaps.length) - 1];
    return usual > 0 ? OptionalDouble.of(usual) : OptionalDouble.empty();
  }
}
