package taperbook.session;

import taperbook.i18n.Texts;
import taperbook.quantity.Quantity;

/** The items of {@code range-test.csv}. */
public enum RangeItem implements Item {
  DATE("date", ItemKind.date(), true),
  VEHICLE("vehicle", ItemKind.text(), true),
  DISTANCE("distance", ItemKind.amount(Quantity.DISTANCE), true),
  DISTANCE_SOURCE("distance source", ItemKind.text(), false),
  ODOMETER_CORRECTION("odometer correction", ItemKind.correction(), false),
  START_SOC("start soc", ItemKind.amount(Quantity.SHARE), true),
  END_SOC("end soc", ItemKind.amount(Quantity.SHARE), true),
  ENERGY_USED("energy used", ItemKind.amount(Quantity.ENERGY), true),
  CONSUMPTION_DISPLAYED("consumption displayed", ItemKind.amount(Quantity.CONSUMPTION), false),
  AVERAGE_SPEED("average speed", ItemKind.amount(Quantity.SPEED), true),
  TARGET_SPEED("target speed", ItemKind.amount(Quantity.SPEED), false),
  AMBIENT_TEMPERATURE("ambient temperature", ItemKind.amount(Quantity.TEMPERATURE), true),
  WIND_SPEED("wind speed", ItemKind.amount(Quantity.SPEED), false),
  WIND_DIRECTION(
      "wind direction to route",
      ItemKind.amountOrWord(Quantity.ANGLE, "head", "tail", "cross", "variable"),
      false),
  START_ELEVATION("start elevation", ItemKind.amount(Quantity.ELEVATION), false),
  END_ELEVATION("end elevation", ItemKind.amount(Quantity.ELEVATION), false),
  AIR_PRESSURE("air pressure", ItemKind.amount(Quantity.PRESSURE), false),
  TYRE_PRESSURE("tyre pressure", ItemKind.amount(Quantity.PRESSURE), false),
  PAYLOAD("payload", ItemKind.amount(Quantity.MASS), false),
  DRAG_AREA("drag area", ItemKind.amount(Quantity.AREA), false),
  ROLLING_COEFFICIENT("rolling coefficient", ItemKind.amount(Quantity.FACTOR), false),
  VEHICLE_MASS("vehicle mass", ItemKind.amount(Quantity.MASS), false),
  BODY("body", ItemKind.word("hatchback", "saloon", "estate", "crossover", "van"), false),
  CLIMATE_CONTROL("climate control", ItemKind.text(), false),
  ROUTE("route", ItemKind.word("out and back", "loop", "one way"), false),
  RATED_RANGE("rated range", ItemKind.amount(Quantity.DISTANCE), false),
  RATED_RANGE_BASIS("rated range basis", ItemKind.text(), false),
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

  @Override
  public String explanation() {
    return Texts.ofConstant("range", this, "explanation");
  }
}
