package taperbook.metric.session;

import java.util.List;
import java.util.stream.IntStream;
import taperbook.metric.bounds.NearPeak;
import taperbook.metric.course.Draw;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/**
 * The longest uninterrupted time during which the power stays within the larger of the display's
 * step and 2 % of the highest reading.
 */
final class PowerHold {
  /**
   * Share of draws of a session written by hand in which an end lies anywhere in its gap. Rows do
   * not show where the power bends between them: with the courses alone, only 88 % of holds of
   * known length were covered.
   */
  private static final double ANYWHERE = 0.25;

  private final Trace power;
  private final double threshold;
  private final int[] possiblyOutside;
  private int firstInside;
  private int lastInside;

  PowerHold(Trace power) {
    this.power = power;
    this.threshold = power.max() - NearPeak.tolerance(power);
    this.possiblyOutside =
        IntStream.range(0, power.size()).filter(this::isPossiblyOutside).toArray();
    findReadings();
  }

  /**
   * Returns true for a reading that may be outside the hold in a draw, except between two readings
   * that are outside in every draw, as it is itself. A log of a million readings has few of these.
   */
  private boolean isPossiblyOutside(int i) {
    boolean between = isAlwaysOutside(i - 1) && isAlwaysOutside(i) && isAlwaysOutside(i + 1);
    return power.value(i) < threshold + power.halfStep() && !between;
  }

  private boolean isAlwaysOutside(int i) {
    return i < 0 || i >= power.size() || power.value(i) < threshold - power.halfStep();
  }

  /** Returns its start in a draw, s. */
  double start(Draw draw) {
    return ends(draw)[0];
  }

  /** Returns its end in a draw, s. */
  double end(Draw draw) {
    return ends(draw)[1];
  }

  /** Returns its duration in a draw, s. */
  double seconds(Draw draw) {
    double[] ends = ends(draw);
    return ends[1] - ends[0];
  }

  private double[] ends(Draw draw) {
    if (power.isLog()) {
      return amongReadings(draw.place());
    }
    return draw.place() < ANYWHERE
        ? anywhere(draw.place() / ANYWHERE)
        : draw.course().longestAbove(threshold);
  }

  /** Places both ends anywhere between a reading inside and the next one outside. */
  private double[] anywhere(double place) {
    double other = digits(place, 97);
    double from = power.second(firstInside);
    double to = power.second(lastInside);
    double before = firstInside == 0 ? from : power.second(firstInside - 1);
    double after = lastInside + 1 == power.size() ? to : power.second(lastInside + 1);
    return new double[] {from - place * (from - before), to + other * (after - to)};
  }

  /** Returns another number in 0 to 1 that hardly depends on the first. */
  private static double digits(double place, int factor) {
    return place * factor - Math.floor(place * factor);
  }

  /**
   * Returns the longest time in which readings are at or above the threshold. Its ends are anywhere
   * between two readings, since power may fall at once; the threshold is within the step of the
   * display.
   *
   * @param place place of the threshold in the step, from 0 to 1
   */
  private double[] amongReadings(double place) {
    double least = threshold + (2 * place - 1) * power.halfStep();
    double early = digits(place, 31);
    double late = digits(place, 97);
    double[] ends = {power.firstSecond(), power.firstSecond()};
    int last = power.size() - 1;
    int first = 0;
    for (int k = 0; k <= possiblyOutside.length; k++) {
      int i = k < possiblyOutside.length ? possiblyOutside[k] : last + 1;
      if (i <= last && power.value(i) >= least) {
        continue;
      }
      if (first < i && power.value(first) >= least) {
        double from = first == 0 ? power.second(0) : after(first - 1, early);
        double to = i > last ? power.second(last) : after(i - 1, late);
        if (to - from > ends[1] - ends[0]) {
          ends[0] = from;
          ends[1] = to;
        }
      }
      first = i + 1;
    }
    return ends;
  }

  /** Returns a time between a reading and the next one. */
  private double after(int i, double share) {
    return power.second(i) + share * (power.second(i + 1) - power.second(i));
  }

  /**
   * Finds the longest run of readings at or above the threshold; the first of equally long ones.
   */
  private void findReadings() {
    firstInside = power.indexOfMax();
    lastInside = firstInside;
    int first = 0;
    for (int i = 0; i <= power.size(); i++) {
      if (i < power.size() && power.value(i) >= threshold) {
        continue;
      }
      boolean longer =
          first < i
              && power.second(i - 1) - power.second(first)
                  > power.second(lastInside) - power.second(firstInside);
      if (longer) {
        firstInside = first;
        lastInside = i - 1;
      }
      first = i + 1;
    }
  }

  /** Returns the longest run of readings at or above the threshold. */
  List<RowRef> rows() {
    return power.rows(firstInside, lastInside);
  }
}
