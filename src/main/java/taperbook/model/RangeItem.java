package taperbook.model;

/** The items of {@code range-test.csv}: the record of one range test. */
public enum RangeItem implements Item {
  /** Day of the drive. */
  DATE("date", ItemKind.date(), true),
  /** The car, called as in {@code conditions.csv}. */
  VEHICLE("vehicle", ItemKind.text(), true),
  /** Distance driven between the two states of charge. */
  DISTANCE("distance", ItemKind.amount(Quantity.DISTANCE), true),
  /** What the distance was read from. */
  DISTANCE_SOURCE("distance source", ItemKind.text(), false),
  /** How the true distance relates to the one read. */
  ODOMETER_CORRECTION("odometer correction", ItemKind.correction(), false),
  /** Displayed state of charge at the start. */
  START_SOC("start soc", ItemKind.amount(Quantity.SHARE), true),
  /** Displayed state of charge at the end. */
  END_SOC("end soc", ItemKind.amount(Quantity.SHARE), true),
  /** Energy that the car says it used. */
  ENERGY_USED("energy used", ItemKind.amount(Quantity.ENERGY), true),
  /** Consumption that the car displays for the drive. */
  CONSUMPTION_DISPLAYED("consumption displayed", ItemKind.amount(Quantity.CONSUMPTION), false),
  /** Distance over time of the drive. */
  AVERAGE_SPEED("average speed", ItemKind.amount(Quantity.SPEED), true),
  /** The steady speed that the driver aimed at. */
  TARGET_SPEED("target speed", ItemKind.amount(Quantity.SPEED), false),
  /** Air temperature. */
  AMBIENT_TEMPERATURE("ambient temperature", ItemKind.amount(Quantity.TEMPERATURE), true),
  /** Wind speed. */
  WIND_SPEED("wind speed", ItemKind.amount(Quantity.SPEED), false),
  /** Angle between the way the wind comes from and the way driven; 0 deg is a head wind. */
  WIND_DIRECTION(
      "wind direction to route",
      ItemKind.amountOrWord(Quantity.ANGLE, "head", "tail", "cross", "variable"),
      false),
  /** Height of the start above sea level. */
  START_ELEVATION("start elevation", ItemKind.amount(Quantity.ELEVATION), false),
  /** Height of the end above sea level. */
  END_ELEVATION("end elevation", ItemKind.amount(Quantity.ELEVATION), false),
  /** Air pressure at the place, not reduced to sea level. */
  AIR_PRESSURE("air pressure", ItemKind.amount(Quantity.PRESSURE), false),
  /** Tyre pressure, cold. */
  TYRE_PRESSURE("tyre pressure", ItemKind.amount(Quantity.PRESSURE), false),
  /** Mass of people and luggage. */
  PAYLOAD("payload", ItemKind.amount(Quantity.MASS), false),
  /** Drag coefficient times frontal area; for the range under standard conditions. */
  DRAG_AREA("drag area", ItemKind.amount(Quantity.AREA), false),
  /** Rolling resistance over weight; for the share of consumption that the road load explains. */
  ROLLING_COEFFICIENT("rolling coefficient", ItemKind.amount(Quantity.FACTOR), false),
  /** Mass of the empty car; for climbs. */
  VEHICLE_MASS("vehicle mass", ItemKind.amount(Quantity.MASS), false),
  /** Shape of the car, for wide estimates of what is not stated. */
  BODY("body", ItemKind.word("hatchback", "saloon", "estate", "crossover", "van"), false),
  /** What the heating or cooling was set to. */
  CLIMATE_CONTROL("climate control", ItemKind.text(), false),
  /** Shape of the route. */
  ROUTE("route", ItemKind.word("out and back", "loop", "one way"), false),
  /** The range that the maker states. */
  RATED_RANGE("rated range", ItemKind.amount(Quantity.DISTANCE), false),
  /** The procedure behind the stated range. */
  RATED_RANGE_BASIS("rated range basis", ItemKind.text(), false),
  /** Anything else worth knowing. */
  REMARKS("remarks", ItemKind.text(), false);

  private final String words;
  private final ItemKind kind;
  private final boolean required;

  RangeItem(String words, ItemKind kind, boolean required) {
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
}
