package taperbook.metric.road;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import taperbook.format.Labels;
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
      metric("air_density", Labels.of("number.air_density"), Unit.KILOGRAM_PER_CUBIC_METRE)
          .in(Role.CORRECTION);
  private static final Metric AIR =
      part("correction_air", Labels.of("number.correction_air")).in(Role.CORRECTION);
  private static final Metric WIND =
      part("correction_wind", Labels.of("number.correction_wind")).in(Role.CORRECTION);
  private static final Metric CLIMB =
      part("correction_climb", Labels.of("number.correction_climb")).in(Role.CORRECTION);
  private static final Metric EXPLAINED =
      metric("road_load_share", Labels.of("number.road_load_share"), Unit.PERCENT)
          .in(Role.CORRECTION);
  private static final Metric CONSUMPTION =
      part("standard_consumption", Labels.of("number.standard_consumption"));
  private static final Metric RANGE =
      metric("standard_range", Labels.of("number.standard_range"), Unit.KILOMETRE);

  private static final List<Metric> ALL =
      List.of(DENSITY, AIR, WIND, CLIMB, EXPLAINED, CONSUMPTION, RANGE);

  /** Efficiency from the battery to the wheels; common practice, no source. */
  private static final Estimate EFFICIENCY = new Estimate(0.88, new Interval(0.80, 0.93));

  private static final Caveat MODEL =
      new Caveat(
          Caveat.Kind.MODEL,
          "Modelled and not measured: only the density of the air, the wind and the climb are"
              + " corrected, with the wind as stated taken at the height of the car. A warmer or"
              + " cooler battery, heating, tyres and wet roads change a range at least as much and"
              + " are not.");

  private static final Caveat BY_BODY =
      new Caveat(
          Caveat.Kind.MODEL,
          "The drag area or the mass of the car is not stated; what is usual for its body stands in"
              + " for it, with wide bounds.");

  private final Optional<RangeTest> test;
  private final RangeFigures range;
  private final MetricCollector collector;

  StandardRangeMetrics(Optional<RangeTest> test, RangeFigures range, MetricCollector collector) {
    this.test = test;
    this.range = range;
    this.collector = collector;
  }

  private static Metric metric(String id, String label, Unit unit) {
    return new Metric(id, label, unit, Method.STANDARD_RANGE, Basis.ENERGY, Input.DRIVE);
  }

  private static Metric part(String id, String label) {
    return metric(id, label, Unit.WATT_HOUR_PER_KILOMETRE);
  }

  void measure() {
    Optional<String> none =
        test.isEmpty()
            ? Optional.of(RangeFigures.NO_TEST)
            : range
                .consumption()
                .withheld()
                .or(range.fullRange()::withheld)
                .or(range.distance()::withheld);
    if (none.isPresent()) {
      withhold(none.get());
      return;
    }
    DriveConditions drive = new DriveConditions(test.orElseThrow().facts());
    Parts parts = parts(drive);
    List<String> missing = List.copyOf(new LinkedHashSet<>(drive.missing()));
    if (missing.isEmpty()) {
      add(drive, parts);
    } else {
      withhold("not known of the range test: " + String.join("; ", missing));
    }
  }

  private void withhold(String reason) {
    ALL.forEach(entry -> collector.withheld(entry, reason));
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
        RoadLoad.climb(drive.mass(), drive.climb(), range.distance().estimate().orElseThrow());
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

  private void add(DriveConditions drive, Parts parts) {
    Estimate consumption = range.consumption().estimate().orElseThrow();
    Estimate share = parts.excess().over(consumption);
    Estimate left = Estimate.exactly(1).minus(share);
    List<Caveat> own = drive.isByBody() ? List.of(MODEL, BY_BODY) : List.of(MODEL);
    List<RowRef> rows = rows();
    collector.measured(DENSITY, parts.density(), rows);
    collector.measured(AIR, parts.air(), rows, own);
    collector.measured(WIND, parts.wind(), rows, own);
    collector.measured(CLIMB, parts.climb(), rows, own);
    collector.measured(EXPLAINED, parts.load().over(consumption).times(100), rows, own);
    collector.measured(CONSUMPTION, consumption.minus(parts.excess()), rows, own);
    if (left.bounds().low() > 0) {
      collector.measured(RANGE, range.fullRange().estimate().orElseThrow().over(left), rows, own);
    } else {
      collector.withheld(RANGE, "the correction may be as large as the consumption itself");
    }
  }

  private List<RowRef> rows() {
    List<RowRef> rows = new ArrayList<>(range.consumption().rows());
    rows.addAll(range.fullRange().rows());
    rows.addAll(
        RangeFigures.rows(
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
            RangeItem.BODY));
    return rows;
  }
}
