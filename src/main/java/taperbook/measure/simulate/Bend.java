package taperbook.measure.simulate;

import taperbook.model.UncertaintySource;

/**
 * Where the course between two points bends, given the rates on both sides.
 *
 * <p>Carried on from both sides, the neighbouring rates meet in a corner. The course may have that
 * corner or run more smoothly, between corner and chord; which it did in a gap is not known, so a
 * stated share of the draws goes through the corner and the rest through a point between corner and
 * chord. Where the rates make no corner in the gap, the bend lies anywhere that the slowest and
 * fastest of the rates allow. Power may also step: a stated share of the draws goes through any
 * point between the two readings.
 *
 * <p>State of charge is an integral of power, so its corners are always smooth; power's are not.
 */
final class Bend {
  private final double stretch;
  private final double stepping;
  private double at;
  private double value;

  /**
   * Bends.
   *
   * @param sharp share of the draws that goes through the corner, below 1
   * @param stepping share of the draws that steps
   */
  private Bend(double sharp, double stepping) {
    this.stretch = 1 / (1 - sharp);
    this.stepping = stepping;
  }

  /** Bends of a quantity that power adds up to. */
  static Bend ofIntegral() {
    return new Bend(0, 0);
  }

  /** Bends of power. */
  static Bend ofPower() {
    return new Bend(0.5, 0.25);
  }

  /**
   * Draws a bend.
   *
   * @param draws the draws
   * @param time length of the gap, s, positive
   * @param rise change of the value over the gap
   * @param rate the same by time
   * @param before rate in the gap before
   * @param after rate in the gap after
   */
  void draw(Draws draws, double time, double rise, double rate, double before, double after) {
    if (stepping > 0 && draws.share(UncertaintySource.BETWEEN_READINGS) < stepping) {
      at = time * draws.share(UncertaintySource.BETWEEN_READINGS);
      value = rise * draws.share(UncertaintySource.BETWEEN_READINGS);
      return;
    }
    boolean falling = before > rate && rate > after;
    boolean growing = before < rate && rate < after;
    if (falling || growing) {
      at = (rise - after * time) / (before - after);
      double share = least(1, draws.share(UncertaintySource.BETWEEN_READINGS) * stretch);
      value = rate * at + share * (before - rate) * at;
      return;
    }
    at = time * draws.share(UncertaintySource.BETWEEN_READINGS);
    double slowest = least(rate, least(before, after));
    double fastest = most(rate, most(before, after));
    double low = most(slowest * at, rise - fastest * (time - at));
    double high = least(fastest * at, rise - slowest * (time - at));
    value = draws.between(UncertaintySource.BETWEEN_READINGS, low, most(low, high));
  }

  /** Time of the bend since the start of the gap, s. */
  double at() {
    return at;
  }

  /** Value at the bend above that at the start of the gap. */
  double value() {
    return value;
  }

  // Math.min and Math.max look at the signs of zeros too: a tenth of a simulation.

  private static double least(double one, double other) {
    return one < other ? one : other;
  }

  private static double most(double one, double other) {
    return one > other ? one : other;
  }
}
