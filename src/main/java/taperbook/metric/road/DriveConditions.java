package taperbook.metric.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import taperbook.metric.trip.Air;
import taperbook.metric.trip.BodyShape;
import taperbook.metric.trip.Wind;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.session.Facts;
import taperbook.session.HowKnown;
import taperbook.session.RangeItem;

/**
 * The inputs of a physical model of a drive: air, wind, climb, car. Collects descriptions of all
 * missing inputs, so that they are reported together.
 */
final class DriveConditions {
  /**
   * Weather changes the pressure by about this much in either direction; common practice, no
   * source.
   */
  private static final double WEATHER_HECTOPASCALS = 25;

  /** Range of actual to stated wind speed if the wind was not measured at the car. */
  private static final Interval WIND_NOT_MEASURED = new Interval(0.5, 1.2);

  private final Facts<RangeItem> facts;
  private final List<String> missing = new ArrayList<>();
  private final Optional<BodyShape> body;

  DriveConditions(Facts<RangeItem> facts) {
    this.facts = facts;
    this.body = facts.text(RangeItem.BODY).flatMap(BodyShape::ofWords);
  }

  /** Returns descriptions of the missing inputs; empty if all are known. */
  List<String> missing() {
    return missing;
  }

  /** Returns true if the drag area or a mass is not stated but typical of the body. */
  boolean isByBody() {
    return body.isPresent()
        && (facts.amount(RangeItem.DRAG_AREA).isEmpty()
            || facts.amount(RangeItem.VEHICLE_MASS).isEmpty());
  }

  private Estimate known(Optional<Estimate> estimate, String words) {
    if (estimate.isEmpty()) {
      missing.add(words);
    }
    return estimate.orElse(Estimate.exactly(1));
  }

  /** Returns the density of the air, kg/m3. */
  Estimate density() {
    Estimate celsius = known(facts.amount(RangeItem.AMBIENT_TEMPERATURE), "the air temperature");
    Estimate pressure =
        known(
            facts.amount(RangeItem.AIR_PRESSURE).or(this::pressureByHeight),
            "the air pressure or the height above sea level");
    return corners(celsius, pressure, Air::density);
  }

  private Optional<Estimate> pressureByHeight() {
    return facts
        .amount(RangeItem.START_ELEVATION)
        .map(e -> Estimate.around(Air.pressureAt(e.value()), WEATHER_HECTOPASCALS));
  }

  /** Returns the average speed, km/h. */
  Estimate speed() {
    return known(facts.amount(RangeItem.AVERAGE_SPEED), "the average speed");
  }

  /** Returns the drag coefficient times frontal area, m2. */
  Estimate dragArea() {
    return known(
        facts.amount(RangeItem.DRAG_AREA).or(() -> body.map(BodyShape::dragArea)),
        "the drag area, or the body of the car");
  }

  /** Returns the rolling resistance over weight, as stated or as typical of tarmac. */
  Estimate rollingCoefficient() {
    return facts.amount(RangeItem.ROLLING_COEFFICIENT).orElse(BodyShape.rollingCoefficient());
  }

  /** Returns the mass of car and load, kg. */
  Estimate mass() {
    Estimate car =
        known(
            facts.amount(RangeItem.VEHICLE_MASS).or(() -> body.map(BodyShape::mass)),
            "the mass of the car, or its body");
    return facts.amount(RangeItem.PAYLOAD).map(load -> car.minus(load.times(-1))).orElse(car);
  }

  /**
   * Returns the height of the end above the start, m; zero on a route that returns to its start.
   */
  Estimate climb() {
    Optional<Estimate> start = facts.amount(RangeItem.START_ELEVATION);
    Optional<Estimate> end = facts.amount(RangeItem.END_ELEVATION);
    if (start.isPresent() && end.isPresent()) {
      boolean same = start.get().value() == end.get().value();
      return same ? Estimate.exactly(0) : end.get().minus(start.get());
    }
    return isRoundTrip()
        ? Estimate.exactly(0)
        : known(Optional.empty(), "the height of start and end");
  }

  private boolean isRoundTrip() {
    return facts.text(RangeItem.ROUTE).filter(r -> !r.equals("one way")).isPresent();
  }

  /** Returns the factor by which the wind multiplied the drag, as the mean over the route. */
  Estimate windFactor() {
    Estimate wind = known(facts.amount(RangeItem.WIND_SPEED), "the wind speed");
    boolean measured =
        facts
            .known(RangeItem.WIND_SPEED)
            .filter(f -> f.howKnown() == HowKnown.MEASURED)
            .isPresent();
    Interval wide = measured ? Interval.exactly(1) : WIND_NOT_MEASURED;
    Interval bounds = wind.bounds().times(wide).hull(wind.value()).atLeast(0);
    return directed(new Estimate(wind.value(), bounds));
  }

  private Estimate directed(Estimate wind) {
    String route = facts.text(RangeItem.ROUTE).orElse("");
    Optional<Double> angle = angle();
    DoubleBinaryOperator around = Wind::allAround;
    if (route.equals("out and back") && angle.isPresent()) {
      return corners(wind, speed(), (w, v) -> Wind.outAndBack(w, v, angle.get()));
    }
    if (isRoundTrip()) {
      return corners(wind, speed(), around);
    }
    if (angle.isPresent()) {
      return corners(wind, speed(), (w, v) -> Wind.oneWay(w, v, angle.get()));
    }
    // Any direction is possible: the mean over all of them, from a tail wind to a head wind.
    Estimate mean = corners(wind, speed(), around);
    Interval head = corners(wind, speed(), (w, v) -> Wind.oneWay(w, v, 0)).bounds();
    Interval tail = corners(wind, speed(), (w, v) -> Wind.oneWay(w, v, 180)).bounds();
    return new Estimate(mean.value(), mean.bounds().hull(head).hull(tail));
  }

  /** Returns the angle of the wind to the route, degrees; empty if it is variable or unknown. */
  private Optional<Double> angle() {
    Optional<Estimate> stated = facts.amount(RangeItem.WIND_DIRECTION);
    if (stated.isPresent()) {
      return stated.map(Estimate::value);
    }
    return facts
        .text(RangeItem.WIND_DIRECTION)
        .flatMap(
            word ->
                switch (word) {
                  case "head" -> Optional.of(0.0);
                  case "tail" -> Optional.of(180.0);
                  case "cross" -> Optional.of(90.0);
                  default -> Optional.<Double>empty();
                });
  }

  /** Evaluates a function that is monotone in both arguments over their intervals. */
  private static Estimate corners(Estimate one, Estimate other, DoubleBinaryOperator function) {
    double value = function.applyAsDouble(one.value(), other.value());
    Interval bounds = Interval.exactly(value);
    for (double a : new double[] {one.bounds().low(), one.bounds().high()}) {
      for (double b : new double[] {other.bounds().low(), other.bounds().high()}) {
        bounds = bounds.hull(function.applyAsDouble(a, b));
      }
    }
    return new Estimate(value, bounds);
  }
}
