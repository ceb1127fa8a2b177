package taperbook.metric.course;

import taperbook.quantity.Interval;

/**
 * One range test that the record of the drive allows; NaN for what is not known.
 *
 * @param fullRange driven range of a full battery, km
 * @param consumption energy used for the distance, Wh/km
 * @param ratedRange range that the maker states, km
 * @param speedShare where in its interval a speed lies, from 0 to 1
 */
public record Drive(double fullRange, double consumption, double ratedRange, double speedShare) {
  static final Drive NONE = new Drive(Double.NaN, Double.NaN, Double.NaN, 0.5);

  /**
   * A speed that is known within bounds, km/h. It need not be this drive's: all cars of a report
   * take a trip at one speed.
   */
  public double speedWithin(Interval bounds) {
    return bounds.low() + speedShare * bounds.width();
  }
}
