package taperbook.model;

/** The items of {@code conditions.csv}: what was known about a charging session. */
public enum ConditionItem implements Item {
  /** Day of the session. */
  DATE("date", ItemKind.date(), true),
  /** Where the station stands. */
  PLACE("place", ItemKind.text(), false),
  /** The car, as it should be called in the report; equal names are the same car model. */
  VEHICLE("vehicle", ItemKind.text(), true),
  /** Model year. */
  MODEL_YEAR("model year", ItemKind.text(), false),
  /** Odometer at the start. */
  ODOMETER("odometer", ItemKind.amount(Quantity.DISTANCE), true),
  /** The most that the station is rated for. */
  STATION_RATED_POWER("station rated power", ItemKind.amount(Quantity.POWER), true),
  /** Whether another car drew on the same station. */
  STATION_SHARED("station shared", ItemKind.word("yes", "no"), false),
  /** The peak power that the maker states for the car. */
  VEHICLE_RATED_PEAK_POWER("vehicle rated peak power", ItemKind.amount(Quantity.POWER), false),
  /** Air temperature. */
  AMBIENT_TEMPERATURE("ambient temperature", ItemKind.amount(Quantity.TEMPERATURE), true),
  /** Battery temperature at plugging in. */
  BATTERY_TEMPERATURE_AT_START(
      "battery temperature at start", ItemKind.amount(Quantity.TEMPERATURE), true),
  /** Whether the car had warmed or cooled its battery for the session. */
  PRECONDITIONED("preconditioned", ItemKind.word("yes", "no"), true),
  /** How long it had done so before plugging in. */
  PRECONDITIONING_TIME("preconditioning time", ItemKind.amount(Quantity.TIME), false),
  /** Usable battery energy, as stated by the source named in {@code how known}. */
  BATTERY_USABLE_ENERGY("battery usable energy", ItemKind.amount(Quantity.ENERGY), false),
  /** The car's software. */
  SOFTWARE_VERSION("software version", ItemKind.text(), false),
  /** Step of the displayed state of charge. */
  SOC_RESOLUTION("state of charge resolution", ItemKind.amount(Quantity.SHARE), false),
  /** Step of the displayed power. */
  POWER_RESOLUTION("power resolution", ItemKind.amount(Quantity.POWER), false),
  /** Step of the displayed energy. */
  ENERGY_RESOLUTION("energy resolution", ItemKind.amount(Quantity.ENERGY), false),
  /** Step of the clock that elapsed times were read from. */
  CLOCK_RESOLUTION("clock resolution", ItemKind.amount(Quantity.TIME), false),
  /** Price of energy. */
  PRICE_PER_KWH("price per kWh", ItemKind.price("/kWh"), false),
  /** Price of time at the station. */
  PRICE_PER_MINUTE("price per minute", ItemKind.price("/min"), false),
  /** Price of a session. */
  SESSION_FEE("session fee", ItemKind.price(""), false),
  /** Currency of the prices, ISO 4217. */
  CURRENCY("currency", ItemKind.text(), false),
  /** What the readings were taken from. */
  READ_FROM("read from", ItemKind.word("film", "log", "by eye"), true),
  /** Anything else worth knowing. */
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
}
