package taperbook.metric;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import taperbook.metric.bounds.GapRule;
import taperbook.metric.bounds.MonotoneBounds;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.metric.recording.TenPercent;
import taperbook.metric.road.StopTimesTable;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Curve;
import taperbook.result.Curves;
import taperbook.session.Trace;

/** Builds the curves of a session, one point per reading, with uncertainty bands. */
final class CurveBuilder {
  /** Number of points of a band; more points are not visible. */
  private static final int BAND_POINTS = 90;

  private final Recording recording;
  private final RangeFigures range;

  CurveBuilder(Recording recording, RangeFigures range) {
    this.recording = recording;
    this.range = range;
  }

  /** Builds the curves that every session has. */
  Curves make() {
    return new Curves(
        powerOverSoc(),
        recording.power().map(CurveBuilder::powerOverTime),
        socOverTime(),
        socOverTime().flatMap(this::distanceOverTime));
  }

  /**
   * Builds the curves of the reported session, including those that only its charts show.
   *
   * @param perMinute whether to include the distance added per minute
   * @param units unit of distance of the report
   */
  Curves ofReported(boolean perMinute, Unit units) {
    Curves plain = make();
    return new Curves(
        plain.powerOverSoc(),
        plain.powerOverTime(),
        plain.socOverTime(),
        plain.distanceOverTime(),
        powerBand(),
        perMinute ? distancePerMinute() : Optional.empty(),
        () -> StopTimesTable.of(recording, range, units));
  }

  private Optional<Curve> socOverTime() {
    return recording.socBounds().flatMap(e -> recording.soc().map(s -> socOverTime(s, e)));
  }

  private Optional<Curve> distancePerMinute() {
    return range
        .fullRange()
        .flatMap(r -> recording.clock())
        .map(clock -> new TenPercent(recording, clock).curve())
        .value()
        .filter(curve -> curve.size() > 0);
  }

  /** Returns power over state of charge, if both were recorded. */
  Optional<Curve> powerOverSoc() {
    return recording.power().flatMap(p -> recording.soc().map(s -> powerOverSoc(p, s)));
  }

  /**
   * Returns the power at each displayed state of charge, from all draws. A displayed figure covers
   * the charge from that figure to one step above, as in the course model; its middle represents
   * it.
   */
  private Optional<Curve> powerBand() {
    if (recording.power().isEmpty() || !recording.rises() || recording.hasFewRows()) {
      return Optional.empty();
    }
    Trace soc = recording.soc().orElseThrow();
    double[] percents = new double[BAND_POINTS];
    List<Estimate> powers = new ArrayList<>();
    for (int i = 0; i < BAND_POINTS; i++) {
      double share = i / (BAND_POINTS - 1.0);
      percents[i] = soc.firstValue() + share * (soc.lastValue() - soc.firstValue());
      double charge = percents[i] + soc.halfStep();
      recording
          .courses()
          .estimate(d -> d.course().powerAt(d.course().timeOfCharge(charge)))
          .ifPresent(powers::add);
    }
    return powers.size() < BAND_POINTS
        ? Optional.empty()
        : Optional.of(
            Curve.of(
                BAND_POINTS,
                i ->
                    new Curve.Point(
                        percents[i], powers.get(i).value(), powers.get(i).bounds(), false)));
  }

  private static Curve powerOverTime(Trace power) {
    return curve(power, 0, power.size(), power::second);
  }

  /** Returns the power readings at the interpolated state of charge, where both were recorded. */
  private static Curve powerOverSoc(Trace power, Trace soc) {
    int from = 0;
    while (from < power.size() && power.second(from) < soc.firstSecond()) {
      from++;
    }
    int to = Math.max(from, power.indexAtOrBefore(soc.lastSecond()) + 1);
    return curve(power, from, to, i -> soc.at(power.second(i)));
  }

  /**
   * Builds a curve with one point per power reading from index {@code from} to {@code to},
   * exclusive.
   */
  private static Curve curve(Trace power, int from, int to, IntToDoubleFunction abscissa) {
    return Curve.of(
        to - from,
        k -> {
          double kilowatts = power.value(from + k);
          return new Curve.Point(
              abscissa.applyAsDouble(from + k),
              kilowatts,
              Interval.around(kilowatts, power.halfStep()),
              GapRule.isWide(power, from + k));
        });
  }

  private static Curve socOverTime(Trace soc, MonotoneBounds socBounds) {
    return Curve.of(
        soc.size(),
        i ->
            new Curve.Point(
                soc.second(i),
                soc.value(i),
                socBounds.at(soc.second(i)).hull(soc.value(i)),
                GapRule.isWide(soc, i)));
  }

  /** Returns the distance added: the gain in state of charge as a share of the range. */
  private Optional<Curve> distanceOverTime(Curve soc) {
    return range
        .chosenRange()
        .value()
        .filter(full -> soc.size() > 0)
        .map(full -> Curve.of(soc.size(), i -> distance(soc, i, full)));
  }

  private static Curve.Point distance(Curve soc, int i, Estimate full) {
    Interval gain =
        new Interval(Math.max(0, soc.low(i) - soc.high(0)), Math.max(0, soc.high(i) - soc.low(0)));
    double y = (soc.y(i) - soc.y(0)) / 100 * full.value();
    // At the first reading nothing is added yet, by definition and without uncertainty.
    Interval distance = i == 0 ? Interval.exactly(0) : gain.times(full.bounds()).times(0.01);
    return new Curve.Point(soc.x(i), y, distance.hull(y), soc.wideGapAfter(i));
  }
}
