package taperbook.format;

import taperbook.quantity.Estimate;

/**
 * A symmetric tolerance for a value, if one amount describes both sides.
 *
 * @see <a href="https://doi.org/10.59161/JCGM100-2008E">JCGM 100:2008, 7.2.6: at most two
 *     significant digits, rounded up rather than to the nearest digit</a>
 */
final class Spread {
  /**
   * Maximum relative difference of the distances of both ends from the value to count as symmetric.
   */
  private static final double MAX_UNEVENNESS = 0.2;

  private Spread() {}

  /**
   * Returns true if the interval has a width and its ends are nearly equally far from the value.
   */
  static boolean isEven(Estimate estimate) {
    double below = estimate.value() - estimate.bounds().low();
    double above = estimate.bounds().high() - estimate.value();
    double more = Math.max(below, above);
    return more > 0 && Math.abs(above - below) <= MAX_UNEVENNESS * more + 1e-9;
  }

  /** Returns the tolerance without its unit, to the decimal place of the printed value. */
  static String of(Estimate estimate, int max) {
    int places = Rounding.places(estimate.bounds(), max);
    return Rounding.up(
        reach(estimate, Rounding.rounded(estimate.value(), places).doubleValue()), places);
  }

  /**
   * Returns the tolerance of an estimate in seconds as text, printed with at least the given step.
   */
  static String ofTime(Estimate seconds, int minStep) {
    int step = Math.max(minStep, DurationFormat.step(seconds.bounds()));
    double reach = reach(seconds, (double) DurationFormat.rounded(seconds.value(), step));
    return DurationFormat.up(reach, Math.max(step, DurationFormat.step(reach)));
  }

  private static double reach(Estimate estimate, double printed) {
    return Math.max(printed - estimate.bounds().low(), estimate.bounds().high() - printed);
  }
}
