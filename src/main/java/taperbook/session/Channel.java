package taperbook.session;

import taperbook.quantity.Quantity;

/** A quantity that a session's readings may have a column for, in addition to the time. */
public enum Channel {
  SOC("soc", Quantity.SHARE, "State of charge that the car displays."),
  POWER(
      "power",
      Quantity.POWER,
      "Charging power that the car displays, or the station if the car shows none."),
  ENERGY_ADDED(
      "energy added",
      Quantity.ENERGY,
      "Energy added to the battery since plugging in, as displayed."),
  BATTERY_TEMPERATURE("battery temperature", Quantity.TEMPERATURE, "Battery temperature."),
  VOLTAGE("voltage", Quantity.VOLTAGE, "Voltage of the battery or the connector."),
  CURRENT("current", Quantity.CURRENT, "Charging current."),
  STATION_ENERGY(
      "station energy", Quantity.ENERGY, "Energy that the station says it has delivered."),
  STATION_POWER("station power", Quantity.POWER, "Power that the station displays."),
  RANGE_SHOWN("range shown", Quantity.DISTANCE, "Remaining range that the car displays.");

  private final String columnName;
  private final Quantity quantity;
  private final String explanation;

  Channel(String columnName, Quantity quantity, String explanation) {
    this.columnName = columnName;
    this.quantity = quantity;
    this.explanation = explanation;
  }

  /** Name of the column in {@code readings.csv}, without the unit. */
  public String columnName() {
    return columnName;
  }

  /** What the channel measures. */
  public Quantity quantity() {
    return quantity;
  }

  /** Describes what a tester enters in the column, as a sentence. */
  public String explanation() {
    return explanation;
  }
}
