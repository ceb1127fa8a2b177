package taperbook.metric;

import java.util.ArrayList;
import java.util.List;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.comparison.StopComparison;
import taperbook.metric.course.Courses;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.Recording;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Numbers;
import taperbook.result.Role;
import taperbook.session.Caveat;
import taperbook.session.Session;

/** Compares the later stops of a day with the first at equal charge, which shows throttling. */
final class LaterStopMetrics {
  private static final double COVERAGE = 0.95;

  private final Recording recording;
  private final List<Session> stops;
  private final double runShare;
  private final MetricCollector collector;

  /**
   * Creates the metrics of the stops of a day.
   *
   * @param recording the reported session, which is one of the stops
   * @param stops the sessions of the day in their order; may be empty
   * @param caveats caveats of the reported session
   * @param runShare half the 95 % interval of a run's power beyond its readings, as a share
   */
  LaterStopMetrics(
      Recording recording, List<Session> stops, List<Caveat> caveats, double runShare) {
    this.recording = recording;
    this.stops = stops;
    this.runShare = runShare;
    this.collector = new MetricCollector(recording.session().name(), caveats);
  }

  Numbers measure() {
    List<Courses> courses = new ArrayList<>();
    stops.forEach(s -> courses.add(courses(s)));
    for (int k = 2; k <= courses.size(); k++) {
      measure(k, StopComparison.of(courses.get(k - 1), courses.get(0), runShare));
    }
    return collector.numbers();
  }

  private Courses courses(Session stop) {
    return stop.name().equals(recording.session().name())
        ? recording.courses()
        : new Courses(stop, List.of(), Courses.FOR_REPORT, recording.courses().redraw());
  }

  private void measure(int k, Finding<StopComparison> stop) {
    Caveat order =
        new Caveat(
            Caveat.Kind.STARTING_SOC,
            Message.of(
                "metric.later_stop_metrics.stop_is_compared_with_in",
                k,
                stops.get(k - 1).name(),
                stops.get(0).name()));
    collector.covered(
        percent("stop_" + k + "_power_ratio", Texts.of("number.stop_power_ratio", k)),
        stop.map(StopComparison::ratio),
        COVERAGE,
        List.of(order));
    List<Interval> below = stop.value().map(StopComparison::below).orElse(List.of());
    for (int j = 1; j <= below.size(); j++) {
      Interval edges = below.get(j - 1);
      String id = "stop_" + k + "_below_" + j + "_soc_";
      // Edges are where a band crosses zero: they limit what is known and are therefore exact.
      Metric from = percent(id + "from", Texts.of("number.stop_below_from", k, j));
      Metric to = percent(id + "to", Texts.of("number.stop_below_to", k, j));
      collector.covered(from, stop.map(s -> Estimate.exactly(edges.low())), COVERAGE);
      collector.covered(to, stop.map(s -> Estimate.exactly(edges.high())), COVERAGE);
    }
  }

  private static Metric percent(String id, String label) {
    return Metric.charging(id, label, Unit.PERCENT, Method.STOP_RATIO).in(Role.STOPS);
  }
}
