package taperbook.metric.bounds;

/** Energy and time where power runs linearly over time. */
public final class LinearPower {
  /** Seconds in an hour: kWh times this are kWs. */
  public static final double SECONDS_PER_HOUR = 3600;

  private LinearPower() {}

  /**
   * Time until an energy is added: the root of P t + (dP/dt) t^2 / 2 = E, in the stable form that
   * also serves where the slope is zero.
   *
   * @param start power at the start, kW
   * @param slope change of the power, kW/s
   * @param kilowattSeconds the energy, kWs, not negative
   * @return the time, s; zero where there is no power
   */
  public static double secondsFor(double start, double slope, double kilowattSeconds) {
    double root = Math.sqrt(Math.max(0, start * start + 2 * slope * kilowattSeconds));
    return start + root <= 0 ? 0 : 2 * kilowattSeconds / (start + root);
  }
}
