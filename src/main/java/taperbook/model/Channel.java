package taperbook.model;

/** A quantity that a session's readings may have a column for, beside the time. */
public enum Channel {
  /** State of charge that the car displays. */
  SOC("soc", Quantity.SHARE),
  /** Charging power, as the car or the station displays it. */
  POWER("power", Quantity.POWER),
  /** Energy added to the battery since plugging in, as displayed. */
  ENERGY_ADDED("energy added", Quantity.ENERGY),
  /** Battery temperature. */
  BATTERY_TEMPERATURE("battery temperature", Quantity.TEMPERATURE),
  /** Battery or connector voltage. */
  VOLTAGE("voltage", Quantity.VOLTAGE),
  /** Charging current. */
  CURRENT("current", Quantity.CURRENT),
  /** Energy that the station says it has delivered. */
  STATION_ENERGY("station energy", Quantity.ENERGY),
  /** Power that the station displays. */
  STATION_POWER("station power", Quantity.POWER),
  /** Remaining range that the car displays. */
  RANGE_SHOWN("range shown", Quantity.DISTANCE);

  private final String columnName;
  private final Quantity quantity;

  Channel(String columnName, Quantity quantity) {
    this.columnName = columnName;
    this.quantity = quantity;
  }

  /** Name of the column in {@code readings.csv}, without the unit. */
  public String columnName() {
    return columnName;
  }

  /** What the channel measures. */
  public Quantity quantity() {
    return quantity;
  }
}
