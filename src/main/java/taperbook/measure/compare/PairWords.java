package taperbook.measure.compare;

import java.util.List;
import taperbook.measure.compare.PairLedger.Heading;
import taperbook.model.Method;
import taperbook.model.Stretch;
import taperbook.model.Unit;
import taperbook.words.Labels;

/**
 * What is said of the numbers of a pair before they are measured.
 *
 * @param other what the session is called that the reported one is held against
 */
record PairWords(String other) {
  /** The numbers of the whole window that both went through. */
  List<Heading> ofWindow() {
    return List.of(sharedFrom(), sharedTo(), meanLead(), timeGain());
  }

  Heading sharedFrom() {
    String label = Labels.of("number.shared_soc_from", other);
    return new Heading("shared_soc_from", label, Unit.PERCENT, Method.SHARED_WINDOW);
  }

  Heading sharedTo() {
    String label = Labels.of("number.shared_soc_to", other);
    return new Heading("shared_soc_to", label, Unit.PERCENT, Method.SHARED_WINDOW);
  }

  Heading meanLead() {
    String label = Labels.of("number.mean_lead_shared", other);
    return new Heading("mean_lead_shared", label, Unit.KILOWATT, Method.POWER_LEAD);
  }

  Heading timeGain() {
    String label = Labels.of("number.time_gain_shared", other);
    return new Heading("time_gain_shared", label, Unit.SECOND, Method.TIME_GAIN);
  }

  /** The numbers of stretch {@code k}: its edges, the lead in power and the time gained. */
  List<Heading> lead(Stretch.Ids ids, int k, Stretch.Order order) {
    boolean ahead = order == Stretch.Order.AHEAD;
    String label =
        ahead
            ? Labels.of("label.stretch_ahead", k, other)
            : Labels.of("label.stretch_behind", k, other);
    return List.of(
        new Heading(
            ids.from(),
            Labels.of("number.lead_soc_from", label),
            Unit.PERCENT,
            Method.LEAD_STRETCH),
        new Heading(
            ids.to(), Labels.of("number.lead_soc_to", label), Unit.PERCENT, Method.LEAD_STRETCH),
        new Heading(
            ids.lead(), Labels.of("number.lead_power", label), Unit.KILOWATT, Method.POWER_LEAD),
        new Heading(
            ids.gain(), Labels.of("number.lead_time_gain", label), Unit.SECOND, Method.TIME_GAIN));
  }

  Heading crossing(int k) {
    return new Heading(
        "crossing_" + k + "_soc",
        Labels.of("number.crossing_soc", k, other),
        Unit.PERCENT,
        Method.CURVE_CROSSING);
  }
}
