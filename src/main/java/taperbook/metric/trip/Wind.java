package taperbook.metric.trip;

/**
 * The factor by which wind multiplies the drag of a steady drive, averaged over directions.
 *
 * <pre>
 *   factor = mean of |V| (v + w cos a) / v^2,   |V|^2 = v^2 + 2 v w cos a + w^2
 * </pre>
 *
 * with the speed {@code v}, the wind {@code w} and the angle {@code a} between the directions of
 * driving and of the wind's origin. The factor is the component along the road of a drag that is
 * quadratic in air speed, with the same drag area from all sides.
 */
public final class Wind {
  private static final int DIRECTIONS = 360;

  private Wind() {}

  /**
   * Returns the factor for one direction.
   *
   * @param wind speed of the wind, in the unit of {@code speed}, not negative
   * @param speed speed of the car, above zero
   * @param degrees angle of the wind to the direction of travel; 0 is a head wind
   */
  public static double oneWay(double wind, double speed, double degrees) {
    if (!(wind >= 0 && speed > 0)) {
      throw new IllegalArgumentException("no such wind: " + wind + " at " + speed);
    }
    double along = speed + wind * Math.cos(Math.toRadians(degrees));
    double across = wind * Math.sin(Math.toRadians(degrees));
    return Math.hypot(along, across) * along / (speed * speed);
  }

  /** Returns the factor for a route driven out and back. */
  public static double outAndBack(double wind, double speed, double degrees) {
    return (oneWay(wind, speed, degrees) + oneWay(wind, speed, degrees + 180)) / 2;
  }

  /** Returns the factor for a route with equal distances in every direction. */
  public static double allAround(double wind, double speed) {
    double sum = 0;
    for (int i = 0; i < DIRECTIONS; i++) {
      sum += oneWay(wind, speed, i * 360.0 / DIRECTIONS);
    }
    return sum / DIRECTIONS;
  }
}
