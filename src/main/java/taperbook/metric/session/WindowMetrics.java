package taperbook.metric.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import taperbook.format.Labels;
import taperbook.metric.bounds.EnergyOverTime;
import taperbook.metric.course.Draw;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.Recording;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Role;
import taperbook.session.RowRef;

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
    Optional<List<RowRef>> from = recording.rowsAround(window.from());
    Optional<List<RowRef>> to = recording.rowsAround(window.to());
    if (from.isEmpty() || to.isEmpty()) {
      String reason = recording.whyNotReached(from.isEmpty() ? window.from() : window.to());
      for (Metric metric :
          List.of(
              time(window, isHeadline),
              energy(window),
              average(window, isHeadline),
              socAverage(window))) {
        collector.withheld(metric, reason);
      }
      return;
    }
    List<RowRef> edges = new ArrayList<>(from.get());
    edges.addAll(to.get());
    uninterrupted.time(
        time(window, isHeadline),
        start(recording, window),
        recording.firstShown(window.to()),
        edges,
        List.of());
    energyAndAverage(window, edges, isHeadline);
    if (collector.wants(socAverage(window))) {
      socAverage(window, edges);
    }
  }

  /** Returns the start; a window that begins with the session starts at the session's start. */
  static ToDoubleFunction<Draw> start(Recording recording, SocWindow window) {
    ToDoubleFunction<Draw> shown = recording.firstShown(window.from());
    return d -> Math.max(d.course().firstSecond(), shown.applyAsDouble(d));
  }

  private ToDoubleFunction<Draw> kilowattHours(SocWindow window) {
    ToDoubleFunction<Draw> start = start(recording, window);
    ToDoubleFunction<Draw> end = recording.firstShown(window.to());
    return d ->
        d.course().energyAt(end.applyAsDouble(d)) - d.course().energyAt(start.applyAsDouble(d));
  }

  private void energyAndAverage(SocWindow window, List<RowRef> edges, boolean isHeadline) {
    Optional<EnergyOverTime> source = recording.energy();
    if (source.isEmpty()) {
      collector.withheld(energy(window), recording.whyNoEnergy());
      collector.withheld(average(window, isHeadline), recording.whyNoEnergy());
      return;
    }
    List<RowRef> rows = new ArrayList<>(edges);
    rows.addAll(
        recording.energyRows(recording.secondOf(window.from()), recording.secondOf(window.to())));
    ToDoubleFunction<Draw> energy = kilowattHours(window);
    collector.add(energy(window).with(source.get().method()), recording.measure(energy), rows);
    uninterrupted.average(
        average(window, isHeadline),
        energy,
        start(recording, window),
        recording.firstShown(window.to()),
        rows);
  }

  private void socAverage(SocWindow window, List<RowRef> edges) {
    double from = recording.secondOf(window.from());
    double to = recording.secondOf(window.to());
    boolean covered =
        recording.power().filter(p -> p.firstSecond() <= to && from <= p.lastSecond()).isPresent();
    if (!covered) {
      collector.withheld(
          socAverage(window),
          recording.power().isEmpty()
              ? Recording.NO_POWER
              : "no power was read over the whole of that time");
      return;
    }
    List<RowRef> rows = new ArrayList<>(edges);
    rows.addAll(recording.powerRows(from, to));
    collector.add(
        socAverage(window),
        recording.measure(d -> d.course().meanPowerOverCharge(window.from(), window.to())),
        rows);
  }

  private static Metric time(SocWindow window, boolean isHeadline) {
    Metric time =
        Metric.charging(
            "time_soc_" + window.idPart(),
            Labels.of("number.time_soc", window.from(), window.to()),
            Unit.SECOND,
            Method.WINDOW_TIME);
    return isHeadline ? time.in(Role.HEADLINE) : time;
  }

  private static Metric energy(SocWindow window) {
    return Metric.charging(
        "energy_soc_" + window.idPart(),
        Labels.of("number.energy_soc", window.from(), window.to()),
        Unit.KILOWATT_HOUR,
        Method.ENERGY_COUNTER);
  }

  private static Metric average(SocWindow window, boolean isHeadline) {
    Metric average =
        Metric.charging(
            "average_power_" + window.idPart(),
            Labels.of("number.average_power", window.from(), window.to()),
            Unit.KILOWATT,
            Method.TIME_AVERAGE);
    return isHeadline ? average.in(Role.HEADLINE) : average;
  }

  private static Metric socAverage(SocWindow window) {
    return Metric.charging(
        "soc_average_power_" + window.idPart(),
        Labels.of("number.soc_average_power", window.from(), window.to()),
        Unit.KILOWATT,
        Method.SOC_AVERAGE);
  }
}
