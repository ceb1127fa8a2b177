package taperbook.metric.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import taperbook.quantity.Interval;
import taperbook.session.RowRef;
import taperbook.session.Trace;

/**
 * Power over state of charge, one point for each recorded step of state of charge, in ascending
 * order.
 *
 * <p>Readings within one step of the display (and within 1/120 of the span, for a finer display)
 * become one point at their means, or two if the power jumps between two of them. All points have
 * the same weight, however many readings they have: repeats of an unchanged display share one
 * rounding error, which averaging does not reduce.
 *
 * <p>A final class and not a record because it keeps arrays.
 */
final class TaperPoints {
  /** Bounds the search time; the gap of a step still uses the individual readings. */
  private static final int MOST_STEPS = 120;

  /** A jump within a step of state of charge is at least this many steps of power, */
  private static final double LEAST_JUMP_STEPS = 4;

  /** this share of the greatest power, */
  private static final double LEAST_JUMP_SHARE = 0.05;

  /** and this many times the next greatest change there. */
  private static final double JUMP_TO_NEXT = 3;

  private final double[] soc;
  private final double[] power;
  private final double halfSoc;
  private final double halfPower;
  private final List<List<Reading>> readings;

  private record Reading(double soc, double power, RowRef row) {}

  /**
   * Creates points without merging.
   *
   * @param soc state of charge, %, non-decreasing
   * @param power power, kW
   * @param halfSoc half the step of the display of state of charge, %
   * @param halfPower half the step of the display of power, kW
   */
  TaperPoints(double[] soc, double[] power, double halfSoc, double halfPower) {
    this(soc.clone(), power.clone(), halfSoc, halfPower, List.of());
  }

  private TaperPoints(
      double[] soc,
      double[] power,
      double halfSoc,
      double halfPower,
      List<List<Reading>> readings) {
    this.soc = soc;
    this.power = power;
    this.halfSoc = halfSoc;
    this.halfPower = halfPower;
    this.readings = readings;
  }

  /**
   * Returns the points of two traces: power readings from the first to the last reading of the
   * other.
   */
  static TaperPoints of(Trace soc, Trace power) {
    List<Reading> readings =
        IntStream.range(0, power.size())
            .filter(
                i -> power.second(i) >= soc.firstSecond() && power.second(i) <= soc.lastSecond())
            .mapToObj(i -> new Reading(soc.at(power.second(i)), power.value(i), power.row(i)))
            .sorted(Comparator.comparingDouble(Reading::soc))
            .toList();
    List<List<Reading>> steps =
        steps(readings, 2 * soc.halfStep()).stream()
            .flatMap(step -> split(step, soc.halfStep(), power).stream())
            .toList();
    return new TaperPoints(
        steps.stream().mapToDouble(step -> mean(step, Reading::soc)).toArray(),
        steps.stream().mapToDouble(step -> mean(step, Reading::power)).toArray(),
        soc.halfStep(),
        power.halfStep(),
        steps);
  }

  private static double mean(List<Reading> step, ToDoubleFunction<Reading> of) {
    return step.stream().mapToDouble(of).sum() / step.size();
  }

  private static List<List<Reading>> steps(List<Reading> readings, double displayStep) {
    List<List<Reading>> steps = new ArrayList<>();
    if (readings.isEmpty()) {
      return steps;
    }
    double first = readings.get(0).soc();
    double span = readings.get(readings.size() - 1).soc() - first;
    double width = Math.max(Math.max(displayStep, span / MOST_STEPS), Double.MIN_NORMAL);
    long last = -1;
    for (Reading reading : readings) {
      long step = Math.round((reading.soc() - first) / width);
      if (step != last) {
        steps.add(new ArrayList<>());
      }
      steps.get(steps.size() - 1).add(reading);
      last = step;
    }
    return steps;
  }

  /**
   * Splits the readings of a step at a jump of power. If the state-of-charge display has not
   * changed, those before the jump are placed a quarter of its step lower and those after it
   * higher, both within its rounding.
   */
  private static List<List<Reading>> split(List<Reading> step, double halfSoc, Trace power) {
    int at = 0;
    double greatest = 0;
    double next = 0;
    for (int i = 1; i < step.size(); i++) {
      double change = Math.abs(step.get(i).power() - step.get(i - 1).power());
      if (change > greatest) {
        next = greatest;
        greatest = change;
        at = i;
      } else {
        next = Math.max(next, change);
      }
    }
    double least =
        Math.max(LEAST_JUMP_STEPS * 2 * power.halfStep(), LEAST_JUMP_SHARE * Math.abs(power.max()));
    if (!(greatest > least && greatest > JUMP_TO_NEXT * next)) {
      return List.of(step);
    }
    List<Reading> before = step.subList(0, at);
    List<Reading> after = step.subList(at, step.size());
    if (mean(before, Reading::soc) < mean(after, Reading::soc)) {
      return List.of(before, after);
    }
    return halfSoc > 0
        ? List.of(moved(before, -halfSoc / 2), moved(after, halfSoc / 2))
        : List.of(step);
  }

  private static List<Reading> moved(List<Reading> readings, double by) {
    return readings.stream().map(r -> new Reading(r.soc() + by, r.power(), r.row())).toList();
  }

  int size() {
    return soc.length;
  }

  double soc(int i) {
    return soc[i];
  }

  double power(int i) {
    return power[i];
  }

  double[] socs() {
    return soc.clone();
  }

  double[] powers() {
    return power.clone();
  }

  double firstSoc() {
    return soc[0];
  }

  double lastSoc() {
    return soc[soc.length - 1];
  }

  double halfSoc() {
    return halfSoc;
  }

  double halfPower() {
    return halfPower;
  }

  /** Returns the greatest magnitude of a power, kW; at least a tiny number. */
  double scale() {
    double most = Double.MIN_NORMAL;
    for (double p : power) {
      most = Math.max(most, Math.abs(p));
    }
    return most;
  }

  /**
   * Returns the gap between the readings around a place, extended by half a step of the display.
   */
  Interval gap(double place) {
    int above = above(place);
    double low = readings.isEmpty() ? soc[above - 1] : last(readings.get(above - 1)).soc();
    double high = readings.isEmpty() ? soc[above] : readings.get(above).get(0).soc();
    return Interval.between(low, high).hull(low - halfSoc).hull(high + halfSoc);
  }

  /** Returns the rows of the two readings around a place. */
  List<RowRef> rowsBeside(double place) {
    int above = above(place);
    return readings.isEmpty()
        ? List.of()
        : List.of(last(readings.get(above - 1)).row(), readings.get(above).get(0).row());
  }

  private int above(double place) {
    return IntStream.range(1, soc.length - 1).filter(i -> soc[i] > place).findFirst().orElseThrow();
  }

  private static Reading last(List<Reading> step) {
    return step.get(step.size() - 1);
  }

  /** Returns the rows of the points between two states of charge, inclusive. */
  List<RowRef> rows(double from, double to) {
    return IntStream.range(0, readings.size())
        .filter(i -> soc[i] >= from && soc[i] <= to)
        .boxed()
        .flatMap(i -> readings.get(i).stream().map(Reading::row))
        .sorted()
        .toList();
  }
}
