package taperbook.metric.session;

import java.util.Optional;
import taperbook.format.Labels;
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
      Metric.charging(
              "limit_current",
              Labels.of("number.limit_current"),
              Unit.AMPERE,
              Method.CURRENT_PLATEAU)
          .in(Role.CURVE);

  private final Recording recording;
  private final MetricCollector collector;

  public LimitMetrics(Recording recording, MetricCollector collector) {
    this.recording = recording;
    this.collector = collector;
  }

  public void measure() {
    Optional<Plateau> plateau = Plateau.of(recording);
    Optional<Plateau.Level> current = plateau.flatMap(Plateau::heldCurrent);
    if (current.isPresent()) {
      collector.measured(CURRENT, current.get().estimate(), current.get().rows());
    } else {
      collector.withheld(CURRENT, whyNot(plateau.isPresent()));
    }
  }

  private String whyNot(boolean hasPlateau) {
    if (recording.power().isEmpty()) {
      return Recording.NO_POWER;
    }
    if (recording.session().trace(Channel.VOLTAGE).isEmpty()
        || recording.session().trace(Channel.CURRENT).isEmpty()) {
      return "voltage and current were not both recorded";
    }
    return hasPlateau
        ? "over the hold of the power the current was not flat while the voltage rose"
        : "the power was not held long enough to tell what it follows";
  }
}
