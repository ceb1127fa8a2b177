package taperbook.measure.simulate;

import java.util.ArrayList;
import java.util.List;
import taperbook.model.Trace;

/** Finds the anchors of a course that never falls in the readings of it. */
final class Anchors {
  /** Readings whose values differ by less than this many steps show neighbouring steps. */
  private static final double NEIGHBOURING_STEPS = 1.5;

  /** How far the rate before the first and after the last change may leave its neighbour's. */
  private static final double SLOWEST = 0.5;

  private static final double FASTEST = 1.5;

  /** A change is sharp if the time it lies in is at most this share of the run beside it. */
  private static final double SHORT = 0.25;

  private final Trace trace;
  private final boolean byHand;
  private final List<Anchor> anchors = new ArrayList<>();

  private Anchors(Trace trace, boolean byHand) {
    this.trace = trace;
    this.byHand = byHand;
  }

  /**
   * The anchors, in order.
   *
   * @param trace the readings
   * @param byHand true if someone chose the moments of reading while watching the display
   */
  static List<Anchor> of(Trace trace, boolean byHand) {
    Anchors found = new Anchors(trace, byHand);
    found.collect();
    found.narrowEnds();
    return found.anchors;
  }

  private void collect() {
    int first = 0;
    boolean changeBefore = false;
    while (first < trace.size()) {
      int last = first;
      while (last + 1 < trace.size() && trace.value(last + 1) == trace.value(first)) {
        last++;
      }
      boolean changeAfter = last + 1 < trace.size() && isNeighbour(last);
      if (!changeBefore) {
        anchors.add(reading(first));
      }
      if (!changeAfter && (last > first || changeBefore)) {
        anchors.add(reading(last));
      }
      if (changeAfter) {
        anchors.add(change(last));
      }
      changeBefore = changeAfter;
      first = last + 1;
    }
  }

  private boolean isNeighbour(int i) {
    double rise = trace.value(i + 1) - trace.value(i);
    return rise > 0 && rise < NEIGHBOURING_STEPS * 2 * trace.halfStep();
  }

  private Anchor reading(int i) {
    double value = trace.value(i);
    double half = trace.halfStep();
    return new Anchor(
        trace.second(i), trace.second(i), value - half, value + half, byHand && i > 0);
  }

  private Anchor change(int i) {
    double edge = trace.value(i) + trace.halfStep();
    return new Anchor(trace.second(i), trace.second(i + 1), edge, edge, false);
  }

  /**
   * The value at the first reading is known better than its step where the display's first change
   * soon follows: it lies below that edge by the rate times the time. Likewise at the end.
   */
  private void narrowEnds() {
    int n = anchors.size();
    if (n < 3) {
      return;
    }
    narrow(0, anchors.get(1), anchors.get(2));
    narrow(n - 1, anchors.get(n - 2), anchors.get(n - 3));
  }

  private void narrow(int end, Anchor next, Anchor afterNext) {
    Anchor anchor = anchors.get(end);
    boolean nextIsChange = next.low() == next.high() && anchor.low() < anchor.high();
    double time = afterNext.middleSecond() - next.middleSecond();
    double run = anchor.middleSecond() - next.middleSecond();
    boolean sharp = next.latest() - next.earliest() < SHORT * Math.abs(run);
    if (!nextIsChange || !sharp || time == 0) {
      return;
    }
    double rate = (afterNext.middleValue() - next.middleValue()) / time;
    double one = next.low() + SLOWEST * rate * run;
    double other = next.low() + FASTEST * rate * run;
    anchors.set(end, anchor.within(Math.min(one, other), Math.max(one, other)));
  }
}
