package taperbook.session;

import taperbook.quantity.Quantity;

/** The items of {@code conditions.csv}: the recorded conditions of a charging session. */
public enum ConditionItem implements Item {
  DATE("date", ItemKind.date(), true, "Day of the session, in local time."),
  PLACE("place", ItemKind.text(), false, "Where the station is; as you want readers to know it."),
  VEHICLE(
      "vehicle",
      ItemKind.text(),
      true,
      "The car, as the report names it; write it alike in every file, as equal names are the"
          + " same car."),
  MODEL_YEAR("model year", ItemKind.text(), false, "Model year of the car."),
  ODOMETER(
      "odometer",
      ItemKind.amount(Quantity.DISTANCE),
      true,
      "What the odometer showed at the start."),
  STATION_RATED_POWER(
      "station rated power",
      ItemKind.amount(Quantity.POWER),
      true,
      "The most that it is rated for; as printed on it or in its app."),
  STATION_SHARED(
      "station shared",
      ItemKind.word("yes", "no"),
      false,
      "Whether another car drew on the station or its cabinet; at any time of the session."),
  VEHICLE_RATED_PEAK_POWER(
      "vehicle rated peak power",
      ItemKind.amount(Quantity.POWER),
      false,
      "The highest charging power that the maker states."),
  AMBIENT_TEMPERATURE(
      "ambient temperature",
      ItemKind.amount(Quantity.TEMPERATURE),
      true,
      "Air temperature at the station, in the shade."),
  BATTERY_TEMPERATURE_AT_START(
      "battery temperature at start",
      ItemKind.amount(Quantity.TEMPERATURE),
      true,
      "At plugging in, if the car or a logger shows it."),
  PRECONDITIONED(
      "preconditioned",
      ItemKind.word("yes", "no"),
      true,
      "Whether the car warmed or cooled its battery before plugging in."),
  PRECONDITIONING_TIME(
      "preconditioning time",
      ItemKind.amount(Quantity.TIME),
      false,
      "How long it had done so before plugging in."),
  BATTERY_USABLE_ENERGY(
      "battery usable energy",
      ItemKind.amount(Quantity.ENERGY),
      false,
      "Usable energy of the battery; how known says who states it."),
  SOFTWARE_VERSION(
      "software version",
      ItemKind.text(),
      false,
      "Version of the car's software, as its menu shows it."),
  SOC_RESOLUTION(
      "state of charge resolution",
      ItemKind.amount(Quantity.SHARE),
      false,
      "Step of its display, such as 1; 0.5 if it shows halves of a per cent."),
  POWER_RESOLUTION(
      "power resolution",
      ItemKind.amount(Quantity.POWER),
      false,
      "Step of the displayed power: 1 if it shows whole kilowatts."),
  ENERGY_RESOLUTION(
      "energy resolution",
      ItemKind.amount(Quantity.ENERGY),
      false,
      "Step of the displayed energy: 0.1 if it shows tenths."),
  CLOCK_RESOLUTION(
      "clock resolution",
      ItemKind.amount(Quantity.TIME),
      false,
      "Step of the clock of the readings: 1 if it shows seconds."),
  PRICE_PER_KWH(
      "price per kWh",
      ItemKind.price("/kWh"),
      false,
      "Price of energy; the unit is the currency with /kWh."),
  PRICE_PER_MINUTE(
      "price per minute",
      ItemKind.price("/min"),
      false,
      "Price of time; the unit is the currency with /min."),
  SESSION_FEE(
      "session fee",
      ItemKind.price(""),
      false,
      "Price of a session, however long; the unit is the currency."),
  CURRENCY("currency", ItemKind.text(), false, "In three capitals, such as EUR; see ISO 4217."),
  READ_FROM(
      "read from",
      ItemKind.word("film", "log", "by eye"),
      true,
      "What the readings are from; a film of the displays, a log, or displays read by eye."),
  DISPLAY_ROUNDS(
      "display rounds",
      ItemKind.word("nearest", "down", "up", "not known"),
      false,
      "How the state of charge rounds: down if 100 % shows only as charging ends, up if 0 % shows"
          + " only when empty; if not known, a true charge is stated for all three."),
  ROWS_WRITTEN(
      "rows written",
      ItemKind.word("at changes", "at set times", "mixed", "not known"),
      false,
      "When the rows were written down; as the displayed state of charge changed (best), at times"
          + " that do not depend on it, or some of each."),
  POWER_MEASURED_AT(
      "power measured at",
      ItemKind.word("car", "station"),
      false,
      "Whose display the power was read from."),
  ENERGY_COUNTED_AT(
      "energy counted at",
      ItemKind.word("battery", "inlet", "station"),
      false,
      "Where the energy added is counted; at the inlet it includes what heating takes, at the"
          + " station all losses."),
  HEATING_INCLUDED(
      "heating included",
      ItemKind.word("yes", "no"),
      false,
      "Whether displayed power and energy include heating and cooling of battery and cabin."),
  DISPLAY_LAG(
      "display lag",
      ItemKind.amount(Quantity.TIME),
      false,
      "How late the displays follow what happens."),
  ARRIVED(
      "arrived",
      ItemKind.moment(),
      false,
      "When the car came to a halt at the station, on the clock of the readings; before its zero"
          + " with a minus sign, as in -4:30."),
  PLUGGED_IN("plugged in", ItemKind.moment(), false, "When the plug was seated, likewise."),
  FIRST_POWER("first power", ItemKind.moment(), false, "When power first flowed, likewise."),
  UNPLUGGED("unplugged", ItemKind.moment(), false, "When the plug was drawn, likewise."),
  LEFT("left", ItemKind.moment(), false, "When the car drove off, likewise."),
  REMARKS("remarks", ItemKind.text(), false, "Anything else readers should know.");

  private final String words;
  private final ItemKind kind;
  private final boolean required;
  private final String explanation;

  ConditionItem(String words, ItemKind kind, boolean required, String explanation) {
    this.words = words;
    this.kind = kind;
    this.required = required;
    this.explanation = explanation;
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
    return explanation;
  }
}
