package taperbook.format;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import taperbook.i18n.Texts;
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
 * Formats numbers in the units of a report: kilometres or miles and related units. Values are
 * rounded to what their interval permits; the ends of an interval are rounded outward, so that the
 * printed interval still contains the true value.
 */
public final class NumberFormatter {
  private static final DateTimeFormatter YEAR = DateTimeFormatter.ofPattern("yyyy", Locale.ROOT);

  private static final int MINUTE_SECONDS = 60;

  /** Maximum number of decimal places of an amount without a unit. */
  private static final int MAX_PLACES = 3;

  private static final double FAHRENHEITS_PER_CELSIUS = 1.8;

  private final boolean miles;
  private final boolean fahrenheit;

  /**
   * Creates a formatter with degrees Celsius.
   *
   * @param distanceUnit {@link Unit#MILE} or {@link Unit#KILOMETRE}
   */
  public NumberFormatter(Unit distanceUnit) {
    this(distanceUnit, Unit.CELSIUS);
  }

  /** Creates a formatter for the units of a report. */
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

  /** Returns a formatter with miles instead of kilometres, or the reverse. */
  public NumberFormatter inOtherDistances() {
    return new NumberFormatter(
        miles ? Unit.KILOMETRE : Unit.MILE, fahrenheit ? Unit.FAHRENHEIT : Unit.CELSIUS);
  }

  /** Returns the value of a number with its unit, or a dash if it was withheld. */
  public String value(ReportNumber number) {
    return number.estimate().map(e -> value(e, number.unit(), step(number))).orElse("\u2013");
  }

  /**
   * Returns a number in spoken form, such as {@code about 6½ minutes} or {@code 168 kW}; a dash if
   * it was withheld. The word "about" marks values that are less precise than the printed ones.
   */
  public String about(ReportNumber number) {
    return number.estimate().map(e -> about(e, number)).orElse("\u2013");
  }

  private String about(Estimate estimate, ReportNumber number) {
    Unit unit = number.unit();
    if (unit == Unit.SECOND) {
      return Texts.of("spoken.about", SpokenFormat.time(estimate.value()));
    }
    String printed = value(number);
    if (name(unit).isEmpty()) {
      return printed;
    }
    String spoken =
        SpokenFormat.amount(shownAmount(estimate.value(), unit)) + withSpace(shown(unit));
    // Three digits may be more than the interval permits.
    boolean finer = spoken.length() > printed.length();
    return finer || spoken.equals(printed) ? printed : Texts.of("spoken.about", spoken);
  }

  /** Returns the uncertainty of the printed value; empty if it was withheld. */
  public Optional<String> spread(ReportNumber number) {
    return number.estimate().map(e -> spread(e, number.unit(), step(number)));
  }

  /** Returns the interval of a number as text; empty if it was withheld. */
  public Optional<String> between(ReportNumber number) {
    return number
        .estimate()
        .map(e -> joined(e.bounds(), number.unit(), "wording.between", step(number)));
  }

  /** Returns the minimum step of a printed time, s: a trip is planned in minutes. */
  static int step(ReportNumber number) {
    return number.method() == Method.TRIP_PLAN ? MINUTE_SECONDS : 1;
  }

  /** Returns the interval of a number with its unit, or a dash if it was withheld. */
  public String range(ReportNumber number) {
    return number
        .estimate()
        .map(e -> joined(e.bounds(), number.unit(), "wording.range", step(number)))
        .orElse("\u2013");
  }

  /**
   * Returns the previous or current value of a number, such as {@code 171 kW}; {@code none} if it
   * has no value.
   */
  public String value(MovedNumber number, Optional<Estimate> estimate) {
    return estimate
        .map(e -> value(e, number.unit(), step(number)))
        .orElseGet(() -> Texts.of("wording.no_value"));
  }

  /**
   * Returns the interval of the previous or current value; empty if it is exact or has no value.
   */
  public String range(MovedNumber number, Optional<Estimate> estimate) {
    return estimate
        .filter(e -> e.bounds().width() > 0)
        .map(e -> joined(e.bounds(), number.unit(), "wording.range", step(number)))
        .orElse("");
  }

  /** Returns true if the printed form of a number is unchanged. */
  public boolean isPrintedAlike(MovedNumber number) {
    return value(number, number.before()).equals(value(number, number.after()))
        && range(number, number.before()).equals(range(number, number.after()));
  }

  private static int step(MovedNumber number) {
    return number.isOfTrip() ? MINUTE_SECONDS : 1;
  }

  /** Returns a value with its unit, such as {@code 171 kW} or {@code 24 min 40 s}. */
  public String value(Estimate estimate, Unit unit) {
    return value(estimate, unit, 1);
  }

  private String value(Estimate estimate, Unit unit, int minStep) {
    if (unit == Unit.SECOND) {
      int step = Math.max(minStep, DurationFormat.step(estimate.bounds()));
      return DurationFormat.nearest(estimate.value(), step);
    }
    Unit shown = shown(unit);
    return rounded(converted(estimate, unit), maxPlaces(shown)) + withSpace(shown);
  }

  private static String rounded(Estimate estimate, int maxPlaces) {
    int places = Rounding.places(estimate.bounds(), maxPlaces);
    // A reading such as 171 of a display with whole numbers is not printed as 171.0.
    boolean whole = places > 0 && Math.abs(estimate.value() - Math.rint(estimate.value())) < 1e-9;
    return Rounding.nearest(estimate.value(), whole ? 0 : places);
  }

  /**
   * Returns the uncertainty of the printed value: {@code give or take 25 s} if both ends are nearly
   * equally far away, {@code between 3 min 41 s and 5 min 4 s} if they are not, or {@code exact}.
   * The tolerance is rounded up, so that it covers both ends from the value as {@link
   * #value(Estimate, Unit)} prints it.
   */
  public String spread(Estimate estimate, Unit unit) {
    return spread(estimate, unit, 1);
  }

  private String spread(Estimate estimate, Unit unit, int minStep) {
    Unit shown = shown(unit);
    Estimate converted = converted(estimate, unit);
    if (!Spread.isEven(converted) && !isRounded(estimate.bounds(), unit, minStep)) {
      return joined(estimate.bounds(), unit, "wording.between", minStep);
    }
    String max =
        unit == Unit.SECOND
            ? Spread.ofTime(converted, minStep)
            : Spread.of(converted, maxPlaces(shown)) + "\u00a0" + name(shown);
    return Texts.of("wording.give_or_take", max);
  }

  /** Returns true if an exact time is printed with less precision than it has. */
  private static boolean isRounded(Interval bounds, Unit unit, int minStep) {
    double steps = bounds.low() / minStep;
    return unit == Unit.SECOND
        && minStep > 1
        && bounds.width() == 0
        && Math.abs(steps - Math.rint(steps)) > 1e-6;
  }

  /**
   * The difference of a number of two sessions in a table.
   *
   * @param words text such as {@code A quicker by 6:02}, or that the readings cannot tell if the
   *     interval contains zero
   * @param ends the interval of the amount; with signs if it contains zero
   */
  public record Difference(String words, String ends) {}

  /**
   * Returns which of two sessions is ahead, and by how much.
   *
   * @param difference the number of the first session minus that of the other, measured
   * @param one name of the first session, such as {@code A}
   * @param other name of the other session
   */
  public Difference difference(ReportNumber difference, String one, String other) {
    Estimate signed = difference.estimate().orElseThrow();
    ColumnFormat column = new ColumnFormat(List.of(difference), this);
    if (signed.bounds().contains(0)) {
      return new Difference(Texts.of("mark.undecided"), column.range(signed));
    }
    boolean time = difference.unit() == Unit.SECOND && !difference.id().startsWith("peak_hold");
    Estimate size = signed.value() < 0 ? signed.times(-1) : signed;
    return new Difference(
        Texts.of(
            time ? "difference.quicker" : "difference.more",
            signed.value() > 0 == time ? other : one,
            column.value(size)),
        column.range(size));
  }

  /** Returns an amount without its unit, rounded to what its interval permits. */
  public static String figures(Estimate estimate) {
    return rounded(estimate, MAX_PLACES);
  }

  /** Returns an interval without its unit, rounded outward. */
  public static String figures(Interval bounds) {
    int places = Rounding.places(bounds, MAX_PLACES);
    return Texts.of(
        "wording.range", Rounding.down(bounds.low(), places), Rounding.up(bounds.high(), places));
  }

  /**
   * Returns a reading with its unit, as recorded, such as {@code 7.0 kWh}.
   *
   * @param reading the reading, in the base unit
   * @param places its decimal places as recorded, not negative
   * @param unit the base unit, which is not converted
   */
  public static String written(double reading, int places, Unit unit) {
    return Rounding.nearest(reading, places) + withSpace(unit);
  }

  /** Returns an interval with its unit, such as {@code 170.5 to 171.5 kW}, or {@code exact}. */
  public String range(Interval bounds, Unit unit) {
    return joined(bounds, unit, "wording.range", 1);
  }

  /** Returns an interval as text, such as {@code between 170.5 and 171.5 kW}, or {@code exact}. */
  public String between(Interval bounds, Unit unit) {
    return joined(bounds, unit, "wording.between", 1);
  }

  /** Returns a temperature difference with its unit, such as {@code 8 °C}. */
  public String degrees(Estimate celsius) {
    Estimate shown = fahrenheit ? celsius.times(FAHRENHEITS_PER_CELSIUS) : celsius;
    int places = Rounding.places(shown.bounds(), 0);
    return Rounding.nearest(shown.value(), places) + withSpace(shown(Unit.CELSIUS));
  }

  /** Returns an exact amount in a base unit, such as the step of a display. */
  public String exactly(double amount, Unit unit) {
    BigDecimal rounded =
        BigDecimal.valueOf(shownAmount(amount, unit))
            .round(new MathContext(4))
            .stripTrailingZeros();
    return rounded.toPlainString() + withSpace(shown(unit));
  }

  private String joined(Interval bounds, Unit unit, String key, int minStep) {
    if (bounds.width() == 0 && !isRounded(bounds, unit, minStep)) {
      return Texts.of("wording.exact");
    }
    if (unit == Unit.SECOND) {
      int step = Math.max(minStep, DurationFormat.step(bounds));
      return Texts.of(
          key, DurationFormat.down(bounds.low(), step), DurationFormat.up(bounds.high(), step));
    }
    Unit shown = shown(unit);
    Interval converted = converted(bounds, unit);
    int places = isCount(converted, shown) ? 0 : Rounding.places(converted, maxPlaces(shown));
    return Texts.of(
        key,
        Rounding.down(converted.low(), places),
        Rounding.up(converted.high(), places) + withSpace(shown));
  }

  /** Returns true for bounds of a count, which needs no decimal places. */
  private static boolean isCount(Interval bounds, Unit unit) {
    return unit == Unit.ONE
        && bounds.low() == Math.rint(bounds.low())
        && bounds.high() == Math.rint(bounds.high());
  }

  /** Returns the result of a measurement: value and spread, or the reason why there is none. */
  public String outcome(ReportNumber number) {
    return number
        .outcome()
        .fold(
            (Outcome.Measured m) -> measured(number, m.estimate()),
            (Outcome.Withheld w) -> Texts.of("wording.withheld", w.reason()));
  }

  private String measured(ReportNumber number, Estimate estimate) {
    String spread = spread(estimate, number.unit(), step(number));
    String value = value(number);
    return isTwoSided(estimate, number.unit())
        ? value + " (" + spread + ")"
        : value + ", " + spread;
  }

  /**
   * Returns true if the distances of the ends from the value are so different that both are
   * printed.
   */
  public boolean isTwoSided(Estimate estimate, Unit unit) {
    return estimate.bounds().width() > 0 && !Spread.isEven(converted(estimate, unit));
  }

  private Estimate converted(Estimate estimate, Unit unit) {
    return new Estimate(shownAmount(estimate.value(), unit), converted(estimate.bounds(), unit));
  }

  private Interval converted(Interval bounds, Unit unit) {
    return bounds.mapMonotone(x -> shownAmount(x, unit));
  }

  /**
   * Returns the unit that a base unit is shown in: miles and related units if the report requests
   * them.
   */
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

  /** Converts an amount of a base unit to the unit it is shown in. */
  public double shownAmount(double amount, Unit base) {
    return convert(amount, base, shown(base));
  }

  /**
   * Returns the name of a unit for running text and axes, such as {@code °C}. A dimensionless
   * factor has none, and the label of money contains its currency.
   */
  public static String name(Unit unit) {
    boolean unnamed = unit == Unit.ONE || unit == Unit.CURRENCY;
    return unnamed ? "" : Texts.of("unit." + unit.name().toLowerCase(Locale.ROOT));
  }

  /**
   * Returns the name of a unit preceded by a space; empty for a dimensionless factor and for money.
   */
  private static String withSpace(Unit unit) {
    return name(unit).isEmpty() ? "" : "\u00a0" + name(unit);
  }

  /**
   * Describes the agreement of the two sides of a check, and the amount lost if losses are
   * possible.
   */
  public static String agreement(CrossCheck.Compared compared) {
    double first = compared.first().estimate().value();
    double percent = 100 * (1 - compared.second().estimate().value() / first);
    if (compared.ratio().low() == 1 || !(percent > 0)) {
      return Texts.of("format.number_formatter.agree");
    }
    return Texts.of(
        "format.number_formatter.agree_second_is_less_and",
        Rounding.nearest(percent, 1),
        Math.round(100 * compared.maxLoss()));
  }

  /**
   * Describes the permitted difference of the two sides of a check, such as {@code rounding
   * allows}.
   */
  public static String allowed(CrossCheck.Compared compared) {
    long percent = Math.round(100 * compared.maxLoss());
    return percent == 0
        ? Texts.of("format.number_formatter.rounding_allows")
        : Texts.of("format.number_formatter.rounding_and_losses_of_up", percent);
  }

  /** Returns the nearest whole second of a film or session, such as {@code 6:29}. */
  public static String timeCode(double seconds) {
    return DurationFormat.clock(seconds);
  }

  /** Returns a calendar date as text, such as {@code 14 March 2026}. */
  public static String date(LocalDate date) {
    String month = Texts.of("month." + date.getMonthValue());
    return Texts.of("wording.date", date.getDayOfMonth(), month, YEAR.format(date));
  }

  /**
   * Returns a calendar date as text; anything that is not an ISO 8601 day is returned unchanged.
   */
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

  static int maxPlaces(Unit unit) {
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
