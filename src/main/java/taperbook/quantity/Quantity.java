package taperbook.quantity;

/** A kind of quantity; units of the same quantity convert into each other. */
public enum Quantity {
  /** Elapsed time; base unit second. */
  TIME,
  /** State of charge, or a share in per cent; base unit per cent. */
  SHARE,
  /** Electrical power; base unit kilowatt. */
  POWER,
  /** Electrical energy; base unit kilowatt-hour. */
  ENERGY,
  /** Energy per per cent of state of charge; base unit kilowatt-hour per per cent. */
  ENERGY_PER_SHARE,
  /** Change of power per per cent of state of charge; base unit kilowatt per per cent. */
  POWER_PER_SHARE,
  /** Power over energy; base unit per hour. */
  RATE,
  /** Temperature; base unit degree Celsius. */
  TEMPERATURE,
  /** Electric potential difference; base unit volt. */
  VOLTAGE,
  /** Electric current; base unit ampere. */
  CURRENT,
  /** Distance driven, range; base unit kilometre. */
  DISTANCE,
  /** Height above sea level; base unit metre. */
  ELEVATION,
  /** Speed; base unit kilometre per hour. */
  SPEED,
  /** Energy per distance; base unit watt-hour per kilometre. */
  CONSUMPTION,
  /** Pressure; base unit hectopascal. */
  PRESSURE,
  /** Mass; base unit kilogram. */
  MASS,
  /** Area, such as the drag area of a car; base unit square metre. */
  AREA,
  /** Density of air; base unit kilogram per cubic metre. */
  DENSITY,
  /** Distance added per minute of charging; base unit kilometre per minute. */
  ROAD_PER_TIME,
  /** Money; the label of the number contains the currency. */
  MONEY,
  /** Plane angle; base unit degree. */
  ANGLE,
  /** A dimensionless factor; base unit one. */
  FACTOR
}
