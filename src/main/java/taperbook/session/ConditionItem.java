package taperbook.session;

import taperbook.i18n.Texts;
import taperbook.quantity.Quantity;

/** The items of {@code conditions.csv}: the recorded conditions of a charging session. */
public enum ConditionItem implements Item {
  DATE("date", ItemKind.date(), true),
  PLACE("place", ItemKind.text(), false),
  VEHICLE("vehicle", ItemKind.text(), true),
  MODEL_YEAR("model year", ItemKind.text(), false),
  ODOMETER("odometer", ItemKind.amount(Quantity.DISTANCE), true),
  STATION_RATED_POWER("station rated power", ItemKind.amount(Quantity.POWER), true),
  STATION_SHARED("station shared", ItemKind.word("yes", "no"), false),
  VEHICLE_RATED_PEAK_POWER("vehicle rated peak power", ItemKind.amount(Quantity.POWER), false),
  AMBIENT_TEMPERATURE("ambient temperature", ItemKind.amount(Quantity.TEMPERATURE), true),
  BATTERY_TEMPERATURE_AT_START(
      "battery temperature at start", ItemKind.amount(Quantity.TEMPERATURE), true),
  PRECONDITIONED("preconditioned", ItemKind.word("yes", "no"), true),
  PRECONDITIONING_TIME("preconditioning time", ItemKind.amount(Quantity.TIME), false),
  BATTERY_USABLE_ENERGY("battery usable energy", ItemKind.amount(Quantity.ENERGY), false),
  SOFTWARE_VERSION("software version", ItemKind.text(), false),
  SOC_RESOLUTION("state of charge resolution", ItemKind.amount(Quantity.SHARE), false),
  POWER_RESOLUTION("power resolution", ItemKind.amount(Quantity.POWER), false),
  ENERGY_RESOLUTION("energy resolution", ItemKind.amount(Quantity.ENERGY), false),
  CLOCK_RESOLUTION("clock resolution", ItemKind.amount(Quantity.TIME), false),
  PRICE_PER_KWH("price per kWh", ItemKind.price("/kWh"), false),
  PRICE_PER_MINUTE("price per minute", ItemKind.price("/min"), false),
  SESSION_FEE("session fee", ItemKind.price(""), false),
  CURRENCY("currency", ItemKind.text(), false),
  READ_FROM("read from", ItemKind.word("film", "log", "by eye"), true),
  DISPLAY_ROUNDS("display rounds", ItemKind.word("nearest", "down", "up", "not known"), false),
  ROWS_WRITTEN(
      "rows written", ItemKind.word("at changes", "at set times", "mixed", "not known"), false),
  POWER_MEASURED_AT("power measured at", ItemKind.word("car", "station"), false),
  ENERGY_COUNTED_AT("energy counted at", ItemKind.word("battery", "inlet", "station"), false),
  HEATING_INCLUDED("heating included", ItemKind.word("yes", "no"), false),
  DISPLAY_LAG("display lag", ItemKind.amount(Quantity.TIME), false),
  ARRIVED("arrived", ItemKind.moment(), false),
  PLUGGED_IN("plugged in", ItemKind.moment(), false),
  FIRST_POWER("first power", ItemKind.moment(), false),
  UNPLUGGED("unplugged", ItemKind.moment(), false),
  LEFT("left", ItemKind.moment(), false),
  REMARKS("remarks", ItemKind.text(), false);

  private final String words;
  private final ItemKind kind;
  private final boolean required;

  ConditionItem(String words, ItemKind kind, boolean required) {
    this.words = words;
    this.kind = kind;
    this.required = required;
  }

  @Override
  public String words() {
    return words;
  }

  @Override
  public ItemKind kind() {
    return kind;
  }

  @Override
  public boolean required() {
    return required;
  }

  @Override
  public String explanation() {
    return Texts.ofConstant("condition", this, "explanation");
  }
}
