package taperbook.chart.plots;

import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Chart;
import taperbook.chart.model.FigureText;
import taperbook.chart.model.PlotLine;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.quantity.Unit;
import taperbook.result.Curve;
import taperbook.session.Channel;

/** Describes the peak and its duration for the two power charts. */
final class PeakText {
  private static final String WITHIN = Texts.of("figure.peak_text.within_2_or_one_display");

  /** Share of the peak below which the power counts as fallen. */
  private static final double FALLEN = 0.8;

  private final FigureText texts;

  PeakText(FigureText texts) {
    this.texts = texts;
  }

  /** Returns true if a hold with a duration was measured. */
  boolean isHeld() {
    return texts.estimate("peak_hold_time").filter(e -> e.value() > 0).isPresent();
  }

  /** Returns the peak as measured, or as read from the curve. */
  String power(PlotLine line) {
    return texts
        .value("peak_power")
        .orElseGet(
            () ->
                FigureText.plain(line.y(line.peak()))
                    + "\u00a0"
                    + NumberFormatter.name(Unit.KILOWATT));
  }

  /** Returns the mark of a hold between two abscissae, or of the peak alone if there is none. */
  Chart.Hold mark(PlotLine line, Optional<double[]> stretch, String where) {
    double y = line.y(line.peak());
    double x = line.x(line.peak());
    if (!isHeld()) {
      return new Chart.Hold(x, x, y, List.of(Texts.of("mark.peak", power(line)), where));
    }
    String time = texts.value("peak_hold_time").orElseThrow();
    String within = Texts.of(isByStep() ? "mark.held_by_step" : "mark.held", power(line), time);
    List<String> label = List.of(within, texts.aside("peak_hold_time").orElseThrow());
    double from = stretch.map(s -> s[0]).orElse(x);
    double to = stretch.map(s -> s[1]).orElse(x);
    return new Chart.Hold(from, to, y, label, power(line));
  }

  /** Describes the hold or the peak, and how far the power falls after it. */
  String finding(PlotLine line) {
    Optional<String> power = texts.about("peak_power");
    Optional<String> time = texts.about("peak_hold_time");
    String at =
        texts.value("peak_reached_soc").orElseGet(() -> FigureText.percent(line.x(line.peak())));
    String peak =
        isHeld() && power.isPresent() && time.isPresent()
            ? Texts.of(isByStep() ? "finding.by_step" : "answer.held", power.get(), time.get())
            : Texts.of("finding.peak", power(line), at);
    int last = line.size() - 1;
    boolean falls = line.high(last) < FALLEN * line.y(line.peak());
    String end = FigureText.plain(line.y(last)) + "\u00a0" + NumberFormatter.name(Unit.KILOWATT);
    return FigureText.capital(falls ? Texts.of("finding.then", peak, end) : peak);
  }

  /** Describes the peak alone. */
  String overTime(PlotLine line) {
    return FigureText.capital(Texts.of("mark.peak", power(line)));
  }

  /** Returns true if a step of the power display is larger than the 2 % that define a hold. */
  private boolean isByStep() {
    return texts
        .result()
        .main()
        .session()
        .trace(Channel.POWER)
        .filter(power -> 2 * power.halfStep() > 0.02 * power.max())
        .isPresent();
  }

  /** Describes the hold for a caption or text alternative. */
  Optional<String> holdSentence() {
    Optional<String> from = texts.value("peak_hold_soc_from");
    Optional<String> to = texts.value("peak_hold_soc_to");
    String where =
        from.isPresent() && to.isPresent()
            ? Texts.of("figure.peak_text.from_to_of_charge", from.get(), to.get())
            : "";
    return texts.sentence(
        Texts.of("figure.peak_text.it_is_held_for", WITHIN, where),
        Texts.of("figure.peak_text.time_at_peak"),
        "peak_hold_time");
  }

  /**
   * Returns the start of the stretch of a given length with the highest minimum power, which
   * locates the hold on a power curve over time.
   *
   * @param power power over time in s
   * @param length length of the stretch in s, above zero
   * @return start of the stretch in s, to the second; the curve's start if it is no longer
   */
  static double stretchStart(Curve power, double length) {
    double last = power.x(power.size() - 1) - length;
    double best = power.x(0);
    double most = Double.NEGATIVE_INFINITY;
    SlidingMinimum minimum = new SlidingMinimum(power);
    for (double start = power.x(0); start <= last; start++) {
      double lowest = minimum.between(start, start + length);
      if (lowest > most) {
        most = lowest;
        best = start;
      }
    }
    return best;
  }
}
