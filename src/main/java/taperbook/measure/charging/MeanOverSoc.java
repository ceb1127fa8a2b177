package taperbook.measure.charging;

import taperbook.measure.curve.Envelope;
import taperbook.measure.curve.PowerBounds;
import taperbook.measure.recording.Recording;
import taperbook.measure.recording.SocTime;
import taperbook.model.Estimate;
import taperbook.model.Interval;
import taperbook.model.SocWindow;
import taperbook.model.Trace;

/**
 * The mean of power over state of charge in a window:
 *
 * <pre>
 *   1 / (B - A) * integral of P dq from q = A to q = B
 * </pre>
 *
 * along the piecewise-linear readings, by the trapezoidal rule.
 *
 * <p>Bounds: the window is cut into narrow strips of state of charge; in each the power lies within
 * its bounds over all times at which the strip can have been crossed.
 */
final class MeanOverSoc {
  /** Strips for each per cent. */
  private static final int STRIPS = 4;

  private MeanOverSoc() {}

  static Estimate of(Recording recording, SocWindow window, SocTime from, SocTime to) {
    Trace soc = recording.soc().orElseThrow();
    Trace power = recording.power().orElseThrow();
    double mean = integral(soc, power, from.second(), to.second()) / (window.to() - window.from());
    return new Estimate(mean, bounds(recording, power, window).hull(mean));
  }

  private static double integral(Trace soc, Trace power, double from, double to) {
    double sum = 0;
    double lastSoc = soc.at(from);
    double lastPower = power.at(from);
    for (int i = soc.indexAtOrBefore(from) + 1; i < soc.size() && soc.second(i) < to; i++) {
      double p = power.at(soc.second(i));
      sum += (p + lastPower) / 2 * (soc.value(i) - lastSoc);
      lastSoc = soc.value(i);
      lastPower = p;
    }
    return sum + (power.at(to) + lastPower) / 2 * (soc.at(to) - lastSoc);
  }

  private static Interval bounds(Recording recording, Trace power, SocWindow window) {
    Envelope envelope = recording.envelope().orElseThrow();
    PowerBounds within = new PowerBounds(power);
    int strips = (window.to() - window.from()) * STRIPS;
    double low = 0;
    double high = 0;
    for (int i = 0; i < strips; i++) {
      double left = window.from() + (double) i / STRIPS;
      double right = window.from() + (double) (i + 1) / STRIPS;
      Interval strip = within.over(envelope.earliest(left), envelope.latest(right));
      low += strip.low();
      high += strip.high();
    }
    return new Interval(low / strips, high / strips);
  }
}
