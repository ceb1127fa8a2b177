package taperbook.measure.simulate;

import java.util.ArrayList;
import java.util.List;
import taperbook.model.Trace;
import taperbook.model.UncertaintySource;

/**
 * Draws courses of a quantity that never falls, such as state of charge or an energy counter, that
 * its readings allow.
 *
 * <p>Each anchor gets a time and a value within its bounds; between two anchors the course bends
 * once, see {@link Bend}.
 */
final class RisingCourse {
  /** Of a step: how far above its lower edge a value sits that was read as the display changed. */
  private static final double JUST_CHANGED = 0.02;

  private final Anchor[] anchors;
  private final UncertaintySource display;
  private final double clockHalfStep;
  private final double[] seconds;
  private final double[] values;
  private final double[] rates;
  private final Path path;
  private final Bend bend = Bend.ofIntegral();

  private RisingCourse(List<Anchor> anchors, UncertaintySource display, Trace trace) {
    this.anchors = anchors.toArray(Anchor[]::new);
    this.display = display;
    this.clockHalfStep = trace.clockHalfStep();
    this.seconds = new double[anchors.size()];
    this.values = new double[anchors.size()];
    this.rates = new double[anchors.size()];
    this.path = new Path(2 * anchors.size(), 2 * trace.halfStep());
  }

  /** Courses of a displayed state of charge. */
  static RisingCourse ofSoc(Trace soc, boolean byHand) {
    return new RisingCourse(
        Anchors.of(soc, byHand && !Thinned.isDense(soc)), UncertaintySource.SOC_DISPLAY, soc);
  }

  /** Courses of an energy counter, which stands at zero at plugging in. */
  static RisingCourse ofCounter(Trace counter) {
    Trace thin = Thinned.isDense(counter) ? Thinned.of(counter) : counter;
    List<Anchor> anchors = new ArrayList<>(Anchors.of(thin, false));
    if (counter.firstSecond() > 0) {
      anchors.add(0, new Anchor(0, 0, 0, 0, false));
    }
    return new RisingCourse(anchors, UncertaintySource.ENERGY_DISPLAY, counter);
  }

  /** Draws a course; the path is the same object each time, written anew. */
  Path draw(Draws draws, boolean habit) {
    int n = anchors.length;
    double lastSecond = Double.NEGATIVE_INFINITY;
    double lastValue = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < n; k++) {
      Anchor anchor = anchors[k];
      double second =
          draws.between(UncertaintySource.BETWEEN_READINGS, anchor.earliest(), anchor.latest())
              + clockHalfStep * draws.symmetric(UncertaintySource.CLOCK);
      double value = value(anchor, draws, habit);
      lastSecond = second > lastSecond ? second : lastSecond;
      lastValue = value > lastValue ? value : lastValue;
      seconds[k] = lastSecond;
      values[k] = lastValue;
    }
    path.clear();
    boolean bends = draws.has(UncertaintySource.BETWEEN_READINGS);
    if (bends) {
      setRates();
    }
    for (int k = 0; k < n; k++) {
      path.add(seconds[k], values[k]);
      if (bends && k + 1 < n && seconds[k + 1] > seconds[k]) {
        bend(k, draws);
      }
    }
    return path;
  }

  private double value(Anchor anchor, Draws draws, boolean habit) {
    if (anchor.low() == anchor.high()) {
      return anchor.low();
    }
    double high =
        habit && anchor.habitual()
            ? anchor.low() + JUST_CHANGED * (anchor.high() - anchor.low())
            : anchor.high();
    return draws.between(display, anchor.low(), high);
  }

  /** Adds the bend between anchors k and k + 1. */
  private void bend(int k, Draws draws) {
    double time = seconds[k + 1] - seconds[k];
    double rise = values[k + 1] - values[k];
    double rate = rates[k];
    double after = isGap(k + 1) ? rates[k + 1] : rate;
    double before = isGap(k - 1) ? rates[k - 1] : carriedOn(rate, after);
    if (k + 2 >= values.length) {
      after = carriedOn(rate, before);
    }
    bend.draw(draws, time, rise, rate, before, after);
    path.add(seconds[k] + bend.at(), values[k] + bend.value());
  }

  /** At an end the change of the rate is carried on; no course falls. */
  private static double carriedOn(double rate, double other) {
    return Math.max(0, 2 * rate - other);
  }

  private void setRates() {
    for (int k = 0; k + 1 < values.length; k++) {
      rates[k] = (values[k + 1] - values[k]) / (seconds[k + 1] - seconds[k]);
    }
  }

  /** True if there are anchors k and k + 1, and time between them. */
  private boolean isGap(int k) {
    return k >= 0 && k + 1 < values.length && seconds[k + 1] > seconds[k];
  }
}
