package taperbook.format;

import taperbook.quantity.Estimate;

/**
 * The one amount that a value may be off by to either side, where one amount will do.
 *
 * @see <a href="https://doi.org/10.59161/JCGM100-2008E">JCGM 100:2008, 7.2.6: at most two
 *     significant digits, rounded up rather than to the nearest digit</a>
 */
final class Spread {
  /** Ends whose distances from the value differ by no more than this share are nearly even. */
  private static final double MOST_UNEVEN = 0.2;

  private Spread() {}

  /** True if the interval has a width and its ends lie nearly as far from the value. */
  static boolean isEven(Estimate estimate) {
    double below = estimate.value() - estimate.bounds().low();
    double above = estimate.bounds().high() - estimate.value();
    double more = Math.max(below, above);
    return more > 0 && Math.abs(above - below) <= MOST_UNEVEN * more + 1e-9;
  }

  /** Without its unit, to the place that the value is printed to. */
  static String of(Estimate estimate, int most) {
    int places = Rounding.places(estimate.bounds(), most);
    return Rounding.up(
        reach(estimate, Rounding.rounded(estimate.value(), places).doubleValue()), places);
  }

  /** In words, for an estimate in seconds that is printed to a step of at least some seconds. */
  static String ofTime(Estimate seconds, int leastStep) {
    int step = Math.max(leastStep, DurationFormat.step(seconds.bounds()));
    double reach = reach(seconds, (double) DurationFormat.rounded(seconds.value(), step));
    return DurationFormat.up(reach, Math.max(step, DurationFormat.step(reach)));
  }

  private static double reach(Estimate estimate, double printed) {
    return Math.max(printed - estimate.bounds().low(), estimate.bounds().high() - printed);
  }
}
