package taperbook.metric.recording;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import taperbook.i18n.Message;
import taperbook.metric.fit.SampleMean;
import taperbook.plan.Basis;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.session.DisplayRounding;
import taperbook.session.DriveEnds;
import taperbook.session.Facts;
import taperbook.session.Input;
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
 * @param rangeMethod how the driven range was determined
 * @param consumptionMethod how the consumption was determined
 * @param consumptionBasis basis of the consumption
 * @param chosenBasis {@link Basis#DRIVEN} or {@link Basis#RATED}: the basis of the report
 */
public record RangeFigures(
    Finding<Estimate> distance,
    Finding<Estimate> fullRange,
    Finding<Estimate> consumption,
    Finding<Estimate> ratedRange,
    Method rangeMethod,
    Method consumptionMethod,
    Basis consumptionBasis,
    Basis chosenBasis) {
  private static final double WATT_HOURS_PER_KILOWATT_HOUR = 1000;

  public static final Message NO_TEST =
      Message.of("metric.range_figures.report_names_no_range_test");

  private static final Message NO_DISTANCE =
      Message.of("metric.common.distance_driven_is_not_known");

  /**
   * Computes the figures of a drive.
   *
   * @param test the drive, if there is one
   * @param rounding rounding of the car's state-of-charge display
   * @param chosenBasis {@link Basis#DRIVEN} or {@link Basis#RATED}
   */
  public static RangeFigures of(
      Optional<RangeTest> test, DisplayRounding rounding, Basis chosenBasis) {
    Finding<Facts<RangeItem>> facts = facts(test);
    Finding<Estimate> distance = facts.flatMap(RangeFigures::distance);
    Finding<Estimate> used = facts.flatMap(f -> chargeUsed(f, rounding));
    boolean isDisplayed = test.filter(t -> isDisplayed(t.facts(), distance.value())).isPresent();
    return new RangeFigures(
        distance,
        distance.flatMap(d -> used.map(u -> d.over(u).times(100))),
        facts.flatMap(f -> isDisplayed ? displayed(f) : consumption(f, distance)),
        facts.flatMap(RangeFigures::ratedRange),
        Method.DRIVEN_RANGE,
        isDisplayed ? Method.CONSUMPTION_DISPLAYED : Method.CONSUMPTION,
        isDisplayed ? Basis.DISPLAYED : Basis.ENERGY,
        chosenBasis);
  }

  /** Returns what was recorded of a drive. */
  public static Finding<Facts<RangeItem>> facts(Optional<RangeTest> test) {
    return Finding.of(test.map(RangeTest::facts), NO_TEST);
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
    List<RangeFigures> each =
        drives.stream().map(drive -> of(Optional.of(drive), rounding, chosenBasis)).toList();
    List<RangeFigures> ranges = with(each, RangeFigures::fullRange);
    List<RangeFigures> uses = with(each, RangeFigures::consumption);
    RangeFigures range = ranges.isEmpty() ? first : ranges.get(0);
    RangeFigures use = uses.isEmpty() ? first : uses.get(0);
    return new RangeFigures(
        first.distance,
        mean(ranges, range, RangeFigures::fullRange),
        mean(uses, use, RangeFigures::consumption),
        first.ratedRange,
        ranges.size() > 1 ? Method.DRIVES_MEAN : range.rangeMethod,
        uses.size() > 1 ? Method.DRIVES_MEAN : use.consumptionMethod,
        use.consumptionBasis,
        chosenBasis);
  }

  /** Returns the drives that have a figure. */
  private static List<RangeFigures> with(
      List<RangeFigures> drives, Function<RangeFigures, Finding<Estimate>> figure) {
    return drives.stream().filter(d -> figure.apply(d).value().isPresent()).toList();
  }

  /** Returns the mean of a figure over the drives that have it; its bounds include their spread. */
  private static Finding<Estimate> mean(
      List<RangeFigures> known,
      RangeFigures first,
      Function<RangeFigures, Finding<Estimate>> figure) {
    if (known.size() < 2) {
      return figure.apply(first);
    }
    List<Estimate> estimates =
        known.stream().map(f -> figure.apply(f).value().orElseThrow()).toList();
    SampleMean mean = SampleMean.of(estimates.stream().map(Estimate::value).toList());
    if (mean.half95() >= mean.value()) {
      return Finding.missing(Message.of("metric.range_figures.drives_differ_by_so_much"));
    }
    Interval sum = estimates.stream().map(Estimate::bounds).reduce(Interval::plus).orElseThrow();
    Interval bounds =
        sum.times(1.0 / known.size()).hull(Interval.around(mean.value(), mean.half95()));
    return Finding.of(
        new Estimate(mean.value(), bounds),
        known.stream().flatMap(f -> figure.apply(f).rows().stream()).toList());
  }

  /** Returns the definition of the consumption as a number. */
  public Metric consumptionMetric() {
    return Metric.of(
        "consumption",
        Unit.WATT_HOUR_PER_KILOMETRE,
        consumptionMethod,
        consumptionBasis,
        Input.DRIVE);
  }

  /** Returns the definition of the driven range as a number. */
  public Metric rangeMetric() {
    return Metric.of("driven_range_full", Unit.KILOMETRE, rangeMethod, Basis.DRIVEN, Input.DRIVE);
  }

  /** Returns the range on the report's basis, km. */
  public Finding<Estimate> chosenRange() {
    return chosenBasis == Basis.RATED ? ratedRange : fullRange;
  }

  /** Returns the share of the driven range that a distance takes, %. */
  public Finding<Estimate> share(WantedDistance distance) {
    return share(distance, fullRange);
  }

  /** Returns the share of a range that a distance takes, %. */
  public static Finding<Estimate> share(WantedDistance distance, Finding<Estimate> range) {
    return range.map(full -> Estimate.exactly(distance.kilometres() * 100).over(full));
  }

  private static Finding<Estimate> distance(Facts<RangeItem> facts) {
    Optional<Estimate> corrected =
        facts
            .amount(RangeItem.DISTANCE)
            .map(d -> facts.amount(RangeItem.ODOMETER_CORRECTION).map(d::times).orElse(d));
    return Finding.of(corrected, NO_DISTANCE)
        .from(d -> rows(facts, RangeItem.DISTANCE, RangeItem.ODOMETER_CORRECTION));
  }

  /** Returns the state of charge that the drive used, certainly above zero, %. */
  static Finding<Estimate> chargeUsed(Facts<RangeItem> facts, DisplayRounding rounding) {
    return Finding.of(
            DriveEnds.of(facts, rounding).map(DriveEnds::used),
            Message.of("metric.common.state_of_charge_at_start"))
        .filter(
            used -> used.bounds().low() > 0,
            Message.of("metric.range_figures.drive_used_less_charge_than"))
        .from(used -> rows(facts, RangeItem.START_SOC, RangeItem.END_SOC));
  }

  /** Returns true if the consumption has to be that of the car's display. */
  private static boolean isDisplayed(Facts<RangeItem> facts, Optional<Estimate> distance) {
    boolean isDivisible =
        distance.filter(d -> d.bounds().low() > 0).isPresent()
            && facts.amount(RangeItem.ENERGY_USED).isPresent();
    return !isDivisible && facts.amount(RangeItem.CONSUMPTION_DISPLAYED).isPresent();
  }

  private static Finding<Estimate> displayed(Facts<RangeItem> facts) {
    return Finding.of(
        facts.amount(RangeItem.CONSUMPTION_DISPLAYED).orElseThrow(),
        rows(facts, RangeItem.CONSUMPTION_DISPLAYED));
  }

  private static Finding<Estimate> consumption(Facts<RangeItem> facts, Finding<Estimate> distance) {
    return Finding.of(
            facts.amount(RangeItem.ENERGY_USED),
            Message.of("metric.range_figures.neither_energy_used_nor_displayed"))
        .from(used -> rows(facts, RangeItem.ENERGY_USED))
        .map(used -> used.times(WATT_HOURS_PER_KILOWATT_HOUR))
        .flatMap(used -> distance.filter(d -> d.bounds().low() > 0, NO_DISTANCE).map(used::over));
  }

  private static Finding<Estimate> ratedRange(Facts<RangeItem> facts) {
    // A stated range is exact, not a reading rounded to its last digit.
    return Finding.of(
            facts.amount(RangeItem.RATED_RANGE).map(e -> Estimate.exactly(e.value())),
            Message.of("metric.range_figures.no_rated_range_is_stated"))
        .from(range -> rows(facts, RangeItem.RATED_RANGE));
  }

  public static List<RowRef> rows(Facts<RangeItem> facts, RangeItem... items) {
    return Stream.of(items).flatMap(item -> facts.rows(item).stream()).toList();
  }
}
