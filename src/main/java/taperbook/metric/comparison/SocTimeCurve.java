package taperbook.metric.comparison;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import taperbook.session.Trace;

/**
 * Time over state of charge by linear interpolation of the readings, at the first time each state
 * of charge is reached. Defines where a comparison evaluates and which rows it names. Covers the
 * time over which both state of charge and power were recorded.
 */
final class SocTimeCurve {
  private final double[] percents;
  private final double[] seconds;
  private int size;

  /** Creates the curve of a session whose two channels overlap in time. */
  SocTimeCurve(Trace soc, Trace power) {
    double from = Math.max(soc.firstSecond(), power.firstSecond());
    double to = Math.min(soc.lastSecond(), power.lastSecond());
    double[] times =
        DoubleStream.concat(times(soc), times(power))
            .filter(t -> from <= t && t <= to)
            .sorted()
            .distinct()
            .toArray();
    // A fall in state of charge adds a corner at the next reading.
    this.percents = new double[2 * times.length];
    this.seconds = new double[2 * times.length];
    add(soc.at(times[0]), times[0]);
    for (int i = 1; i < times.length; i++) {
      step(soc, times[i - 1], times[i]);
    }
  }

  /** Returns true if both channels were recorded over a common time span. */
  static boolean exists(Trace soc, Trace power) {
    return Math.max(soc.firstSecond(), power.firstSecond())
        < Math.min(soc.lastSecond(), power.lastSecond());
  }

  private static DoubleStream times(Trace trace) {
    return IntStream.range(0, trace.size()).mapToDouble(trace::second);
  }

  private void step(Trace soc, double from, double to) {
    double most = percents[size - 1];
    double after = soc.at(to);
    if (after <= most) {
      return;
    }
    if (from > seconds[size - 1]) {
      double before = soc.at(from);
      double share = (most - before) / (after - before);
      add(most, from + share * (to - from));
    }
    add(after, to);
  }

  private void add(double percent, double second) {
    percents[size] = percent;
    seconds[size] = second;
    size++;
  }

  /** Returns the lowest state of charge, %. */
  double from() {
    return percents[0];
  }

  /** Returns the highest state of charge, %. */
  double to() {
    return percents[size - 1];
  }

  /** Returns the states of charge at which the curve has corners, ascending, %. */
  double[] corners() {
    return Arrays.stream(percents, 0, size).distinct().toArray();
  }

  /** Returns the time at which a state of charge is first reached, s since plugging in. */
  double second(double percent) {
    int i = firstAtLeast(percent);
    if (i == 0 || percents[i] == percent) {
      return seconds[i];
    }
    double share = (percent - percents[i - 1]) / (percents[i] - percents[i - 1]);
    return seconds[i - 1] + share * (seconds[i] - seconds[i - 1]);
  }

  private int firstAtLeast(double percent) {
    int low = 0;
    int high = size - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (percents[middle] >= percent) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }
}
