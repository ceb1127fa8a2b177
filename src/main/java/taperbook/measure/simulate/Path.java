package taperbook.measure.simulate;

/**
 * One drawn course of a quantity over time: piecewise linear, times never falling. Its arrays are
 * written anew for each trial.
 */
final class Path {
  private final double[] seconds;
  private final double[] values;
  private final double slopeSpan;
  private int size;

  /**
   * An empty path.
   *
   * @param capacity most points
   * @param slopeSpan height of the stretch at an end whose slope is carried on past it
   */
  Path(int capacity, double slopeSpan) {
    this.slopeSpan = slopeSpan;
    this.seconds = new double[capacity];
    this.values = new double[capacity];
  }

  void clear() {
    size = 0;
  }

  /** Adds a point; a time before the last one's is raised to it. */
  void add(double second, double value) {
    int i = size;
    double before = i > 0 ? seconds[i - 1] : second;
    seconds[i] = second > before ? second : before;
    values[i] = value;
    size = i + 1;
  }

  int size() {
    return size;
  }

  double second(int i) {
    return seconds[i];
  }

  double value(int i) {
    return values[i];
  }

  double firstValue() {
    return values[0];
  }

  double lastValue() {
    return values[size - 1];
  }

  /** The value at a time; outside the path the first or last value. */
  double at(double second) {
    if (second <= seconds[0]) {
      return values[0];
    }
    if (second >= seconds[size - 1]) {
      return values[size - 1];
    }
    int i = upper(seconds, second);
    double span = seconds[i] - seconds[i - 1];
    double share = span > 0 ? (second - seconds[i - 1]) / span : 1;
    return values[i - 1] + share * (values[i] - values[i - 1]);
  }

  /**
   * When a path that never falls reaches a value. Before the first value and past the last one the
   * first and last slope are carried on.
   */
  double timeOf(double value) {
    int n = size;
    if (value <= values[0]) {
      return extended(0, 1, value);
    }
    if (value > values[n - 1]) {
      return extended(n - 1, -1, value);
    }
    int low = 0;
    int high = n - 1;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (values[middle] >= value) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return between(high, value);
  }

  /**
   * As {@link #timeOf}, for many values in one walk.
   *
   * @param rising values, never falling
   * @param times filled in with the time of each
   */
  void timesOf(double[] rising, double[] times) {
    int high = 1;
    for (int k = 0; k < rising.length; k++) {
      double value = rising[k];
      if (value <= values[0]) {
        times[k] = extended(0, 1, value);
      } else if (value > values[size - 1]) {
        times[k] = extended(size - 1, -1, value);
      } else {
        while (values[high] < value) {
          high++;
        }
        times[k] = between(high, value);
      }
    }
  }

  private double between(int high, double value) {
    double rise = values[high] - values[high - 1];
    double share = rise > 0 ? (value - values[high - 1]) / rise : 1;
    return seconds[high - 1] + share * (seconds[high] - seconds[high - 1]);
  }

  /**
   * Carries the slope at an end on to a value outside: the mean slope over the stretch next to the
   * end that is at least {@code slopeSpan} high, as the very last piece may be all but flat.
   */
  private double extended(int end, int inward, double value) {
    int other = end + inward;
    while (other > 0 && other < size - 1 && isNear(values[other], values[end])) {
      other += inward;
    }
    double rise = values[other] - values[end];
    double run = seconds[other] - seconds[end];
    return rise == 0 ? seconds[end] : seconds[end] + (value - values[end]) * run / rise;
  }

  private boolean isNear(double one, double other) {
    return one == other || Math.abs(one - other) < slopeSpan;
  }

  /** Index of the first time above a time; the time lies inside the path. */
  private int upper(double[] rising, double second) {
    int low = 0;
    int high = size - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (rising[middle] > second) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }
}
