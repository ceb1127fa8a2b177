package taperbook.metric.bounds;

/** Energy and time for power that is linear in time. */
public final class LinearPower {
  /** Seconds per hour: converts kWh to kWs. */
  public static final double SECONDS_PER_HOUR = 3600;

  private LinearPower() {}

  /**
   * Returns the time until an energy is added: the root of P t + (dP/dt) t^2 / 2 = E, in the stable
   * form that also holds for zero slope.
   *
   * @param start power at the start, kW
   * @param slope change of the power, kW/s
   * @param kilowattSeconds the energy, kWs, not negative
   * @return the time, s; zero if there is no power
   */
  public static double secondsFor(double start, double slope, double kilowattSeconds) {
    double root = Math.sqrt(Math.max(0, start * start + 2 * slope * kilowattSeconds));
    return start + root <= 0 ? 0 : 2 * kilowattSeconds / (start + root);
  }
}
