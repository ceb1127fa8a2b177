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
        StopTimesTable.of(recording, range, units));
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
    double[] x = new double[BAND_POINTS];
    List<Estimate> powers = new ArrayList<>();
    for (int i = 0; i < BAND_POINTS; i++) {
      double share = i / (BAND_POINTS - 1.0);
      x[i] = soc.firstValue() + share * (soc.lastValue() - soc.firstValue());
      double charge = x[i] + soc.halfStep();
      recording
          .courses()
          .estimate(d -> d.course().powerAt(d.course().timeOfCharge(charge)))
          .ifPresent(powers::add);
    }
    return powers.size() < BAND_POINTS
        ? Optional.empty()
        : Optional.of(
            Curve.wrap(
                x,
                powers.stream().mapToDouble(Estimate::value).toArray(),
                powers.stream().mapToDouble(e -> e.bounds().low()).toArray(),
                powers.stream().mapToDouble(e -> e.bounds().high()).toArray(),
                new boolean[BAND_POINTS]));
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
    int n = to - from;
    double[] x = new double[n];
    double[] y = new double[n];
    double[] low = new double[n];
    double[] high = new double[n];
    boolean[] wide = new boolean[n];
    for (int k = 0; k < n; k++) {
      int i = from + k;
      x[k] = abscissa.applyAsDouble(i);
      y[k] = power.value(i);
      low[k] = y[k] - power.halfStep();
      high[k] = y[k] + power.halfStep();
      wide[k] = GapRule.isWide(power, i);
    }
    return Curve.wrap(x, y, low, high, wide);
  }

  private static Curve socOverTime(Trace soc, MonotoneBounds socBounds) {
    int n = soc.size();
    double[] x = new double[n];
    double[] y = new double[n];
    double[] low = new double[n];
    double[] high = new double[n];
    boolean[] wide = new boolean[n];
    for (int i = 0; i < n; i++) {
      x[i] = soc.second(i);
      y[i] = soc.value(i);
      Interval bounds = socBounds.at(x[i]).hull(y[i]);
      low[i] = bounds.low();
      high[i] = bounds.high();
      wide[i] = GapRule.isWide(soc, i);
    }
    return new Curve(x, y, low, high, wide);
  }

  /** Returns the distance added: the gain in state of charge as a share of the range. */
  private Optional<Curve> distanceOverTime(Curve soc) {
    Optional<Estimate> full = range.chosenRange().value();
    if (full.isEmpty() || soc.size() == 0) {
      return Optional.empty();
    }
    int n = soc.size();
    double[] x = new double[n];
    double[] y = new double[n];
    double[] low = new double[n];
    double[] high = new double[n];
    boolean[] wide = new boolean[n];
    for (int i = 0; i < n; i++) {
      Interval gain =
          new Interval(
              Math.max(0, soc.low(i) - soc.high(0)), Math.max(0, soc.high(i) - soc.low(0)));
      x[i] = soc.x(i);
      y[i] = (soc.y(i) - soc.y(0)) / 100 * full.get().value();
      // At the first reading nothing is added yet, by definition and without uncertainty.
      Interval distance =
          i == 0 ? Interval.exactly(0) : gain.times(full.get().bounds()).times(0.01);
      low[i] = Math.min(y[i], distance.low());
      high[i] = Math.max(y[i], distance.high());
      wide[i] = soc.wideGapAfter(i);
    }
    return Optional.of(new Curve(x, y, low, high, wide));
  }
}
