package taperbook.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A unit of measurement, with the symbol used in column headers and {@code unit} cells.
 *
 * <p>Symbols follow UCUM where it has a short one for the unit. Factors: the international mile is
 * 1609.344 m, the foot 0.3048 m, the pound 0.45359237 kg, the kilowatt-hour 3.6e6 J, all exact; the
 * pound-force per square inch is 6894.757 Pa; degrees Fahrenheit convert by (F - 32)/1.8.
 *
 * @see <a href="https://doi.org/10.6028/NIST.SP.811e2008">NIST SP 811 (2008), appendix B.8</a>
 */
public enum Unit {
  /** Second, the base unit of time. */
  SECOND("s", Quantity.TIME, 1),
  /** Minute. */
  MINUTE("min", Quantity.TIME, 60),
  /** Hour. */
  HOUR("h", Quantity.TIME, 3600),
  /** Per cent, the base unit of state of charge. */
  PERCENT("%", Quantity.SHARE, 1),
  /** Kilowatt, the base unit of power. */
  KILOWATT("kW", Quantity.POWER, 1),
  /** Watt. */
  WATT("W", Quantity.POWER, 1e-3),
  /** Kilowatt-hour, the base unit of energy. */
  KILOWATT_HOUR("kWh", Quantity.ENERGY, 1),
  /** Watt-hour. */
  WATT_HOUR("Wh", Quantity.ENERGY, 1e-3),
  /** Kilowatt-hour per per cent of state of charge. */
  KILOWATT_HOUR_PER_PERCENT("kWh/%", Quantity.ENERGY_PER_SHARE, 1),
  /** Kilowatt per per cent of state of charge: slope of a charging curve. */
  KILOWATT_PER_PERCENT("kW/%", Quantity.POWER_PER_SHARE, 1),
  /** Per hour: power over usable energy, called C-rate in the industry. */
  PER_HOUR("1/h", Quantity.RATE, 1),
  /** Degree Celsius, the base unit of temperature. */
  CELSIUS("Cel", Quantity.TEMPERATURE, 1),
  /** Degree Fahrenheit. */
  FAHRENHEIT("degF", Quantity.TEMPERATURE, 1 / 1.8),
  /** Volt. */
  VOLT("V", Quantity.VOLTAGE, 1),
  /** Ampere. */
  AMPERE("A", Quantity.CURRENT, 1),
  /** Kilometre, the base unit of distance. */
  KILOMETRE("km", Quantity.DISTANCE, 1),
  /** International mile. */
  MILE("mi", Quantity.DISTANCE, 1.609344),
  /** Metre, the base unit of elevation. */
  METRE("m", Quantity.ELEVATION, 1),
  /** Foot. */
  FOOT("ft", Quantity.ELEVATION, 0.3048),
  /** Kilometre per hour, the base unit of speed. */
  KILOMETRE_PER_HOUR("km/h", Quantity.SPEED, 1),
  /** Mile per hour. */
  MILE_PER_HOUR("mi/h", Quantity.SPEED, 1.609344),
  /** Metre per second. */
  METRE_PER_SECOND("m/s", Quantity.SPEED, 3.6),
  /** Watt-hour per kilometre, the base unit of consumption. */
  WATT_HOUR_PER_KILOMETRE("Wh/km", Quantity.CONSUMPTION, 1),
  /** Watt-hour per mile. */
  WATT_HOUR_PER_MILE("Wh/mi", Quantity.CONSUMPTION, 1 / 1.609344),
  /** Kilowatt-hour per hundred kilometres. */
  KILOWATT_HOUR_PER_100_KILOMETRES("kWh/100 km", Quantity.CONSUMPTION, 10),
  /** Kilometre per kilowatt-hour: a reciprocal measure of consumption. */
  KILOMETRE_PER_KILOWATT_HOUR("km/kWh", Quantity.CONSUMPTION, 1000),
  /** Mile per kilowatt-hour: a reciprocal measure of consumption. */
  MILE_PER_KILOWATT_HOUR("mi/kWh", Quantity.CONSUMPTION, 1000 / 1.609344),
  /** Hectopascal, the base unit of pressure. */
  HECTOPASCAL("hPa", Quantity.PRESSURE, 1),
  /** Kilopascal. */
  KILOPASCAL("kPa", Quantity.PRESSURE, 10),
  /** Bar. */
  BAR("bar", Quantity.PRESSURE, 1000),
  /** Pound-force per square inch. */
  POUND_PER_SQUARE_INCH("psi", Quantity.PRESSURE, 68.94757),
  /** Kilogram. */
  KILOGRAM("kg", Quantity.MASS, 1),
  /** Pound. */
  POUND("lb", Quantity.MASS, 0.45359237),
  /** Square metre, the base unit of area. */
  SQUARE_METRE("m2", Quantity.AREA, 1),
  /** Kilogram per cubic metre, the base unit of density. */
  KILOGRAM_PER_CUBIC_METRE("kg/m3", Quantity.DENSITY, 1),
  /** Kilometre added per minute of charging. */
  KILOMETRE_PER_MINUTE("km/min", Quantity.ROAD_PER_TIME, 1),
  /** Mile added per minute of charging. */
  MILE_PER_MINUTE("mi/min", Quantity.ROAD_PER_TIME, 1.609344),
  /** One unit of the currency that the label of the number names by its ISO 4217 code. */
  CURRENCY("currency", Quantity.MONEY, 1),
  /** Degree of angle. */
  DEGREE("deg", Quantity.ANGLE, 1),
  /** One, for dimensionless factors. */
  ONE("1", Quantity.FACTOR, 1);

  private final String symbol;
  private final Quantity quantity;
  private final double factor;

  Unit(String symbol, Quantity quantity, double factor) {
    this.symbol = symbol;
    this.quantity = quantity;
    this.factor = factor;
  }

  /** Returns the unit with this symbol; case-sensitive. */
  public static Optional<Unit> ofSymbol(String symbol) {
    return Arrays.stream(values()).filter(u -> u.symbol.equals(symbol)).findFirst();
  }

  /** Returns all units of a quantity, the base unit first. */
  public static List<Unit> of(Quantity quantity) {
    return Arrays.stream(values()).filter(u -> u.quantity == quantity).toList();
  }

  /** Returns the base unit of a quantity, used for all internal values. */
  public static Unit base(Quantity quantity) {
    return of(quantity).get(0);
  }

  /** Returns the symbol used in files. */
  public String symbol() {
    return symbol;
  }

  /** Returns the quantity that the unit measures. */
  public Quantity quantity() {
    return quantity;
  }

  /** Converts an amount of this unit to the base unit of its quantity. */
  public double toBase(double amount) {
    if (isReciprocal()) {
      return factor / amount;
    }
    return this == FAHRENHEIT ? (amount - 32) / 1.8 : amount * factor;
  }

  /** Converts an amount of the base unit to this unit. */
  public double fromBase(double base) {
    if (isReciprocal()) {
      return factor / base;
    }
    return this == FAHRENHEIT ? base * 1.8 + 32 : base / factor;
  }

  private boolean isReciprocal() {
    return this == KILOMETRE_PER_KILOWATT_HOUR || this == MILE_PER_KILOWATT_HOUR;
  }
}
