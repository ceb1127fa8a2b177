package taperbook.measure.compare;

import java.util.List;
import taperbook.measure.compare.PairLedger.Heading;
import taperbook.model.Method;
import taperbook.model.Stretch;
import taperbook.model.Unit;

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
    String label = "States of charge that this session shares with " + other + ": from";
    return new Heading("shared_soc_from", label, Unit.PERCENT, Method.SHARED_WINDOW);
  }

  Heading sharedTo() {
    String label = "States of charge that this session shares with " + other + ": until";
    return new Heading("shared_soc_to", label, Unit.PERCENT, Method.SHARED_WINDOW);
  }

  Heading meanLead() {
    String label =
        "Mean power of this session less that of " + other + ", over all that both went through";
    return new Heading("mean_lead_shared", label, Unit.KILOWATT, Method.POWER_LEAD);
  }

  Heading timeGain() {
    String label =
        "Time of " + other + " less that of this session, over all that both went through";
    return new Heading("time_gain_shared", label, Unit.SECOND, Method.TIME_GAIN);
  }

  /** The numbers of stretch {@code k}: its edges, the lead in power and the time gained. */
  List<Heading> lead(Stretch.Ids ids, int k, Stretch.Order order) {
    String which = order == Stretch.Order.AHEAD ? "ahead of " : "behind ";
    String label = "Stretch " + k + ", this session " + which + other + ": ";
    return List.of(
        new Heading(ids.from(), label + "from", Unit.PERCENT, Method.LEAD_STRETCH),
        new Heading(ids.to(), label + "until", Unit.PERCENT, Method.LEAD_STRETCH),
        new Heading(
            ids.lead(), label + "mean difference in power", Unit.KILOWATT, Method.POWER_LEAD),
        new Heading(ids.gain(), label + "time gained", Unit.SECOND, Method.TIME_GAIN));
  }

  Heading crossing(int k) {
    return new Heading(
        "crossing_" + k + "_soc",
        "Crossing " + k + " of this session's curve with that of " + other,
        Unit.PERCENT,
        Method.CURVE_CROSSING);
  }
}
