package taperbook.format;

import java.util.List;
import taperbook.format.DurationFormat.ClockForm;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.ReportNumber;

/**
 * Formats numbers of one unit for a table: the unit once in the header, all values to the same
 * decimal place, an interval as {@code 6:22\u20136:36}. The place follows from the least certain
 * number, but is at most one digit coarser than that of the most certain; the ends of an interval
 * are rounded outward.
 */
public final class ColumnFormat {
  private static final char TO = '\u2013';
  private static final String MINUS = "\u2212";

  private final Unit unit;
  private final Unit shown;
  private final int step;
  private final ClockForm form;
  private final int places;
  private final int valuePlaces;

  /**
   * Creates the format of a column, or of a row whose cells share a unit.
   *
   * @param numbers the numbers, measured or not; at least one, all of one unit
   */
  public ColumnFormat(List<ReportNumber> numbers, NumberFormatter wording) {
    this.unit = numbers.get(0).unit();
    if (numbers.stream().anyMatch(n -> n.unit() != unit)) {
      throw new IllegalArgumentException(
          "units in one column: " + numbers.stream().map(ReportNumber::unit).distinct().toList());
    }
    this.shown = wording.shown(unit);
    List<ReportNumber> measured = numbers.stream().filter(n -> n.estimate().isPresent()).toList();
    this.step =
        measured.stream()
            .mapToInt(n -> Math.max(NumberFormatter.step(n), DurationFormat.step(bounds(n))))
            .min()
            .orElse(1);
    double longest = measured.stream().mapToDouble(n -> Math.abs(bounds(n).high())).max().orElse(0);
    this.form =
        step >= 60
            ? ClockForm.WHOLE_MINUTES
            : longest >= 3600 ? ClockForm.HOURS : ClockForm.MINUTES;
    int[] own =
        measured.stream()
            .mapToInt(n -> Rounding.places(converted(bounds(n)), NumberFormatter.maxPlaces(shown)))
            .sorted()
            .toArray();
    this.places = own.length == 0 ? 0 : Math.max(own[0], own[own.length - 1] - 1);
    boolean whole =
        measured.stream()
            .map(n -> converted(n.estimate().orElseThrow().value()))
            .allMatch(v -> Math.abs(v - Math.rint(v)) < 1e-9);
    this.valuePlaces = whole ? Math.min(0, places) : places;
  }

  /**
   * Returns the unit for the header, such as {@code km} or {@code min:s}; empty if there is none.
   */
  public String unit() {
    if (unit != Unit.SECOND) {
      return NumberFormatter.name(shown);
    }
    return switch (form) {
      case MINUTES -> Labels.of("unit.clock_minutes");
      case HOURS -> Labels.of("unit.clock_hours");
      case WHOLE_MINUTES -> Labels.of("unit.clock_whole_minutes");
    };
  }

  /** Returns the value without its unit. */
  public String value(Estimate estimate) {
    return unit == Unit.SECOND
        ? DurationFormat.clock(DurationFormat.rounded(estimate.value(), step), form)
        : Rounding.nearest(converted(estimate.value()), valuePlaces);
  }

  /** Returns the interval without its unit; {@code exact} if it has no width. */
  public String range(Estimate estimate) {
    Interval bounds = estimate.bounds();
    if (bounds.width() == 0) {
      return Labels.of("wording.exact");
    }
    return joined(low(estimate), high(estimate));
  }

  /** Returns the lower end of the interval without its unit, rounded down. */
  public String low(Estimate estimate) {
    double low = estimate.bounds().low();
    return unit == Unit.SECOND
        ? DurationFormat.clock(DurationFormat.roundedDown(low, step), form)
        : Rounding.down(converted(estimate.bounds()).low(), places);
  }

  /** Returns the upper end of the interval without its unit, rounded up. */
  public String high(Estimate estimate) {
    double high = estimate.bounds().high();
    return unit == Unit.SECOND
        ? DurationFormat.clock(DurationFormat.roundedUp(high, step), form)
        : Rounding.up(converted(estimate.bounds()).high(), places);
  }

  /** Uses no dash beside a minus sign, because it would look like a second sign. */
  private static String joined(String low, String high) {
    return low.startsWith(MINUS) ? Labels.of("wording.range", low, high) : low + TO + high;
  }

  private static Interval bounds(ReportNumber number) {
    return number.estimate().orElseThrow().bounds();
  }

  private Interval converted(Interval bounds) {
    return bounds.mapMonotone(this::converted);
  }

  private double converted(double amount) {
    return NumberFormatter.convert(amount, unit, shown);
  }
}
