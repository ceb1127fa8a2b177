package taperbook.metric.trip;

/**
 * The standard atmosphere of ISO 2533:1975: 15 °C and 1013.25 hPa at sea level, dry. Constants from
 * memory; a test checks the resulting densities.
 */
public final class Air {
  /** Temperature of the standard atmosphere at sea level, °C. */
  public static final double STANDARD_CELSIUS = 15;

  /** Pressure of the standard atmosphere at sea level, hPa. */
  public static final double STANDARD_HECTOPASCALS = 1013.25;

  /** Specific gas constant of dry air, J/(kg K). */
  private static final double GAS_CONSTANT = 287.05287;

  private static final double ZERO_CELSIUS_KELVINS = 273.15;
  private static final double KELVINS_PER_METRE = 0.0065;
  private static final double GRAVITY = 9.80665;

  private Air() {}

  /**
   * Returns the density of dry air by the ideal gas law, kg/m3.
   *
   * <pre>
   *   rho = p / (R T)
   * </pre>
   *
   * @param celsius temperature, above -273.15 °C
   * @param hectopascals pressure, hPa, above zero
   */
  public static double density(double celsius, double hectopascals) {
    double kelvins = celsius + ZERO_CELSIUS_KELVINS;
    if (!(kelvins > 0 && hectopascals > 0)) {
      throw new IllegalArgumentException("no such air: " + celsius + " \u00b0C, " + hectopascals);
    }
    return 100 * hectopascals / (GAS_CONSTANT * kelvins);
  }

  /** Returns the density of the standard atmosphere at sea level, kg/m3. */
  public static double standardDensity() {
    return density(STANDARD_CELSIUS, STANDARD_HECTOPASCALS);
  }

  /**
   * Returns the pressure of the standard atmosphere at a height, hPa.
   *
   * <pre>
   *   p = p0 (1 - L h / T0)^(g / (R L))
   * </pre>
   *
   * @param metres height above sea level, m, below 11 000
   */
  public static double pressureAt(double metres) {
    double kelvins = STANDARD_CELSIUS + ZERO_CELSIUS_KELVINS;
    double exponent = GRAVITY / (GAS_CONSTANT * KELVINS_PER_METRE);
    return STANDARD_HECTOPASCALS * Math.pow(1 - KELVINS_PER_METRE * metres / kelvins, exponent);
  }
}
