package taperbook.metric.session;

import java.util.Optional;
import taperbook.i18n.Message;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.Recording;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Role;
import taperbook.session.Channel;

/** Computes the current that limits a plateau, if one does. */
public final class LimitMetrics {
  private static final Metric CURRENT =
      Metric.charging("limit_current", Unit.AMPERE, Method.CURRENT_PLATEAU).in(Role.CURVE);

  private final Recording recording;
  private final MetricCollector collector;

  public LimitMetrics(Recording recording, MetricCollector collector) {
    this.recording = recording;
    this.collector = collector;
  }

  public void measure() {
    Optional<Plateau> plateau = Plateau.of(recording);
    collector.measured(
        CURRENT,
        recording
            .powers()
            .flatMap(
                p -> Finding.of(plateau.flatMap(Plateau::heldCurrent), whyNot(plateau.isPresent())))
            .from(Plateau.Level::rows)
            .map(Plateau.Level::estimate));
  }

  private Message whyNot(boolean hasPlateau) {
    if (recording.session().trace(Channel.VOLTAGE).isEmpty()
        || recording.session().trace(Channel.CURRENT).isEmpty()) {
      return Message.of("metric.limit_metrics.voltage_and_current_were_not");
    }
    return hasPlateau
        ? Message.of("metric.limit_metrics.over_hold_of_power_current")
        : Message.of("metric.limit_metrics.power_was_not_held_long");
  }
}
