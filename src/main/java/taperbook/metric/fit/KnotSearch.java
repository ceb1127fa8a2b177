package taperbook.metric.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds the best breakpoints for each number of parameters, with knots at the abscissae of the
 * points and steps between them. Uses dynamic programming over places. The segments of a continuous
 * line are not independent, so the cost up to a place is a function of the line's height there (the
 * lower envelope of quadratics). After a step the line begins at any height, at the least cost up
 * to the previous place. The search needs no starting values and finds the global minimum, up to
 * the resolution of the heights at which pieces of the envelope are compared.
 *
 * @see <a href="https://doi.org/10.1080/10618600.2018.1512868">P. Fearnhead, R. Maidstone, A.
 *     Letchford, Detecting changes in slope with an L0 penalty, Journal of Computational and
 *     Graphical Statistics 28 (2019) 265-275</a>
 */
final class KnotSearch {
  /** Parameters of a knot: its place and a slope. */
  static final int OF_KNOT = 2;

  /** Parameters of a step: its place, its height and a slope. */
  static final int OF_STEP = 3;

  /** Number of heights at which the pieces of an envelope are compared. */
  private static final int HEIGHTS = 96;

  private final boolean withSteps;
  private final double[] places;
  private final double[][] prefix;
  private final double lowest;
  private final double fineness;

  /** For each number of parameters and each place, the ends of segments there. */
  private final List<List<List<CostPiece>>> ends = new ArrayList<>();

  /** Least sum of squares over all points so far; pieces that cost more are pruned. */
  private double bound = Double.POSITIVE_INFINITY;

  /**
   * Creates a search over points.
   *
   * @param soc abscissae, %, non-decreasing
   * @param power ordinates, kW
   * @param withSteps false for a line without steps
   */
  KnotSearch(double[] soc, double[] power, boolean withSteps) {
    this.withSteps = withSteps;
    this.places = Arrays.stream(soc).distinct().toArray();
    double centre = Arrays.stream(power).average().orElse(0);
    this.prefix = prefix(soc, power, centre);
    double low = Arrays.stream(power).min().orElse(0) - centre;
    double high = Arrays.stream(power).max().orElse(0) - centre;
    // A breakpoint may lie above or below all points, so the heights extend past them.
    this.lowest = low - 0.25 * (high - low);
    this.fineness = Math.max(1.5 * (high - low) / (HEIGHTS - 1), Double.MIN_NORMAL);
  }

  /** Returns for each place the sums of 1, q, q^2, P, q P and P^2 over the points up to it. */
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
   * Returns the best breakpoints: on the first call with the parameters of a straight line only, on
   * each further call with one more.
   *
   * @return the breakpoints, %; empty if the places do not allow a line with that many parameters
   */
  Optional<List<Break>> next() {
    List<List<CostPiece>> begins =
        IntStream.range(0, places.length).mapToObj(this::beginnings).toList();
    int last = places.length - 1;
    Optional<CostPiece> best =
        candidates(begins, last).stream().min(Comparator.comparingDouble(CostPiece::least));
    best.ifPresent(piece -> bound = Math.min(bound, piece.least() + 1e-9 * prefix[last][5]));
    ends.add(
        IntStream.range(0, places.length)
            .mapToObj(place -> place == last ? List.<CostPiece>of() : envelope(begins, place))
            .toList());
    return best.map(this::breaks);
  }

  /** Returns the pieces that a segment from a place can continue. */
  private List<CostPiece> beginnings(int place) {
    int spent = ends.size();
    if (spent == 0) {
      double[] first = prefix[0];
      return place > 0
          ? List.of()
          : List.of(new CostPiece(first[0], -2 * first[3], first[5], 0, Optional.empty(), false));
    }
    List<CostPiece> found = new ArrayList<>();
    if (spent >= OF_KNOT) {
      found.addAll(ends.get(spent - OF_KNOT).get(place));
    }
    if (withSteps && spent >= OF_STEP && place > 0) {
      double[] before = prefix[place - 1];
      double[] to = prefix[place];
      ends.get(spent - OF_STEP).get(place - 1).stream()
          .min(Comparator.comparingDouble(CostPiece::least))
          .map(piece -> piece.stepped(to[0] - before[0], to[3] - before[3], to[5] - before[5]))
          .ifPresent(found::add);
    }
    return found;
  }

  private List<CostPiece> candidates(List<List<CostPiece>> begins, int place) {
    List<CostPiece> candidates = new ArrayList<>();
    for (int from = 0; from < place; from++) {
      if (!begins.get(from).isEmpty()) {
        SegmentSums sums = sums(from, place);
        for (CostPiece piece : begins.get(from)) {
          CostPiece extended = piece.extended(sums, place);
          if (extended.least() <= bound) {
            candidates.add(extended);
          }
        }
      }
    }
    return candidates;
  }

  /** Returns the pieces with the least cost at some height. */
  private List<CostPiece> envelope(List<List<CostPiece>> begins, int place) {
    List<CostPiece> candidates = candidates(begins, place);
    int[] least = new int[HEIGHTS];
    Arrays.fill(least, -1);
    double[] cost = new double[HEIGHTS];
    Arrays.fill(cost, Double.POSITIVE_INFINITY);
    for (int c = 0; c < candidates.size(); c++) {
      CostPiece piece = candidates.get(c);
      double centre = -piece.linear() / (2 * piece.square());
      double reach = Math.sqrt(Math.max(0, bound - piece.least()) / piece.square()) + fineness;
      int to = (int) Math.min(HEIGHTS - 1, Math.floor((centre + reach - lowest) / fineness));
      for (int h = (int) Math.max(0, Math.ceil((centre - reach - lowest) / fineness));
          h <= to;
          h++) {
        double here = piece.at(lowest + h * fineness);
        if (here < cost[h]) {
          cost[h] = here;
          least[h] = c;
        }
      }
    }
    return IntStream.of(least).filter(c -> c >= 0).distinct().mapToObj(candidates::get).toList();
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

  private List<Break> breaks(CostPiece last) {
    List<Break> breaks = new ArrayList<>();
    Optional<CostPiece> piece = last.before();
    while (piece.isPresent() && piece.get().before().isPresent()) {
      CostPiece from = piece.get();
      CostPiece before = from.before().get();
      if (from.step()) {
        double middle = (places[before.place()] + places[from.place()]) / 2;
        breaks.add(new Break(middle, true));
        piece = before.before();
      } else {
        breaks.add(new Break(places[from.place()], false));
        piece = from.before();
      }
    }
    Collections.reverse(breaks);
    return breaks;
  }

  /**
   * The least sum of squares up to a place as a quadratic of the line's height there, with the
   * earlier breakpoints that attain it.
   *
   * @param square coefficient of the height's square, above 0
   * @param linear coefficient of the height
   * @param constant sum of squares at height 0
   * @param place index of the place among the possible breakpoints
   * @param before the preceding piece, at the previous breakpoint
   * @param step true for the beginning of a segment after a step in the gap below the place
   */
  private record CostPiece(
      double square,
      double linear,
      double constant,
      int place,
      Optional<CostPiece> before,
      boolean step) {
    double at(double height) {
      return (square * height + linear) * height + constant;
    }

    double least() {
      return constant - linear * linear / (4 * square);
    }

    /**
     * Returns the cost after one more segment. With u the height at its start and v at its end, its
     * sum of squares is quadratic in both; u is eliminated at its optimum for each v.
     */
    CostPiece extended(SegmentSums sums, int endPlace) {
      double p = square + sums.startStart();
      double b1 = 2 * sums.startEnd();
      double b0 = linear - 2 * sums.startPower();
      return new CostPiece(
          sums.endEnd() - b1 * b1 / (4 * p),
          -2 * sums.endPower() - b1 * b0 / (2 * p),
          constant + sums.powerPower() - b0 * b0 / (4 * p),
          endPlace,
          Optional.of(this),
          false);
    }

    /**
     * Returns the cost after a step to the next place, where the line may begin at any height.
     *
     * @param points number of points at that place
     * @param power sum of their powers
     * @param squares sum of the squares of their powers
     */
    CostPiece stepped(double points, double power, double squares) {
      return new CostPiece(
          points, -2 * power, least() + squares, place + 1, Optional.of(this), true);
    }
  }
}
