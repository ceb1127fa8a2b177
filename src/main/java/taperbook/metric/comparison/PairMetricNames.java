package taperbook.metric.comparison;

import java.util.List;
import java.util.Set;
import taperbook.format.Labels;
import taperbook.plan.Basis;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Stretch;
import taperbook.session.Input;

/**
 * Definitions of the numbers of a pair.
 *
 * @param other name of the session that the reported one is compared with
 */
record PairMetricNames(String other) {
  /** All inputs of both sessions affect the comparison. */
  private static final Set<Input> INPUTS =
      Set.of(Input.READINGS, Input.COURSE, Input.ENERGY, Input.WHOLE_SESSION);

  /** Returns the numbers of the whole common window. */
  List<Metric> ofWindow() {
    return List.of(sharedFrom(), sharedTo(), meanLead(), timeGain());
  }

  Metric sharedFrom() {
    String label = Labels.of("number.shared_soc_from", other);
    return metric("shared_soc_from", label, Unit.PERCENT, Method.SHARED_WINDOW);
  }

  Metric sharedTo() {
    String label = Labels.of("number.shared_soc_to", other);
    return metric("shared_soc_to", label, Unit.PERCENT, Method.SHARED_WINDOW);
  }

  Metric meanLead() {
    String label = Labels.of("number.mean_lead_shared", other);
    return metric("mean_lead_shared", label, Unit.KILOWATT, Method.POWER_LEAD);
  }

  Metric timeGain() {
    String label = Labels.of("number.time_gain_shared", other);
    return metric("time_gain_shared", label, Unit.SECOND, Method.TIME_GAIN);
  }

  /** Returns the numbers of stretch {@code k}: its edges, the lead in power and the time gained. */
  List<Metric> lead(Stretch.Ids ids, int k, Stretch.Order order) {
    boolean ahead = order == Stretch.Order.AHEAD;
    String label =
        ahead
            ? Labels.of("label.stretch_ahead", k, other)
            : Labels.of("label.stretch_behind", k, other);
    return List.of(
        metric(
            ids.from(),
            Labels.of("number.lead_soc_from", label),
            Unit.PERCENT,
            Method.LEAD_STRETCH),
        metric(ids.to(), Labels.of("number.lead_soc_to", label), Unit.PERCENT, Method.LEAD_STRETCH),
        metric(ids.lead(), Labels.of("number.lead_power", label), Unit.KILOWATT, Method.POWER_LEAD),
        metric(
            ids.gain(), Labels.of("number.lead_time_gain", label), Unit.SECOND, Method.TIME_GAIN));
  }

  Metric crossing(int k) {
    return metric(
        "crossing_" + k + "_soc",
        Labels.of("number.crossing_soc", k, other),
        Unit.PERCENT,
        Method.CURVE_CROSSING);
  }

  private static Metric metric(String id, String label, Unit unit, Method method) {
    return new Metric(id, label, unit, method, Basis.READINGS, INPUTS);
  }
}
