package taperbook.metric.road;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import taperbook.i18n.Message;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.trip.Air;
import taperbook.metric.trip.RoadLoad;
import taperbook.plan.Basis;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Role;
import taperbook.session.Caveat;
import taperbook.session.Input;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.RowRef;

/** Estimates the range test's result in still standard air on a level road. */
final class StandardRangeMetrics {
  private static final Metric DENSITY =
      metric("air_density", Unit.KILOGRAM_PER_CUBIC_METRE).in(Role.CORRECTION);
  private static final Metric AIR = part("correction_air").in(Role.CORRECTION);
  private static final Metric WIND = part("correction_wind").in(Role.CORRECTION);
  private static final Metric CLIMB = part("correction_climb").in(Role.CORRECTION);
  private static final Metric EXPLAINED =
      metric("road_load_share", Unit.PERCENT).in(Role.CORRECTION);
  private static final Metric CONSUMPTION = part("standard_consumption");
  private static final Metric RANGE = metric("standard_range", Unit.KILOMETRE);

  /** Efficiency from the battery to the wheels; common practice, no source. */
  private static final Estimate EFFICIENCY = new Estimate(0.88, new Interval(0.80, 0.93));

  private static final Caveat MODEL =
      new Caveat(
          Caveat.Kind.MODEL,
          Message.of("metric.standard_range_metrics.modelled_and_not_measured_only"));

  private static final Caveat BY_BODY =
      new Caveat(
          Caveat.Kind.MODEL, Message.of("metric.standard_range_metrics.drag_area_or_mass_of"));

  private final Optional<RangeTest> test;
  private final RangeFigures range;
  private final MetricCollector collector;

  StandardRangeMetrics(Optional<RangeTest> test, RangeFigures range, MetricCollector collector) {
    this.test = test;
    this.range = range;
    this.collector = collector;
  }

  private static Metric metric(String id, Unit unit) {
    return Metric.of(id, unit, Method.STANDARD_RANGE, Basis.ENERGY, Input.DRIVE);
  }

  private static Metric part(String id) {
    return metric(id, Unit.WATT_HOUR_PER_KILOMETRE);
  }

  void measure() {
    Finding<DriveConditions> drive =
        RangeFigures.facts(test)
            .flatMap(f -> range.consumption().and(range.fullRange()).and(range.distance()))
            .map(c -> new DriveConditions(test.orElseThrow().facts()))
            .from(d -> rows());
    Finding<Parts> parts = drive.flatMap(this::known);
    Finding<Estimate> consumption = range.consumption();
    Finding<Estimate> left =
        parts.flatMap(
            p -> range.consumption().map(c -> Estimate.exactly(1).minus(p.excess().over(c))));
    List<Caveat> own =
        drive.value().filter(DriveConditions::isByBody).isPresent()
            ? List.of(MODEL, BY_BODY)
            : List.of(MODEL);
    collector.measured(DENSITY, parts.map(Parts::density));
    collector.measured(AIR, parts.map(Parts::air), own);
    collector.measured(WIND, parts.map(Parts::wind), own);
    collector.measured(CLIMB, parts.map(Parts::climb), own);
    collector.measured(
        EXPLAINED, parts.flatMap(p -> consumption.map(c -> p.load().over(c).times(100))), own);
    collector.measured(
        CONSUMPTION, parts.flatMap(p -> consumption.map(c -> c.minus(p.excess()))), own);
    collector.measured(
        RANGE,
        left.filter(
                l -> l.bounds().low() > 0,
                Message.of("metric.standard_range_metrics.correction_may_be_as_large"))
            .flatMap(l -> range.fullRange().map(r -> r.over(l))),
        own);
  }

  /** Returns the parts of the consumption, if all that they are computed from is known. */
  private Finding<Parts> known(DriveConditions drive) {
    Parts parts = parts(drive);
    List<String> missing = List.copyOf(new LinkedHashSet<>(drive.missing()));
    return missing.isEmpty()
        ? Finding.of(parts, List.of())
        : Finding.missing(
            Message.of(
                "metric.standard_range_metrics.not_known_of_range_test",
                String.join("; ", missing)));
  }

  /**
   * The components of a consumption, all at the battery, Wh/km.
   *
   * @param air increase by the air density
   * @param wind increase by the wind
   * @param climb increase by the climb
   * @param load total explained by the road load
   */
  private record Parts(
      Estimate density, Estimate air, Estimate wind, Estimate climb, Estimate load) {
    /** Returns the total difference from standard conditions. */
    Estimate excess() {
      return plus(plus(air, wind), climb);
    }
  }

  private Parts parts(DriveConditions drive) {
    Estimate density = drive.density();
    Estimate still =
        RoadLoad.drag(Estimate.exactly(1), drive.dragArea(), drive.speed()).over(EFFICIENCY);
    Estimate windFactor = drive.windFactor();
    Estimate excessDensity = density.minus(Estimate.exactly(Air.standardDensity()));
    Estimate excessWind = windFactor.minus(Estimate.exactly(1));
    Estimate height =
        RoadLoad.climb(drive.mass(), drive.climb(), range.distance().value().orElseThrow());
    // Energy recovered from a descent passes the drivetrain in reverse.
    Estimate climb = height.value() < 0 ? height.times(EFFICIENCY) : height.over(EFFICIENCY);
    Estimate rolling = RoadLoad.rolling(drive.rollingCoefficient(), drive.mass()).over(EFFICIENCY);
    Estimate wind = still.times(density).times(excessWind);
    Estimate load = plus(plus(still.times(density).times(windFactor), rolling), climb);
    return new Parts(density, still.times(excessDensity), wind, climb, load);
  }

  private static Estimate plus(Estimate one, Estimate other) {
    return one.minus(other.times(-1));
  }

  private List<RowRef> rows() {
    return RangeFigures.rows(
        test.orElseThrow().facts(),
        RangeItem.AMBIENT_TEMPERATURE,
        RangeItem.AIR_PRESSURE,
        RangeItem.AVERAGE_SPEED,
        RangeItem.WIND_SPEED,
        RangeItem.WIND_DIRECTION,
        RangeItem.ROUTE,
        RangeItem.START_ELEVATION,
        RangeItem.END_ELEVATION,
        RangeItem.DRAG_AREA,
        RangeItem.ROLLING_COEFFICIENT,
        RangeItem.VEHICLE_MASS,
        RangeItem.PAYLOAD,
        RangeItem.BODY);
  }
}
