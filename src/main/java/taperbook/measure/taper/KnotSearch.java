package taperbook.measure.taper;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The best breakpoints among the abscissae of the points, for each number of segments: dynamic
 * programming over places, where the cost up to a place is kept as a function of the line's height
 * there (the lower envelope of quadratics), since the segments of a continuous line are not
 * independent of each other. It needs no starting values and finds the least sum of squares of all
 * choices, up to the fineness of the heights at which pieces of the envelope are compared.
 *
 * @see <a href="https://doi.org/10.1080/10618600.2018.1512868">P. Fearnhead, R. Maidstone, A.
 *     Letchford, Detecting changes in slope with an L0 penalty, Journal of Computational and
 *     Graphical Statistics 28 (2019) 265-275</a>
 */
final class KnotSearch {
  /** Places that are tried at most; with more abscissae every second, third... is a place. */
  private static final int MOST_PLACES = 120;

  /** Heights at which the pieces of an envelope are compared. */
  private static final int HEIGHTS = 96;

  private final double[] places;
  private final double[][] prefix;
  private final double[] heights = new double[HEIGHTS];
  private final CostPiece start;

  /**
   * A search over points.
   *
   * @param soc abscissae, %, never falling
   * @param power ordinates, kW
   */
  KnotSearch(double[] soc, double[] power) {
    double[] distinct = Arrays.stream(soc).distinct().toArray();
    int stride = (distinct.length + MOST_PLACES - 1) / MOST_PLACES;
    this.places = thinned(distinct, stride);
    double centre = Arrays.stream(power).average().orElse(0);
    this.prefix = prefix(soc, power, centre);
    double low = Arrays.stream(power).min().orElse(0) - centre;
    double high = Arrays.stream(power).max().orElse(0) - centre;
    for (int h = 0; h < HEIGHTS; h++) {
      // A breakpoint may lie above or below all points: let the heights reach past them.
      heights[h] = low + (high - low) * (1.5 * h / (HEIGHTS - 1) - 0.25);
    }
    double[] first = prefix[0];
    this.start = new CostPiece(first[0], -2 * first[3], first[5], 0, Optional.empty());
  }

  private static double[] thinned(double[] distinct, int stride) {
    List<Double> kept = new ArrayList<>();
    for (int i = 0; i < distinct.length - 1; i += stride) {
      kept.add(distinct[i]);
    }
    kept.add(distinct[distinct.length - 1]);
    return kept.stream().mapToDouble(d -> d).toArray();
  }

  /** For each place, sums of 1, q, q^2, P, q P and P^2 over the points up to it. */
  private double[][] prefix(double[] soc, double[] power, double centre) {
    double[][] sums = new double[places.length][];
    double[] sum = new double[6];
    int i = 0;
    for (int place = 0; place < places.length; place++) {
      for (; i < soc.length && soc[i] <= places[place]; i++) {
        double p = power[i] - centre;
        sum[0]++;
        sum[1] += soc[i];
        sum[2] += soc[i] * soc[i];
        sum[3] += p;
        sum[4] += soc[i] * p;
        sum[5] += p * p;
      }
      sums[place] = sum.clone();
    }
    return sums;
  }

  /**
   * The best breakpoints for one segment, two, and so on.
   *
   * @param mostSegments how far to go, at least 1
   * @return for each number of segments that the places allow, the inner breakpoints, %
   */
  List<double[]> best(int mostSegments) {
    int last = places.length - 1;
    List<double[]> found = new ArrayList<>();
    List<List<CostPiece>> reached = new ArrayList<>();
    for (int place = 0; place <= last; place++) {
      reached.add(place == 0 ? List.of(start) : List.of());
    }
    for (int k = 1; k <= mostSegments; k++) {
      List<List<CostPiece>> next = new ArrayList<>();
      for (int place = 0; place <= last; place++) {
        next.add(envelope(reached, place));
      }
      next.get(last).stream()
          .min(Comparator.comparingDouble(CostPiece::least))
          .ifPresent(piece -> found.add(breaks(piece)));
      reached = next;
    }
    return found;
  }

  private List<CostPiece> envelope(List<List<CostPiece>> reached, int place) {
    List<CostPiece> candidates = new ArrayList<>();
    for (int from = 0; from < place; from++) {
      SegmentSums sums = sums(from, place);
      reached.get(from).forEach(piece -> candidates.add(piece.extended(sums, place)));
    }
    if (candidates.isEmpty()) {
      return List.of();
    }
    return IntStream.of(least(candidates)).distinct().mapToObj(candidates::get).toList();
  }

  /** For each height the index of the piece that costs least there. */
  private int[] least(List<CostPiece> candidates) {
    int[] least = new int[HEIGHTS];
    double[] cost = new double[HEIGHTS];
    Arrays.fill(cost, Double.POSITIVE_INFINITY);
    for (int c = 0; c < candidates.size(); c++) {
      CostPiece piece = candidates.get(c);
      for (int h = 0; h < HEIGHTS; h++) {
        double here = piece.at(heights[h]);
        if (here < cost[h]) {
          cost[h] = here;
          least[h] = c;
        }
      }
    }
    return least;
  }

  private SegmentSums sums(int from, int to) {
    double[] s = new double[6];
    for (int i = 0; i < 6; i++) {
      s[i] = prefix[to][i] - prefix[from][i];
    }
    double at = places[from];
    double width = places[to] - at;
    double end = (s[1] - at * s[0]) / width;
    double endEnd = (s[2] - 2 * at * s[1] + at * at * s[0]) / (width * width);
    double endPower = (s[4] - at * s[3]) / width;
    return new SegmentSums(
        s[0] - 2 * end + endEnd, end - endEnd, endEnd, s[3] - endPower, endPower, s[5]);
  }

  private double[] breaks(CostPiece last) {
    List<Double> reversed = new ArrayList<>();
    Optional<CostPiece> piece = last.before();
    while (piece.isPresent() && piece.get().before().isPresent()) {
      reversed.add(places[piece.get().place()]);
      piece = piece.get().before();
    }
    return reversed.stream().mapToDouble(d -> d).sorted().toArray();
  }
}
