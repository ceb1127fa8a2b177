package taperbook.metric.recording;

import java.util.List;
import taperbook.result.Event;
import taperbook.session.Samples;
import taperbook.session.Trace;

/** Selects the power readings without interruptions, which show how a battery accepts power. */
final class SteadyPower {
  /** A climb after an interruption ends at this share of the previous power; common practice. */
  private static final double CLIMBED = 0.9;

  private SteadyPower() {}

  /** Returns the readings outside of interruptions and of the climbs that follow them. */
  static Trace of(Trace power, List<Event> interruptions) {
    boolean[] left = new boolean[power.size()];
    interruptions.forEach(e -> leaveOut(power, e, left));
    Samples kept = new Samples(power.size());
    for (int i = 0; i < power.size(); i++) {
      if (!left[i]) {
        kept.add(power.second(i), power.value(i), power.row(i).line());
      }
    }
    return kept.isEmpty()
        ? power
        : new Trace(power.row(0).file(), kept, power.halfStep(), power.clockHalfStep());
  }

  private static void leaveOut(Trace power, Event interruption, boolean[] left) {
    int before = power.indexAtOrBefore(interruption.start().low());
    int i = before + 1;
    while (i < power.size() && power.second(i) <= interruption.end().low()) {
      left[i++] = true;
    }
    double full = CLIMBED * (before >= 0 ? power.value(before) : 0);
    while (i + 1 < power.size() && power.value(i) < full && power.value(i + 1) > power.value(i)) {
      left[i++] = true;
    }
  }
}
