package taperbook.metric.trip;

import taperbook.quantity.Estimate;

/**
 * Energy of a steady drive at the wheel per distance, Wh/km. A force of 1 N over 1 km is 1000 J or
 * 1/3.6 Wh.
 *
 * <pre>
 *   drag    = rho / 2 * A * v^2 / 3.6         [kg/m3, m2, m/s]
 *   rolling = c * m * g / 3.6                 [kg]
 *   climb   = m * g * h / (3600 * D)          [kg, m, km]
 * </pre>
 *
 * @see <a href="https://www.ecfr.gov/current/title-40/section-1066.210">40 CFR 1066.210: road load
 *     with the grade term M g sin(atan G), g = 9.80665 m/s2</a>
 */
public final class RoadLoad {
  private static final double GRAVITY = 9.80665;
  private static final double NEWTONS_PER_WATT_HOUR_PER_KILOMETRE = 3.6;
  private static final double JOULES_PER_WATT_HOUR = 3600;
  private static final double KILOMETRES_PER_HOUR_PER_METRE_PER_SECOND = 3.6;

  private RoadLoad() {}

  /**
   * Returns the drag in still air.
   *
   * @param density density of the air, kg/m3
   * @param dragArea drag coefficient times frontal area, m2
   * @param speed steady speed, km/h
   */
  public static Estimate drag(Estimate density, Estimate dragArea, Estimate speed) {
    Estimate metresPerSecond = speed.times(1 / KILOMETRES_PER_HOUR_PER_METRE_PER_SECOND);
    return density
        .times(dragArea)
        .times(metresPerSecond)
        .times(metresPerSecond)
        .times(0.5 / NEWTONS_PER_WATT_HOUR_PER_KILOMETRE);
  }

  /**
   * Returns the rolling resistance on a level road.
   *
   * @param coefficient rolling resistance over weight
   * @param mass mass of car and load, kg
   */
  public static Estimate rolling(Estimate coefficient, Estimate mass) {
    return coefficient.times(mass).times(GRAVITY / NEWTONS_PER_WATT_HOUR_PER_KILOMETRE);
  }

  /**
   * Returns the potential energy of the climb per distance.
   *
   * @param mass mass of car and load, kg
   * @param climb height of the end above the start, m
   * @param distance length of the drive, km, certainly above zero
   */
  public static Estimate climb(Estimate mass, Estimate climb, Estimate distance) {
    return mass.times(climb).times(GRAVITY / JOULES_PER_WATT_HOUR).over(distance);
  }
}
