package taperbook.session;

import taperbook.quantity.Quantity;

/** The items of {@code range-test.csv}. */
public enum RangeItem implements Item {
  DATE("date", ItemKind.date(), true, "Day of the drive."),
  VEHICLE(
      "vehicle",
      ItemKind.text(),
      true,
      "The car, called as in conditions.csv; equal names are the same car."),
  DISTANCE(
      "distance",
      ItemKind.amount(Quantity.DISTANCE),
      true,
      "Distance driven between the two states of charge."),
  DISTANCE_SOURCE(
      "distance source",
      ItemKind.text(),
      false,
      "What the distance was read from, such as the odometer or a satellite receiver."),
  ODOMETER_CORRECTION(
      "odometer correction",
      ItemKind.correction(),
      false,
      "How the true distance relates to the one read: a factor with unit 1, or an excess in %."),
  START_SOC(
      "start soc",
      ItemKind.amount(Quantity.SHARE),
      true,
      "State of charge that the car displayed at the start."),
  END_SOC(
      "end soc",
      ItemKind.amount(Quantity.SHARE),
      true,
      "State of charge that the car displayed at the end."),
  ENERGY_USED(
      "energy used",
      ItemKind.amount(Quantity.ENERGY),
      true,
      "Energy that the car says it used between start and end."),
  CONSUMPTION_DISPLAYED(
      "consumption displayed",
      ItemKind.amount(Quantity.CONSUMPTION),
      false,
      "Consumption that the car displays for the drive."),
  AVERAGE_SPEED(
      "average speed",
      ItemKind.amount(Quantity.SPEED),
      true,
      "Distance of the drive over its time; displayed if it is the car's own figure, to which the"
          + " odometer correction then applies as well."),
  TARGET_SPEED(
      "target speed",
      ItemKind.amount(Quantity.SPEED),
      false,
      "The steady speed that the driver aimed at."),
  AMBIENT_TEMPERATURE(
      "ambient temperature",
      ItemKind.amount(Quantity.TEMPERATURE),
      true,
      "Air temperature along the way."),
  WIND_SPEED("wind speed", ItemKind.amount(Quantity.SPEED), false, "Wind speed along the way."),
  WIND_DIRECTION(
      "wind direction to route",
      ItemKind.amountOrWord(Quantity.ANGLE, "head", "tail", "cross", "variable"),
      false,
      "Angle between wind and course, 0 deg for a head wind, or one of the words head, tail,"
          + " cross, variable."),
  START_ELEVATION(
      "start elevation",
      ItemKind.amount(Quantity.ELEVATION),
      false,
      "Height of the start above sea level."),
  END_ELEVATION(
      "end elevation",
      ItemKind.amount(Quantity.ELEVATION),
      false,
      "Height of the end above sea level."),
  AIR_PRESSURE(
      "air pressure",
      ItemKind.amount(Quantity.PRESSURE),
      false,
      "Air pressure at the place, not reduced to sea level."),
  TYRE_PRESSURE("tyre pressure", ItemKind.amount(Quantity.PRESSURE), false, "Tyre pressure, cold."),
  PAYLOAD("payload", ItemKind.amount(Quantity.MASS), false, "Mass of people and luggage."),
  DRAG_AREA(
      "drag area",
      ItemKind.amount(Quantity.AREA),
      false,
      "Drag coefficient times frontal area; for the range under standard conditions."),
  ROLLING_COEFFICIENT(
      "rolling coefficient",
      ItemKind.amount(Quantity.FACTOR),
      false,
      "Rolling resistance over weight; for the share of consumption that the road load explains."),
  VEHICLE_MASS(
      "vehicle mass", ItemKind.amount(Quantity.MASS), false, "Mass of the empty car; for climbs."),
  BODY(
      "body",
      ItemKind.word("hatchback", "saloon", "estate", "crossover", "van"),
      false,
      "Shape of the car, for wide estimates of what is not stated."),
  CLIMATE_CONTROL(
      "climate control", ItemKind.text(), false, "What the heating or cooling was set to."),
  ROUTE(
      "route",
      ItemKind.word("out and back", "loop", "one way"),
      false,
      "Shape of the route; a one-way drive keeps what wind and slope did to it."),
  RATED_RANGE(
      "rated range",
      ItemKind.amount(Quantity.DISTANCE),
      false,
      "The range that the maker states for the car."),
  RATED_RANGE_BASIS(
      "rated range basis",
      ItemKind.text(),
      false,
      "The procedure or cycle behind the stated range."),
  REMARKS("remarks", ItemKind.text(), false, "Anything else readers should know.");

  private final String words;
  private final ItemKind kind;
  private final boolean required;
  private final String explanation;

  RangeItem(String words, ItemKind kind, boolean required, String explanation) {
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
