package taperbook.chart.plots;

import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Chart;
import taperbook.chart.model.FigureText;
import taperbook.chart.model.PlotLine;
import taperbook.format.Labels;
import taperbook.format.NumberFormatter;
import taperbook.quantity.Unit;
import taperbook.result.Curve;
import taperbook.session.Channel;

/** How the two power charts speak of the peak and of how long it was held. */
final class PeakText {
  private static final String WITHIN = "(within 2 % or one display step)";

  /** A power below this share of the peak has fallen. */
  private static final double FALLEN = 0.8;

  private final FigureText said;

  PeakText(FigureText said) {
    this.said = said;
  }

  /** True if a hold of some length was measured. */
  boolean isHeld() {
    return said.estimate("peak_hold_time").filter(e -> e.value() > 0).isPresent();
  }

  /** The peak as measured, or as read from the curve. */
  String power(PlotLine line) {
    return said.value("peak_power")
        .orElseGet(
            () ->
                FigureText.plain(line.y(line.peak()))
                    + "\u00a0"
                    + NumberFormatter.name(Unit.KILOWATT));
  }

  /** The mark of a hold between two abscissae, or of the peak alone where there was none. */
  Chart.Hold mark(PlotLine line, Optional<double[]> stretch, String where) {
    double y = line.y(line.peak());
    double x = line.x(line.peak());
    if (!isHeld()) {
      return new Chart.Hold(x, x, y, List.of(Labels.of("mark.peak", power(line)), where));
    }
    String time = said.value("peak_hold_time").orElseThrow();
    String within = Labels.of(isByStep() ? "mark.held_by_step" : "mark.held", power(line), time);
    List<String> label = List.of(within, said.aside("peak_hold_time").orElseThrow());
    double from = stretch.map(s -> s[0]).orElse(x);
    double to = stretch.map(s -> s[1]).orElse(x);
    return new Chart.Hold(from, to, y, label, power(line));
  }

  /** The hold or the peak as one speaks it, and how far the power falls after it. */
  String finding(PlotLine line) {
    Optional<String> power = said.about("peak_power");
    Optional<String> time = said.about("peak_hold_time");
    String at = said.value("peak_reached_soc").orElseGet(() -> percent(line.x(line.peak())));
    String peak =
        isHeld() && power.isPresent() && time.isPresent()
            ? Labels.of(isByStep() ? "finding.by_step" : "answer.held", power.get(), time.get())
            : Labels.of("finding.peak", power(line), at);
    int last = line.size() - 1;
    boolean falls = line.high(last) < FALLEN * line.y(line.peak());
    String end = FigureText.plain(line.y(last)) + "\u00a0" + NumberFormatter.name(Unit.KILOWATT);
    return FigureText.capital(falls ? Labels.of("finding.then", peak, end) : peak);
  }

  /** The peak alone. */
  String overTime(PlotLine line) {
    return FigureText.capital(Labels.of("mark.peak", power(line)));
  }

  private static String percent(double soc) {
    return FigureText.plain(soc) + "\u00a0%";
  }

  /** True if a step of the power display is more than the 2 % within which a power is held. */
  private boolean isByStep() {
    return said.result()
        .main()
        .session()
        .trace(Channel.POWER)
        .filter(power -> 2 * power.halfStep() > 0.02 * power.max())
        .isPresent();
  }

  /** What a caption or text alternative says of the hold. */
  Optional<String> holdSentence() {
    Optional<String> from = said.value("peak_hold_soc_from");
    Optional<String> to = said.value("peak_hold_soc_to");
    String where =
        from.isPresent() && to.isPresent()
            ? "from " + from.get() + " to " + to.get() + " of charge, "
            : "";
    return said.sentence(
        "It is held " + WITHIN + " " + where + "for", "The time at peak", "peak_hold_time");
  }

  /**
   * The stretch of the stated length in which the lowest power is the highest: where the hold lies
   * on a power curve over time.
   *
   * @param power power over time in s
   * @param length length of the stretch in s, above zero
   * @return start of the stretch in s, to the second; the curve's start if it is no longer
   */
  static double stretchStart(Curve power, double length) {
    double last = power.x(power.size() - 1) - length;
    double best = power.x(0);
    double most = Double.NEGATIVE_INFINITY;
    for (double start = power.x(0); start <= last; start++) {
      double lowest = lowest(power, start, start + length);
      if (lowest > most) {
        most = lowest;
        best = start;
      }
    }
    return best;
  }

  /** The lowest power of the piecewise-linear curve between two times. */
  private static double lowest(Curve power, double from, double to) {
    double lowest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < power.size(); i++) {
      double x = power.x(i);
      if (from <= x && x <= to) {
        lowest = Math.min(lowest, power.y(i));
      }
      if (i > 0 && power.x(i - 1) < x) {
        double before = power.x(i - 1);
        double slope = (power.y(i) - power.y(i - 1)) / (x - before);
        for (double end : new double[] {from, to}) {
          if (before < end && end < x) {
            lowest = Math.min(lowest, power.y(i - 1) + slope * (end - before));
          }
        }
      }
    }
    return lowest;
  }
}
