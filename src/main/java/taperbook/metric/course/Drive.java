package taperbook.metric.course;

import taperbook.quantity.Interval;

/**
 * One draw of a range test that is consistent with its record; NaN for unknown values.
 *
 * @param fullRange driven range of a full battery, km
 * @param consumption energy used for the distance, Wh/km
 * @param ratedRange range stated by the manufacturer, km
 * @param speedShare place of a speed in its interval, from 0 to 1
 */
public record Drive(double fullRange, double consumption, double ratedRange, double speedShare) {
  static final Drive NONE = new Drive(Double.NaN, Double.NaN, Double.NaN, 0.5);

  /**
   * Returns a speed within bounds, km/h. It need not be this drive's: all cars of a report drive a
   * trip at the same speed.
   */
  public double speedWithin(Interval bounds) {
    return bounds.low() + speedShare * bounds.width();
  }
}
