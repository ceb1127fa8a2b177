package taperbook.metric.session;

import java.util.List;
import java.util.function.ToDoubleFunction;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.bounds.EnergyOverTime;
import taperbook.metric.course.Draw;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.Recording;
import taperbook.metric.session.UninterruptedMetrics.Span;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Role;

/** Computes time, energy and both averages of power for each window of state of charge. */
public final class WindowMetrics {
  private final Recording recording;
  private final MetricCollector collector;
  private final UninterruptedMetrics uninterrupted;

  public WindowMetrics(Recording recording, MetricCollector collector) {
    this.recording = recording;
    this.collector = collector;
    this.uninterrupted = new UninterruptedMetrics(recording, collector);
  }

  /**
   * Adds the numbers of some windows.
   *
   * @param headline the window whose numbers are headline numbers
   */
  public void measure(List<SocWindow> windows, SocWindow headline) {
    windows.forEach(w -> measure(w, w.equals(headline)));
  }

  private void measure(SocWindow window, boolean isHeadline) {
    Finding<Span> span =
        recording
            .between(window.from(), window.to())
            .map(q -> new Span(start(recording, window), recording.firstShown(window.to())));
    uninterrupted.time(time(window, isHeadline), span);
    energyAndAverage(window, span, isHeadline);
    if (collector.wants(socAverage(window))) {
      socAverage(window, span);
    }
  }

  /** Returns the start; a window that begins with the session starts at the session's start. */
  static ToDoubleFunction<Draw> start(Recording recording, SocWindow window) {
    ToDoubleFunction<Draw> shown = recording.firstShown(window.from());
    return d -> Math.max(d.course().firstSecond(), shown.applyAsDouble(d));
  }

  private void energyAndAverage(SocWindow window, Finding<Span> span, boolean isHeadline) {
    Finding<EnergyOverTime> energy = span.flatMap(s -> recording.energy());
    Finding<Span> known =
        span.and(energy)
            .from(
                s ->
                    recording.energyRows(
                        recording.secondOf(window.from()), recording.secondOf(window.to())));
    Metric metric = energy(window);
    collector.add(
        energy.value().map(e -> metric.with(e.method())).orElse(metric),
        known.map(s -> recording.measure(d -> kilowattHours(d, s))));
    uninterrupted.average(
        average(window, isHeadline), known, d -> kilowattHours(d, known.value().orElseThrow()));
  }

  private static double kilowattHours(Draw draw, Span span) {
    return draw.course().energyAt(span.end().applyAsDouble(draw))
        - draw.course().energyAt(span.start().applyAsDouble(draw));
  }

  private void socAverage(SocWindow window, Finding<Span> span) {
    double from = recording.secondOf(window.from());
    double to = recording.secondOf(window.to());
    Message notOver = Message.of("metric.window_metrics.no_power_was_read_over");
    collector.add(
        socAverage(window),
        span.and(recording.powersWithin(from, to, notOver))
            .from(s -> recording.powerRows(from, to))
            .map(
                s ->
                    recording.measure(
                        d -> d.course().meanPowerOverCharge(window.from(), window.to()))));
  }

  private static Metric time(SocWindow window, boolean isHeadline) {
    Metric time =
        Metric.charging(
            "time_soc_" + window.idPart(),
            Texts.of("number.time_soc", window.from(), window.to()),
            Unit.SECOND,
            Method.WINDOW_TIME);
    return isHeadline ? time.in(Role.HEADLINE) : time;
  }

  private static Metric energy(SocWindow window) {
    return Metric.charging(
        "energy_soc_" + window.idPart(),
        Texts.of("number.energy_soc", window.from(), window.to()),
        Unit.KILOWATT_HOUR,
        Method.ENERGY_COUNTER);
  }

  private static Metric average(SocWindow window, boolean isHeadline) {
    Metric average =
        Metric.charging(
            "average_power_" + window.idPart(),
            Texts.of("number.average_power", window.from(), window.to()),
            Unit.KILOWATT,
            Method.TIME_AVERAGE);
    return isHeadline ? average.in(Role.HEADLINE) : average;
  }

  private static Metric socAverage(SocWindow window) {
    return Metric.charging(
        "soc_average_power_" + window.idPart(),
        Texts.of("number.soc_average_power", window.from(), window.to()),
        Unit.KILOWATT,
        Method.SOC_AVERAGE);
  }
}
