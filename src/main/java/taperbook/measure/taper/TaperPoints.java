package taperbook.measure.taper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import taperbook.model.RowRef;
import taperbook.model.Trace;

/**
 * Power over state of charge, one point for each step of state of charge that was read, in rising
 * order.
 *
 * <p>Readings within one step of the display (and within 1/200 of the span, for a finer display)
 * become one point at their means. Every point weighs the same, however many readings it has:
 * repeats of a display that has not moved share one rounding error, so they do not average it away.
 *
 * <p>A final class and not a record because it keeps arrays.
 */
final class TaperPoints {
  private static final int MOST_STEPS = 200;

  private final double[] soc;
  private final double[] power;
  private final double halfSoc;
  private final double halfPower;
  private final List<List<RowRef>> rows;

  private record Reading(double soc, double power, RowRef row) {}

  /**
   * Points as they are.
   *
   * @param soc state of charge, %, never falling
   * @param power power, kW
   * @param halfSoc half the step of the display of state of charge, %
   * @param halfPower half the step of the display of power, kW
   */
  TaperPoints(double[] soc, double[] power, double halfSoc, double halfPower) {
    this(soc.clone(), power.clone(), halfSoc, halfPower, List.of());
  }

  private TaperPoints(
      double[] soc, double[] power, double halfSoc, double halfPower, List<List<RowRef>> rows) {
    this.soc = soc;
    this.power = power;
    this.halfSoc = halfSoc;
    this.halfPower = halfPower;
    this.rows = rows;
  }

  /** The points of two traces: power readings from the first to the last reading of the other. */
  static TaperPoints of(Trace soc, Trace power) {
    List<Reading> readings =
        IntStream.range(0, power.size())
            .filter(
                i -> power.second(i) >= soc.firstSecond() && power.second(i) <= soc.lastSecond())
            .mapToObj(i -> new Reading(soc.at(power.second(i)), power.value(i), power.row(i)))
            .sorted(Comparator.comparingDouble(Reading::soc))
            .toList();
    List<List<Reading>> steps = steps(readings, 2 * soc.halfStep());
    return new TaperPoints(
        steps.stream()
            .mapToDouble(s -> mean(s.stream().mapToDouble(Reading::soc).sum(), s))
            .toArray(),
        steps.stream()
            .mapToDouble(s -> mean(s.stream().mapToDouble(Reading::power).sum(), s))
            .toArray(),
        soc.halfStep(),
        power.halfStep(),
        steps.stream().map(s -> s.stream().map(Reading::row).toList()).toList());
  }

  private static double mean(double sum, List<Reading> step) {
    return sum / step.size();
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

  /** Greatest size of a power, kW; at least a tiny number. */
  double scale() {
    double most = Double.MIN_NORMAL;
    for (double p : power) {
      most = Math.max(most, Math.abs(p));
    }
    return most;
  }

  /** Rows of the points from one state of charge to another, both included. */
  List<RowRef> rows(double from, double to) {
    return IntStream.range(0, rows.size())
        .filter(i -> soc[i] >= from - halfSoc && soc[i] <= to + halfSoc)
        .boxed()
        .flatMap(i -> rows.get(i).stream())
        .sorted()
        .toList();
  }
}
