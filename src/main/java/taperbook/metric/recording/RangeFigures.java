package taperbook.metric.recording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.metric.fit.SampleMean;
import taperbook.plan.Basis;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.result.Method;
import taperbook.session.DisplayRounding;
import taperbook.session.DriveEnds;
import taperbook.session.Facts;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.RowRef;

/**
 * The results of a range test:
 *
 * <pre>
 *   distance driven   = distance read * correction
 *   full range        = distance driven * 100 / charge used                [km]
 *   consumption       = energy used / distance driven                      [Wh/km]
 * </pre>
 *
 * <p>Usable energy over consumption is the range of a full battery (SAE J1634); scaling by
 * displayed state of charge is common practice, no source.
 *
 * @param distance distance driven, km
 * @param fullRange driven range of a full battery, km
 * @param consumption energy used for the distance, Wh/km
 * @param ratedRange range stated by the manufacturer, km
 * @param chosenBasis {@link Basis#DRIVEN} or {@link Basis#RATED}: the basis of the report
 */
public record RangeFigures(
    Derived distance,
    Derived fullRange,
    Derived consumption,
    Derived ratedRange,
    Basis chosenBasis) {
  private static final double WATT_HOURS_PER_KILOWATT_HOUR = 1000;

  public static final String NO_TEST = "the report names no range test of this vehicle";

  /**
   * Computes the figures of a drive.
   *
   * @param test the drive, if there is one
   * @param rounding rounding of the car's state-of-charge display
   * @param chosenBasis {@link Basis#DRIVEN} or {@link Basis#RATED}
   */
  public static RangeFigures of(
      Optional<RangeTest> test, DisplayRounding rounding, Basis chosenBasis) {
    if (test.isEmpty()) {
      return new RangeFigures(
          Derived.withheld(NO_TEST, Basis.DRIVEN, Method.DRIVEN_RANGE),
          Derived.withheld(NO_TEST, Basis.DRIVEN, Method.DRIVEN_RANGE),
          Derived.withheld(NO_TEST, Basis.ENERGY, Method.CONSUMPTION),
          Derived.withheld(NO_TEST, Basis.RATED, Method.TIME_TO_ADD_RATED),
          chosenBasis);
    }
    Facts<RangeItem> facts = test.get().facts();
    Derived distance = distance(facts);
    return new RangeFigures(
        distance,
        fullRange(chargeUsed(facts, rounding), distance),
        consumption(facts, distance),
        ratedRange(facts),
        chosenBasis);
  }

  /**
   * Computes the mean figures of consistent drives. Uses the first drive where a figure of the
   * others is unknown, and for the rated range.
   *
   * @param drives drives of one car under like conditions; may be empty
   */
  public static RangeFigures of(
      List<RangeTest> drives, DisplayRounding rounding, Basis chosenBasis) {
    RangeFigures first = of(drives.stream().findFirst(), rounding, chosenBasis);
    if (drives.size() < 2) {
      return first;
    }
    List<RangeFigures> each =
        drives.stream().map(t -> of(Optional.of(t), rounding, chosenBasis)).toList();
    return new RangeFigures(
        first.distance,
        mean(each.stream().map(RangeFigures::fullRange).toList()),
        mean(each.stream().map(RangeFigures::consumption).toList()),
        first.ratedRange,
        chosenBasis);
  }

  /** Returns the mean of a figure over the drives that have it; its bounds include their spread. */
  private static Derived mean(List<Derived> each) {
    List<Derived> known = each.stream().filter(d -> d.estimate().isPresent()).toList();
    if (known.size() < 2) {
      return known.stream().findFirst().orElse(each.get(0));
    }
    List<Estimate> estimates = known.stream().flatMap(d -> d.estimate().stream()).toList();
    SampleMean mean = SampleMean.of(estimates.stream().map(Estimate::value).toList());
    if (mean.half95() >= mean.value()) {
      return Derived.withheld(
          "the drives differ by so much that their mean is not known",
          known.get(0).basis(),
          Method.DRIVES_MEAN);
    }
    Interval sum = estimates.stream().map(Estimate::bounds).reduce(Interval::plus).orElseThrow();
    Interval bounds =
        sum.times(1.0 / known.size()).hull(Interval.around(mean.value(), mean.half95()));
    return Derived.measured(
        new Estimate(mean.value(), bounds),
        known.stream().flatMap(d -> d.rows().stream()).toList(),
        known.get(0).basis(),
        Method.DRIVES_MEAN);
  }

  /** Returns the range on the report's basis, km. */
  public Derived chosenRange() {
    return chosenBasis == Basis.RATED ? ratedRange : fullRange;
  }

  private static Derived distance(Facts<RangeItem> facts) {
    Optional<Estimate> read = facts.amount(RangeItem.DISTANCE);
    if (read.isEmpty()) {
      return Derived.withheld(
          "the distance driven is not known", Basis.DRIVEN, Method.DRIVEN_RANGE);
    }
    Estimate corrected =
        facts.amount(RangeItem.ODOMETER_CORRECTION).map(read.get()::times).orElse(read.get());
    return Derived.measured(
        corrected,
        rows(facts, RangeItem.DISTANCE, RangeItem.ODOMETER_CORRECTION),
        Basis.DRIVEN,
        Method.DRIVEN_RANGE);
  }

  private static Derived fullRange(Derived used, Derived distance) {
    if (distance.estimate().isEmpty()) {
      return distance;
    }
    if (used.estimate().isEmpty()) {
      return used;
    }
    List<RowRef> rows = new ArrayList<>(distance.rows());
    rows.addAll(used.rows());
    return Derived.measured(
        distance.estimate().get().over(used.estimate().get()).times(100),
        rows,
        Basis.DRIVEN,
        Method.DRIVEN_RANGE);
  }

  /** Returns the state of charge that the drive used, certainly above zero, %. */
  static Derived chargeUsed(Facts<RangeItem> facts, DisplayRounding rounding) {
    Optional<Estimate> used = DriveEnds.of(facts, rounding).map(DriveEnds::used);
    if (used.isEmpty()) {
      return Derived.withheld(
          "the state of charge at the start or end of the drive is not known",
          Basis.DRIVEN,
          Method.DRIVEN_RANGE);
    }
    return used.get().bounds().low() > 0
        ? Derived.measured(
            used.get(),
            rows(facts, RangeItem.START_SOC, RangeItem.END_SOC),
            Basis.DRIVEN,
            Method.DRIVEN_RANGE)
        : Derived.withheld(
            "the drive used less charge than the display can tell",
            Basis.DRIVEN,
            Method.DRIVEN_RANGE);
  }

  private static Derived consumption(Facts<RangeItem> facts, Derived distance) {
    Optional<Estimate> used = facts.amount(RangeItem.ENERGY_USED);
    Optional<Estimate> displayed = facts.amount(RangeItem.CONSUMPTION_DISPLAYED);
    boolean divisible =
        distance.estimate().filter(d -> d.bounds().low() > 0).isPresent() && used.isPresent();
    if (divisible) {
      List<RowRef> rows = new ArrayList<>(distance.rows());
      rows.addAll(rows(facts, RangeItem.ENERGY_USED));
      Estimate wattHours = used.get().times(WATT_HOURS_PER_KILOWATT_HOUR);
      return Derived.measured(
          wattHours.over(distance.estimate().get()), rows, Basis.ENERGY, Method.CONSUMPTION);
    }
    if (displayed.isPresent()) {
      return Derived.measured(
          displayed.get(),
          rows(facts, RangeItem.CONSUMPTION_DISPLAYED),
          Basis.DISPLAYED,
          Method.CONSUMPTION_DISPLAYED);
    }
    String reason =
        used.isEmpty()
            ? "neither the energy used nor a displayed consumption is known"
            : "the distance driven is not known";
    return Derived.withheld(reason, Basis.ENERGY, Method.CONSUMPTION);
  }

  private static Derived ratedRange(Facts<RangeItem> facts) {
    return facts
        .amount(RangeItem.RATED_RANGE)
        .map(
            e ->
                Derived.measured(
                    // A stated range is exact, not a reading rounded to its last digit.
                    Estimate.exactly(e.value()),
                    rows(facts, RangeItem.RATED_RANGE),
                    Basis.RATED,
                    Method.TIME_TO_ADD_RATED))
        .orElse(
            Derived.withheld("no rated range is stated", Basis.RATED, Method.TIME_TO_ADD_RATED));
  }

  public static List<RowRef> rows(Facts<RangeItem> facts, RangeItem... items) {
    List<RowRef> rows = new ArrayList<>();
    for (RangeItem item : items) {
      rows.addAll(facts.rows(item));
    }
    return rows;
  }
}
