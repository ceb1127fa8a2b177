package taperbook.format;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Quantity;
import taperbook.quantity.Unit;
import taperbook.result.CrossCheck;
import taperbook.result.Method;
import taperbook.result.MovedNumber;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;

/**
 * Puts numbers into words in the units of a report: kilometres or miles, and what goes with them.
 * Values are rounded to what their interval allows; the ends of an interval are rounded outward, so
 * that the printed interval still holds the truth.
 */
public final class NumberFormatter {
  private static final DateTimeFormatter YEAR = DateTimeFormatter.ofPattern("yyyy", Locale.ROOT);

  private static final int MINUTE_SECONDS = 60;

  /** Decimal places of an amount without a unit at the most. */
  private static final int MOST_PLACES = 3;

  private static final Map<Unit, String> NAMES = names();

  private static final double FAHRENHEITS_PER_CELSIUS = 1.8;

  private final boolean miles;
  private final boolean fahrenheit;

  /**
   * Words with degrees Celsius.
   *
   * @param distanceUnit {@link Unit#MILE} or {@link Unit#KILOMETRE}
   */
  public NumberFormatter(Unit distanceUnit) {
    this(distanceUnit, Unit.CELSIUS);
  }

  /** Words in the units of a report. */
  public NumberFormatter(ReportPlan.Style style) {
    this(style.units(), style.temperature());
  }

  private NumberFormatter(Unit distanceUnit, Unit temperature) {
    if (distanceUnit.quantity() != Quantity.DISTANCE) {
      throw new IllegalArgumentException("not a unit of distance: " + distanceUnit);
    }
    this.miles = distanceUnit == Unit.MILE;
    this.fahrenheit = temperature == Unit.FAHRENHEIT;
  }

  /** Words with miles where these have kilometres, and the other way round. */
  public NumberFormatter inOtherDistances() {
    return new NumberFormatter(
        miles ? Unit.KILOMETRE : Unit.MILE, fahrenheit ? Unit.FAHRENHEIT : Unit.CELSIUS);
  }

  /** The value of a number with its unit, or a dash if it was withheld. */
  public String value(ReportNumber number) {
    return number.estimate().map(e -> value(e, number.unit(), step(number))).orElse("\u2013");
  }

  /**
   * A number as one speaks it, such as {@code about 6½ minutes} or {@code 168 kW}; a dash if it was
   * withheld. It is about so much where less is spoken than printed.
   */
  public String about(ReportNumber number) {
    return number.estimate().map(e -> about(e, number)).orElse("\u2013");
  }

  private String about(Estimate estimate, ReportNumber number) {
    Unit unit = number.unit();
    if (unit == Unit.SECOND) {
      return Labels.of("spoken.about", SpokenFormat.time(estimate.value()));
    }
    String printed = value(number);
    if (!SpokenFormat.isRounded(unit)) {
      return printed;
    }
    String spoken =
        SpokenFormat.amount(shownAmount(estimate.value(), unit)) + withSpace(shown(unit));
    // Three digits may be more than the interval allows.
    boolean finer = spoken.length() > printed.length();
    return finer || spoken.equals(printed) ? printed : Labels.of("spoken.about", spoken);
  }

  /** How far the truth may lie from the printed value; empty if it was withheld. */
  public Optional<String> spread(ReportNumber number) {
    return number.estimate().map(e -> spread(e, number.unit(), step(number)));
  }

  /** The interval of a number in words; empty if it was withheld. */
  public Optional<String> between(ReportNumber number) {
    return number
        .estimate()
        .map(e -> joined(e.bounds(), number.unit(), "wording.between", step(number)));
  }

  /** Least step that a time is printed to, s: a trip is planned in minutes. */
  static int step(ReportNumber number) {
    return number.method() == Method.TRIP_PLAN ? MINUTE_SECONDS : 1;
  }

  /** The interval of a number with its unit, or a dash if it was withheld. */
  public String range(ReportNumber number) {
    return number
        .estimate()
        .map(e -> joined(e.bounds(), number.unit(), "wording.range", step(number)))
        .orElse("\u2013");
  }

  /** What a number was or is, such as {@code 171 kW}; {@code none} if it has no value. */
  public String value(MovedNumber number, Optional<Estimate> estimate) {
    return estimate
        .map(e -> value(e, number.unit(), step(number)))
        .orElseGet(() -> Labels.of("wording.no_value"));
  }

  /** The interval of what a number was or is; empty if it is exact or has no value. */
  public String range(MovedNumber number, Optional<Estimate> estimate) {
    return estimate
        .filter(e -> e.bounds().width() > 0)
        .map(e -> joined(e.bounds(), number.unit(), "wording.range", step(number)))
        .orElse("");
  }

  /** True if a number is printed as it was before. */
  public boolean isPrintedAlike(MovedNumber number) {
    return value(number, number.before()).equals(value(number, number.after()))
        && range(number, number.before()).equals(range(number, number.after()));
  }

  private static int step(MovedNumber number) {
    return number.ofTrip() ? MINUTE_SECONDS : 1;
  }

  /** A value with its unit, such as {@code 171 kW} or {@code 24 min 40 s}. */
  public String value(Estimate estimate, Unit unit) {
    return value(estimate, unit, 1);
  }

  private String value(Estimate estimate, Unit unit, int leastStep) {
    if (unit == Unit.SECOND) {
      int step = Math.max(leastStep, DurationFormat.step(estimate.bounds()));
      return DurationFormat.nearest(estimate.value(), step);
    }
    Unit shown = shown(unit);
    Interval bounds = estimate.bounds().mapMonotone(x -> convert(x, unit, shown));
    int places = Rounding.places(bounds, mostPlaces(shown));
    double amount = convert(estimate.value(), unit, shown);
    // A reading such as 171 of a display that shows whole numbers is not printed as 171.0.
    boolean whole = places > 0 && Math.abs(amount - Math.rint(amount)) < 1e-9;
    return Rounding.nearest(amount, whole ? 0 : places) + withSpace(shown);
  }

  /**
   * How far the truth may lie from the printed value: {@code give or take 25 s} where both ends are
   * nearly as far away, {@code between 3 min 41 s and 5 min 4 s} where they are not, or {@code
   * exact}. What is given or taken is rounded up, so that it reaches both ends from the value as
   * {@link #value(Estimate, Unit)} prints it.
   */
  public String spread(Estimate estimate, Unit unit) {
    return spread(estimate, unit, 1);
  }

  private String spread(Estimate estimate, Unit unit, int leastStep) {
    Unit shown = shown(unit);
    Estimate converted = converted(estimate, unit);
    if (!Spread.isEven(converted) && !isRounded(estimate.bounds(), unit, leastStep)) {
      return joined(estimate.bounds(), unit, "wording.between", leastStep);
    }
    String most =
        unit == Unit.SECOND
            ? Spread.ofTime(converted, leastStep)
            : Spread.of(converted, mostPlaces(shown)) + "\u00a0" + name(shown);
    return Labels.of("wording.give_or_take", most);
  }

  /** True if an exact time is printed less exactly than it is known. */
  private static boolean isRounded(Interval bounds, Unit unit, int leastStep) {
    double steps = bounds.low() / leastStep;
    return unit == Unit.SECOND
        && leastStep > 1
        && bounds.width() == 0
        && Math.abs(steps - Math.rint(steps)) > 1e-6;
  }

  /**
   * A reading with its unit, at the display's own step, such as {@code 12 %}.
   *
   * @param reading the reading, in the base unit
   * @param halfStep half the display's step, in the base unit
   * @param unit the base unit
   */
  public String reading(double reading, double halfStep, Unit unit) {
    return value(Estimate.around(reading, halfStep), unit);
  }

  /** An amount without its unit, rounded to what its interval allows. */
  public static String figures(Estimate estimate) {
    int places = Rounding.places(estimate.bounds(), MOST_PLACES);
    boolean whole = places > 0 && Math.abs(estimate.value() - Math.rint(estimate.value())) < 1e-9;
    return Rounding.nearest(estimate.value(), whole ? 0 : places);
  }

  /** An interval without its unit, rounded outward. */
  public static String figures(Interval bounds) {
    int places = Rounding.places(bounds, MOST_PLACES);
    return Labels.of(
        "wording.range", Rounding.down(bounds.low(), places), Rounding.up(bounds.high(), places));
  }

  /**
   * A reading with its unit, as it was written down, such as {@code 7.0 kWh}.
   *
   * @param reading the reading, in the base unit
   * @param places its decimal places as written, not negative
   * @param unit the base unit, which is not converted
   */
  public static String written(double reading, int places, Unit unit) {
    return Rounding.nearest(reading, places) + withSpace(unit);
  }

  /** An interval with its unit, such as {@code 170.5 to 171.5 kW}, or {@code exact}. */
  public String range(Interval bounds, Unit unit) {
    return joined(bounds, unit, "wording.range", 1);
  }

  /** An interval in words, such as {@code between 170.5 and 171.5 kW}, or {@code exact}. */
  public String between(Interval bounds, Unit unit) {
    return joined(bounds, unit, "wording.between", 1);
  }

  /** A difference of temperatures with its unit, such as {@code 8 °C}. */
  public String degrees(Estimate celsius) {
    Estimate shown = fahrenheit ? celsius.times(FAHRENHEITS_PER_CELSIUS) : celsius;
    int places = Rounding.places(shown.bounds(), 0);
    return Rounding.nearest(shown.value(), places) + withSpace(shown(Unit.CELSIUS));
  }

  /** An amount of a base unit that is known exactly, such as the step of a display. */
  public String exactly(double amount, Unit unit) {
    BigDecimal rounded =
        BigDecimal.valueOf(shownAmount(amount, unit))
            .round(new MathContext(4))
            .stripTrailingZeros();
    return rounded.toPlainString() + withSpace(shown(unit));
  }

  private String joined(Interval bounds, Unit unit, String key, int leastStep) {
    if (bounds.width() == 0 && !isRounded(bounds, unit, leastStep)) {
      return Labels.of("wording.exact");
    }
    if (unit == Unit.SECOND) {
      int step = Math.max(leastStep, DurationFormat.step(bounds));
      return Labels.of(
          key, DurationFormat.down(bounds.low(), step), DurationFormat.up(bounds.high(), step));
    }
    Unit shown = shown(unit);
    Interval converted = bounds.mapMonotone(x -> convert(x, unit, shown));
    int places = isCount(converted, shown) ? 0 : Rounding.places(converted, mostPlaces(shown));
    return Labels.of(
        key,
        Rounding.down(converted.low(), places),
        Rounding.up(converted.high(), places) + withSpace(shown));
  }

  /** True for bounds that are whole numbers of things, which need no decimal places. */
  private static boolean isCount(Interval bounds, Unit unit) {
    return unit == Unit.ONE
        && bounds.low() == Math.rint(bounds.low())
        && bounds.high() == Math.rint(bounds.high());
  }

  /** What came of measuring, in words: value and spread, or the reason why there is none. */
  public String outcome(ReportNumber number) {
    return number
        .outcome()
        .fold(
            (Outcome.Measured m) -> measured(number, m.estimate()),
            (Outcome.Withheld w) -> Labels.of("wording.withheld", w.reason()));
  }

  private String measured(ReportNumber number, Estimate estimate) {
    String spread = spread(estimate, number.unit(), step(number));
    String value = value(number);
    return isTwoSided(estimate, number.unit())
        ? value + " (" + spread + ")"
        : value + ", " + spread;
  }

  /** True if the ends are so unevenly far from the value that both are told. */
  public boolean isTwoSided(Estimate estimate, Unit unit) {
    return estimate.bounds().width() > 0 && !Spread.isEven(converted(estimate, unit));
  }

  private Estimate converted(Estimate estimate, Unit unit) {
    Unit shown = shown(unit);
    return new Estimate(
        convert(estimate.value(), unit, shown),
        estimate.bounds().mapMonotone(x -> convert(x, unit, shown)));
  }

  /** The unit that a base unit is shown in: miles and what goes with them, if the report asks. */
  public Unit shown(Unit base) {
    if (base == Unit.CELSIUS) {
      return fahrenheit ? Unit.FAHRENHEIT : base;
    }
    if (!miles) {
      return base;
    }
    return switch (base) {
      case KILOMETRE -> Unit.MILE;
      case KILOMETRE_PER_HOUR -> Unit.MILE_PER_HOUR;
      case WATT_HOUR_PER_KILOMETRE -> Unit.WATT_HOUR_PER_MILE;
      case KILOMETRE_PER_MINUTE -> Unit.MILE_PER_MINUTE;
      default -> base;
    };
  }

  /** An amount of a base unit, converted to the unit it is shown in. */
  public double shownAmount(double amount, Unit base) {
    return convert(amount, base, shown(base));
  }

  /** The name of a unit in running text and on axes, such as {@code °C}. */
  public static String name(Unit unit) {
    return Objects.requireNonNull(NAMES.get(unit));
  }

  /** A pure factor has no unit to name, and the currency of money stands in its label. */
  private static Map<Unit, String> names() {
    Map<Unit, String> names = new EnumMap<>(Unit.class);
    for (Unit unit : Unit.values()) {
      boolean nameless = unit == Unit.ONE || unit == Unit.CURRENCY;
      names.put(unit, nameless ? "" : Labels.of("unit." + unit.name().toLowerCase(Locale.ROOT)));
    }
    return names;
  }

  /** The name of a unit with the space before it; nothing for a pure factor and for money. */
  private static String withSpace(Unit unit) {
    return name(unit).isEmpty() ? "" : "\u00a0" + name(unit);
  }

  /** How two sides of a check agree; how much was lost where something may be. */
  public static String agreement(CrossCheck.Compared compared) {
    double first = compared.first().estimate().value();
    double percent = 100 * (1 - compared.second().estimate().value() / first);
    if (compared.ratio().low() == 1 || !(percent > 0)) {
      return "agree";
    }
    return "agree: the second is "
        + Rounding.nearest(percent, 1)
        + "\u00a0% less, and up to "
        + Math.round(100 * compared.mostLost())
        + "\u00a0% may be lost";
  }

  /** What two sides of a check may differ by, such as {@code rounding allows}. */
  public static String allowed(CrossCheck.Compared compared) {
    long percent = Math.round(100 * compared.mostLost());
    return percent == 0
        ? "rounding allows"
        : "rounding and losses of up to " + percent + "\u00a0% allow";
  }

  /** A calendar date in words, such as {@code 14 March 2026}. */
  public static String date(LocalDate date) {
    String month = Labels.of("month." + date.getMonthValue());
    return Labels.of("wording.date", date.getDayOfMonth(), month, YEAR.format(date));
  }

  /** A calendar date in words; anything that is no ISO 8601 day as it stands. */
  public static String dateOrAsIs(String written) {
    try {
      return date(LocalDate.parse(written)).replace(' ', '\u00a0');
    } catch (DateTimeParseException e) {
      return written;
    }
  }

  static double convert(double amount, Unit from, Unit to) {
    return from == to ? amount : to.fromBase(from.toBase(amount));
  }

  static int mostPlaces(Unit unit) {
    if (unit == Unit.FAHRENHEIT) {
      return 0;
    }
    return switch (unit.quantity()) {
      case ENERGY_PER_SHARE -> 4;
      case ENERGY, MONEY, ROAD_PER_TIME, AREA -> 2;
      case DENSITY -> 3;
      case POWER_PER_SHARE, RATE -> 3;
      case FACTOR -> 4;
      default -> 1;
    };
  }
}
