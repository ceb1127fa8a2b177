package taperbook.session;

import taperbook.i18n.Texts;
import taperbook.quantity.Quantity;

/** A quantity that a session's readings may have a column for, in addition to the time. */
public enum Channel {
  SOC("soc", Quantity.SHARE),
  POWER("power", Quantity.POWER),
  ENERGY_ADDED("energy added", Quantity.ENERGY),
  BATTERY_TEMPERATURE("battery temperature", Quantity.TEMPERATURE),
  VOLTAGE("voltage", Quantity.VOLTAGE),
  CURRENT("current", Quantity.CURRENT),
  STATION_ENERGY("station energy", Quantity.ENERGY),
  STATION_POWER("station power", Quantity.POWER),
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

  /** Describes what a tester enters in the column, as a sentence. */
  public String explanation() {
    return Texts.ofConstant("channel", this, "explanation");
  }
}
