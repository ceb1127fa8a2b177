package taperbook.check.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The rhythm of a recording: whether it has a usual interval, and where it stops for much longer.
 * Interval: the 95th percentile of all; dropout: over five times that. Common practice, no source.
 */
final class Rhythm {
  private static final int FEWEST_TIMES = 50;
  private static final double USUAL_SHARE = 0.95;
  private static final double DROPOUT_FACTOR = 5;

  private final double[] seconds;
  private final OptionalDouble usualSeconds;

  /** The rhythm of times that rise or stay, s. */
  Rhythm(double[] seconds) {
    this.seconds = seconds.clone();
    this.usualSeconds = usual(seconds);
  }

  /** The usual interval, s; none if times are few or none of them differ. */
  OptionalDouble usualSeconds() {
    return usualSeconds;
  }

  /** Each index whose time comes much later than the one before. */
  List<Integer> dropouts() {
    List<Integer> found = new ArrayList<>();
    for (int i = 1; usualSeconds.isPresent() && i < seconds.length; i++) {
      if (gap(i) > DROPOUT_FACTOR * usualSeconds.getAsDouble()) {
        found.add(i);
      }
    }
    return found;
  }

  /** Time between an index and the one before, s. */
  double gap(int index) {
    return seconds[index] - seconds[index - 1];
  }

  private static OptionalDouble usual(double[] seconds) {
    if (seconds.length < FEWEST_TIMES) {
      return OptionalDouble.empty();
    }
    double[] gaps = new double[seconds.length - 1];
    for (int i = 0; i < gaps.length; i++) {
      gaps[i] = seconds[i + 1] - seconds[i];
    }
    Arrays.sort(gaps);
    double usual = gaps[(int) Math.ceil(USUAL_SHARE * gaps.length) - 1];
    return usual > 0 ? OptionalDouble.of(usual) : OptionalDouble.empty();
  }
}
