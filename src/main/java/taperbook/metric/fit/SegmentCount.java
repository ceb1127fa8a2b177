package taperbook.metric.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import taperbook.quantity.Interval;

/**
 * Selects the number of segments and steps that the points support. For each number of parameters p
 * (two per knot: place and slope; three per step: also its height), with n points and S the
 * residual sum of squares of the best line,
 *
 * <pre>
 *   C(p) = n ln(max(S, S0) / n) + max(p ln n, 2 p n / (n - p - 1))
 * </pre>
 *
 * and the line with the least C is chosen. The first penalty is that of BIC, which finds the true
 * number for many points; the second is that of AICc, which is stricter for few points, as in most
 * hand-recorded sessions. The stricter one applies. S0 is the expected sum from display rounding
 * alone, so that no segment follows the steps of a display.
 *
 * @see <a href="https://doi.org/10.1214/aos/1176344136">G. Schwarz, Estimating the dimension of a
 *     model, Annals of Statistics 6 (1978) 461-464, for BIC</a>
 * @see <a href="https://doi.org/10.1093/biomet/76.2.297">C. M. Hurvich, C.-L. Tsai, Regression and
 *     time series model selection in small samples, Biometrika 76 (1989) 297-307, for AICc</a>
 */
final class SegmentCount {
  /** Maximum number of knots of a continuous line: six segments. */
  private static final int MOST_KNOTS = 5;

  /** Maximum number of steps of a line without knots. */
  private static final int MOST_STEPS = 5;

  /** Parameters of a straight line: intercept, slope and scatter. */
  private static final int OF_STRAIGHT_LINE = 3;

  /**
   * A difference of 6 in twice the log of the Bayes factor, which C approximates, is odds of 20 to
   * 1. Source: R. E. Kass, A. E. Raftery, Journal of the American Statistical Association 90 (1995)
   * 773-795, doi 10.1080/01621459.1995.10476572, 3.2.
   */
  private static final double TWENTY_TO_ONE = 6;

  /** Maximum excess of a line's criterion for its knots to be tried in other gaps. */
  private static final double BEFORE_MOVING = 20;

  /** Minimum step as a share of the greatest power, as for a hold; rule of this report. */
  private static final double LEAST_STEP = 0.02;

  private final TaperPoints points;
  private final double[] soc;
  private final double[] power;
  private final List<PiecewiseLine> lines = new ArrayList<>();
  private final List<Double> criteria = new ArrayList<>();

  /**
   * Fits a straight line, then lines with more parameters as long as the points may support them.
   */
  SegmentCount(TaperPoints points) {
    this.points = points;
    this.soc = points.socs();
    this.power = points.powers();
    // The search places knots at readings but steps between them, which favours steps. So
    // continuous lines are searched separately.
    search(new KnotSearch(soc, power, false), MOST_KNOTS * KnotSearch.OF_KNOT);
    search(new KnotSearch(soc, power, true), MOST_STEPS * KnotSearch.OF_STEP);
    List<PiecewiseLine> near =
        IntStream.range(0, lines.size())
            .filter(i -> criteria.get(i) <= least() + BEFORE_MOVING)
            .mapToObj(lines::get)
            .toList();
    lines.clear();
    criteria.clear();
    near.forEach(line -> add(BreakRefinement.of(soc, power, line)));
    while (replaceAStep(chosen())) {}
  }

  private void search(KnotSearch search, int most) {
    int n = points.size();
    double rounding = n * points.halfPower() * points.halfPower() / 3;
    // Stop when even a line with no residual but the rounding of power would be ruled out.
    for (int p = OF_STRAIGHT_LINE;
        p <= OF_STRAIGHT_LINE + most
            && n - p - 1 > 0
            && (lines.isEmpty() || criterion(rounding, n, p) <= least() + TWENTY_TO_ONE);
        p++) {
      search
          .next()
          .flatMap(breaks -> PiecewiseLine.through(soc, power, breaks))
          .map(start -> BreakRefinement.nearby(soc, power, start))
          .ifPresent(this::add);
    }
  }

  /** Adds a line, unless one of its steps does not qualify. */
  private void add(PiecewiseLine line) {
    if (IntStream.range(0, line.segments() - 1).allMatch(j -> !line.isStep(j) || jumps(line, j))) {
      lines.add(line);
      criteria.add(criterion(line));
    }
  }

  /**
   * Returns true if the power changes by more at a step than the adjacent segments do in its gap.
   */
  private boolean jumps(PiecewiseLine line, int j) {
    double slope = Math.max(Math.abs(line.slope(j)), Math.abs(line.slope(j + 1)));
    double least = Math.max(LEAST_STEP * points.scale(), slope * points.gap(line.at(j)).width());
    return Math.abs(line.height(j)) >= least;
  }

  /** Adds the line with a knot in place of a step, if it is better. */
  private boolean replaceAStep(PiecewiseLine line) {
    for (int j = 0; j + 1 < line.segments(); j++) {
      if (line.isStep(j)) {
        List<Break> breaks = new ArrayList<>(line.breaks());
        breaks.set(j, new Break(line.at(j), false));
        Optional<PiecewiseLine> other =
            PiecewiseLine.through(soc, power, breaks)
                .map(start -> BreakRefinement.of(soc, power, start))
                .filter(l -> criterion(l) < criterion(line));
        if (other.isPresent()) {
          add(other.get());
          return chosen() != line;
        }
      }
    }
    return false;
  }

  private static int parameters(PiecewiseLine line) {
    return line.breaks().stream()
        .mapToInt(b -> b.step() ? KnotSearch.OF_STEP : KnotSearch.OF_KNOT)
        .reduce(OF_STRAIGHT_LINE, Integer::sum);
  }

  private double criterion(PiecewiseLine line) {
    double sum = Math.max(line.residualSumOfSquares(), FitUncertainty.sumOfRounding(points, line));
    return criterion(sum, points.size(), parameters(line));
  }

  private static double criterion(double sum, int n, int p) {
    return n * Math.log(sum / n) + Math.max(p * Math.log(n), 2.0 * p * n / (n - p - 1));
  }

  /** Returns the line with the least criterion; among equal ones that with fewer segments. */
  PiecewiseLine chosen() {
    return lines.get(criteria.indexOf(least()));
  }

  private double least() {
    return criteria.stream().mapToDouble(c -> c).min().orElseThrow();
  }

  /** Returns the fewest and most segments that the readings do not rule out at odds of 20 to 1. */
  Interval plausibleCounts() {
    double limit = least() + TWENTY_TO_ONE;
    Interval counts = Interval.exactly(chosen().segments());
    for (int i = 0; i < lines.size(); i++) {
      if (criteria.get(i) <= limit) {
        counts = counts.hull(lines.get(i).segments());
      }
    }
    return counts;
  }
}
