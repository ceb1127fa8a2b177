package taperbook.metric.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.i18n.Message;
import taperbook.metric.bounds.GapRule;
import taperbook.metric.bounds.MonotoneBounds;
import taperbook.metric.course.Courses;
import taperbook.metric.recording.Finding;
import taperbook.quantity.Estimate;
import taperbook.session.Channel;
import taperbook.session.RowRef;
import taperbook.session.Session;
import taperbook.session.Trace;

/**
 * One of two sessions being compared.
 *
 * @param courses the courses of the session
 * @param soc its state of charge
 * @param power its power
 * @param curve time over state of charge
 */
record Side(Courses courses, Trace soc, Trace power, SocTimeCurve curve) {
  /** Returns a session as a side, if it has a curve of power over state of charge. */
  static Finding<Side> of(Courses courses) {
    Session session = courses.session();
    Optional<Trace> power = session.trace(Channel.POWER);
    Message noPower = Message.of("metric.side.no_power_was_recorded_in", session.name());
    Message noCurve = Message.of("metric.side.power_and_state_of_charge", session.name());
    return Finding.<Trace>of(
            session.trace(Channel.SOC),
            Message.of("metric.side.no_state_of_charge_was", session.name()))
        .flatMap(
            soc ->
                Finding.<Trace>of(power, noPower)
                    .filter(p -> p.size() > 1 && SocTimeCurve.exists(soc, p), noCurve)
                    .map(p -> new Side(courses, soc, p, new SocTimeCurve(soc, p))));
  }

  /** Returns the start of its curve, %. */
  Estimate start() {
    double value = curve.from();
    return power.firstSecond() <= soc.firstSecond()
        ? Estimate.around(value, soc.halfStep())
        : at(value, power.firstSecond());
  }

  /** Returns the end of its curve, %. */
  Estimate end() {
    double value = curve.to();
    return power.lastSecond() >= soc.lastSecond()
        ? Estimate.around(value, soc.halfStep())
        : at(value, power.lastSecond());
  }

  private Estimate at(double value, double second) {
    return new Estimate(value, new MonotoneBounds(soc).at(second).hull(value));
  }

  /** Returns the rows of both channels that a stretch of its curve is computed from. */
  List<RowRef> rows(double fromPercent, double toPercent) {
    double from = curve.second(fromPercent);
    double to = curve.second(toPercent);
    List<RowRef> rows = new ArrayList<>();
    for (Trace trace : List.of(soc, power)) {
      int i = Math.max(0, trace.indexAtOrBefore(from));
      rows.add(trace.row(i));
      while (i + 1 < trace.size() && trace.second(i) < to) {
        i++;
        rows.add(trace.row(i));
      }
    }
    return rows;
  }

  /** Returns true if a wide gap between readings contains a state of charge. */
  boolean isInWideGap(double percent) {
    double second = curve.second(percent);
    return isWide(power, second) || isWide(soc, second);
  }

  private static boolean isWide(Trace trace, double second) {
    int i = trace.indexAtOrBefore(second);
    return i >= 0 && GapRule.isWide(trace, i);
  }
}
