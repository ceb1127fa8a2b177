package taperbook.measure.simulate;

import java.util.ArrayDeque;
import java.util.stream.IntStream;
import taperbook.model.Trace;

/**
 * Thins a dense trace so that the polygon of what is left stays within a display step of every
 * reading, by the algorithm of Douglas and Peucker.
 *
 * @see <a href="https://doi.org/10.3138/FM57-6770-U75U-7727">Douglas, Peucker, Cartographica 10
 *     (1973) 112-122</a>
 */
final class Thinned {
  /** More readings than this are a logger's: they are thinned, or taken as they are. */
  private static final int MANY = 200;

  private final Trace trace;
  private final boolean[] kept;
  private final double tolerance;

  private Thinned(Trace trace) {
    this.trace = trace;
    this.kept = new boolean[trace.size()];
    this.tolerance = 2 * trace.halfStep();
  }

  /** True if a trace is a logger's: no hand wrote down so many readings. */
  static boolean isDense(Trace trace) {
    return trace.size() > MANY;
  }

  static Trace of(Trace trace) {
    Thinned thinned = new Thinned(trace);
    int last = trace.size() - 1;
    thinned.kept[0] = true;
    thinned.kept[last] = true;
    thinned.keepBetween(0, last);
    int[] indices = IntStream.rangeClosed(0, last).filter(i -> thinned.kept[i]).toArray();
    return new Trace(
        trace.row(0).file(),
        IntStream.of(indices).mapToDouble(trace::second).toArray(),
        IntStream.of(indices).mapToDouble(trace::value).toArray(),
        IntStream.of(indices).map(i -> trace.row(i).line()).toArray(),
        trace.halfStep(),
        trace.clockHalfStep());
  }

  private void keepBetween(int first, int last) {
    ArrayDeque<int[]> open = new ArrayDeque<>();
    open.push(new int[] {first, last});
    while (!open.isEmpty()) {
      int[] span = open.pop();
      int farthest = farthest(span[0], span[1]);
      if (farthest > 0) {
        kept[farthest] = true;
        open.push(new int[] {span[0], farthest});
        open.push(new int[] {farthest, span[1]});
      }
    }
  }

  /** The reading farthest from the chord, or 0 if all lie within the tolerance. */
  private int farthest(int first, int last) {
    double time = trace.second(last) - trace.second(first);
    double slope = time > 0 ? (trace.value(last) - trace.value(first)) / time : 0;
    int farthest = 0;
    double most = tolerance;
    for (int i = first + 1; i < last; i++) {
      double chord = trace.value(first) + slope * (trace.second(i) - trace.second(first));
      double off = Math.abs(trace.value(i) - chord);
      if (off > most) {
        most = off;
        farthest = i;
      }
    }
    return farthest;
  }
}
