package taperbook.metric;

import java.util.BitSet;
import java.util.Comparator;
import java.util.PriorityQueue;
import taperbook.quantity.Interval;
import taperbook.result.Curve;

/**
 * Thins a curve to a fixed number of points: both ends, then repeatedly the point farthest from the
 * curve kept so far, with both axes scaled to a unit square.
 *
 * @see <a href="https://doi.org/10.3138/FM57-6770-U75U-7727">Douglas, Peucker, Cartographica 10
 *     (1973) 112-122, here with a number of points in place of a tolerance</a>
 */
final class CurveThinning {
  private static final double LITTLE_LESS = 1 - 1e-12;

  /** Bound on the rounding error of a squared distance on the unit square. */
  private static final double ROUNDING = 1e-12;

  private final Curve curve;
  private final double[] xs;
  private final double[] ys;
  private final BitSet kept = new BitSet();
  private final PriorityQueue<Span> open =
      new PriorityQueue<>(
          Comparator.comparingDouble((Span s) -> -s.off()).thenComparingInt(Span::first));

  /**
   * A stretch between two kept points.
   *
   * @param off distance of the farthest point between them from the straight line
   */
  private record Span(int first, int farthest, int last, double off) {}

  private CurveThinning(Curve curve) {
    this.curve = curve;
    double widest = 0;
    double greatest = 0;
    for (int i = 0; i < curve.size(); i++) {
      widest = Math.max(widest, Math.abs(curve.x(i)));
      greatest = Math.max(greatest, Math.abs(curve.y(i)));
    }
    this.xs = new double[curve.size()];
    this.ys = new double[curve.size()];
    for (int i = 0; i < curve.size(); i++) {
      xs[i] = curve.x(i) / (widest > 0 ? widest : 1);
      ys[i] = curve.y(i) / (greatest > 0 ? greatest : 1);
    }
  }

  /**
   * Returns the curve itself if it has no more than {@code most} points, else a curve of {@code
   * most}.
   */
  static Curve of(Curve curve, int most) {
    return curve.size() <= most ? curve : new CurveThinning(curve).thinned(most);
  }

  private Curve thinned(int most) {
    int last = curve.size() - 1;
    kept.set(0);
    kept.set(last);
    kept.set(peak());
    split(0, peak());
    split(peak(), last);
    while (kept.cardinality() < most && !open.isEmpty()) {
      Span span = open.remove();
      kept.set(span.farthest());
      split(span.first(), span.farthest());
      split(span.farthest(), span.last());
    }
    return taken();
  }

  private int peak() {
    int peak = 0;
    for (int i = 1; i < curve.size(); i++) {
      peak = curve.y(i) > curve.y(peak) ? i : peak;
    }
    return peak;
  }

  private void split(int first, int last) {
    double alongX = xs[last] - xs[first];
    double alongY = ys[last] - ys[first];
    double lengthSquared = alongX * alongX + alongY * alongY;
    int farthest = first;
    double most = 0;
    double certainlyNear = -1;
    for (int i = first + 1; i < last; i++) {
      double x = xs[i] - xs[first];
      double y = ys[i] - ys[first];
      double along = x * alongX + y * alongY;
      double across = x * alongY - y * alongX;
      if (along > 0 && along < lengthSquared && across * across < certainlyNear) {
        continue; // The projection is between the ends, and a farther point is known.
      }
      double squared = offSquared(i, first, alongX, alongY, lengthSquared);
      // Skip the root for distances that are certainly smaller.
      if (squared > most * most * LITTLE_LESS && Math.sqrt(squared) > most) {
        most = Math.sqrt(squared);
        farthest = i;
        certainlyNear = (most * most - ROUNDING) * lengthSquared;
      }
    }
    if (farthest > first) {
      open.add(new Span(first, farthest, last, most));
    }
  }

  /** Returns the squared distance of a point from a straight segment. */
  private double offSquared(int i, int from, double alongX, double alongY, double lengthSquared) {
    double x = xs[i] - xs[from];
    double y = ys[i] - ys[from];
    double along = x * alongX + y * alongY;
    double projectedSquared = 0;
    if (along > 0) {
      x = alongX - x;
      y = alongY - y;
      along = x * alongX + y * alongY;
      projectedSquared = along > 0 ? along * along / lengthSquared : 0;
    }
    return Math.max(0, x * x + y * y - projectedSquared);
  }

  private Curve taken() {
    int[] indices = kept.stream().toArray();
    return Curve.of(
        indices.length,
        k -> {
          int i = indices[k];
          boolean isWide = false;
          for (int j = i; k + 1 < indices.length && j < indices[k + 1]; j++) {
            isWide |= curve.wideGapAfter(j);
          }
          return new Curve.Point(
              curve.x(i), curve.y(i), new Interval(curve.low(i), curve.high(i)), isWide);
        });
  }
}
