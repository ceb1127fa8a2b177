package taperbook.chart.plots;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import taperbook.chart.model.PlotLine;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.result.CommonGround;
import taperbook.result.Curve;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Numbers;
import taperbook.result.Outcome;
import taperbook.result.PairResult;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;
import taperbook.result.Stretch;
import taperbook.result.Stretch.Order;
import taperbook.session.Origin;

/**
 * Invented comparison results for charts. Differences are read off the curves every half per cent,
 * with a band of a constant width.
 */
public final class InventedComparison {
  private static final double STEP = 0.5;

  private final List<ReportNumber> numbers = new ArrayList<>();
  private final List<Stretch> stretches = new ArrayList<>();
  private final List<String> crossings = new ArrayList<>();
  private final String own;
  private final String other;

  private InventedComparison(String own, String other) {
    this.own = own;
    this.other = other;
  }

  /** Compares the first session with the others. */
  public static ReportResult of(
      double bandKilowatt, InventedSession main, InventedSession... others) {
    Optional<SocWindow> shared = shared(main, others);
    shared.ifPresent(
        window ->
            Stream.concat(Stream.of(main), Arrays.stream(others))
                .forEach(s -> s.window(window.from(), window.to())));
    CommonGround common = new CommonGround(shared, Optional.empty(), OptionalInt.empty());
    List<SessionResult> compared =
        Arrays.stream(others).map(InventedSession::sessionResult).toList();
    SessionResult first = main.sessionResult();
    List<PairResult> pairs = compared.stream().map(c -> pair(first, c, bandKilowatt)).toList();
    return new ReportResult(main.plan(), first, compared, common, pairs);
  }

  private static Optional<SocWindow> shared(InventedSession main, InventedSession... others) {
    Interval all = range(main.sessionResult());
    double from = all.low();
    double to = all.high();
    for (InventedSession other : others) {
      Interval its = range(other.sessionResult());
      from = Math.max(from, its.low());
      to = Math.min(to, its.high());
    }
    int low = (int) Math.ceil(from);
    int high = (int) Math.floor(to);
    return low < high ? Optional.of(new SocWindow(low, high)) : Optional.empty();
  }

  private static Interval range(SessionResult session) {
    Curve soc = session.curves().socOverTime().orElseThrow();
    return new Interval(soc.y(0), soc.y(soc.size() - 1));
  }

  private static PairResult pair(SessionResult main, SessionResult other, double bandKilowatt) {
    String own = main.session().name();
    String name = other.session().name();
    Interval a = range(main);
    Interval b = range(other);
    double from = Math.max(a.low(), b.low());
    double to = Math.min(a.high(), b.high());
    if (!(from < to)
        || main.curves().powerOverSoc().isEmpty()
        || other.curves().powerOverSoc().isEmpty()) {
      Numbers none = new Numbers(List.of());
      return new PairResult(name, Optional.empty(), List.of(), List.of(), Optional.empty(), none);
    }
    Curve difference = difference(main, other, from, to, bandKilowatt);
    InventedComparison comparison = new InventedComparison(own, name);
    comparison.judge(difference);
    return new PairResult(
        name,
        Optional.of(new Interval(from, to)),
        comparison.stretches,
        comparison.crossings,
        Optional.of(difference),
        new Numbers(comparison.numbers));
  }

  private static Curve difference(
      SessionResult main, SessionResult other, double from, double to, double bandKilowatt) {
    PlotLine a = new PlotLine(main.curves().powerOverSoc().orElseThrow(), x -> x, y -> y);
    PlotLine b = new PlotLine(other.curves().powerOverSoc().orElseThrow(), x -> x, y -> y);
    List<Double> x = new ArrayList<>();
    List<Double> y = new ArrayList<>();
    for (int i = 0; from + i * STEP <= to; i++) {
      OptionalDouble own = a.yAt(from + i * STEP);
      OptionalDouble its = b.yAt(from + i * STEP);
      if (own.isPresent() && its.isPresent()) {
        x.add(from + i * STEP);
        y.add(own.getAsDouble() - its.getAsDouble());
      }
    }
    double[] ys = array(y);
    double[] low = Arrays.stream(ys).map(v -> v - bandKilowatt).toArray();
    double[] high = Arrays.stream(ys).map(v -> v + bandKilowatt).toArray();
    return new Curve(array(x), ys, low, high, new boolean[ys.length]);
  }

  private static double[] array(List<Double> values) {
    return values.stream().mapToDouble(v -> v).toArray();
  }

  private void judge(Curve difference) {
    int first = 0;
    double sum = 0;
    for (int i = 0; i < difference.size(); i++) {
      sum += difference.y(i);
      int last = difference.size() - 1;
      boolean ends = i == last || order(difference, i + 1) != order(difference, first);
      if (ends && first < last) {
        double end = difference.x(Math.min(i + 1, last));
        if (difference.x(first) < end) {
          stretch(difference, first, i, end);
        }
        first = i + 1;
      }
    }
    put("mean_lead_shared", Unit.KILOWATT, Estimate.around(sum / difference.size(), 2.1));
    put("time_gain_shared", Unit.SECOND, Estimate.around(6 * sum / difference.size(), 25));
    for (int i = 1; i + 1 < stretches.size(); i++) {
      cross(stretches.get(i - 1), stretches.get(i), stretches.get(i + 1));
    }
  }

  private static Order order(Curve difference, int i) {
    return difference.low(i) > 0
        ? Order.AHEAD
        : difference.high(i) < 0 ? Order.BEHIND : Order.UNDECIDED;
  }

  private void stretch(Curve difference, int first, int last, double end) {
    Order order = order(difference, first);
    double from = difference.x(first);
    if (order == Order.UNDECIDED) {
      stretches.add(new Stretch(order, from, end, Optional.empty()));
      return;
    }
    String stem = "lead_" + (stretches.size() + 1);
    Stretch.Ids ids =
        new Stretch.Ids(stem + "_soc_from", stem + "_soc_to", stem + "_power", stem + "_time_gain");
    put(ids.from(), Unit.PERCENT, Estimate.around(from, 0.7));
    put(ids.to(), Unit.PERCENT, Estimate.around(end, 0.7));
    double middle = difference.y((first + last) / 2);
    put(ids.lead(), Unit.KILOWATT, Estimate.around(middle, 1.8));
    put(ids.gain(), Unit.SECOND, Estimate.around(middle * (end - from) / 10, 9));
    stretches.add(new Stretch(order, from, end, Optional.of(ids)));
  }

  private void cross(Stretch before, Stretch between, Stretch after) {
    if (between.order() == Order.UNDECIDED
        && before.order() != after.order()
        && before.order() != Order.UNDECIDED
        && after.order() != Order.UNDECIDED) {
      String id = "crossing_" + (crossings.size() + 1) + "_soc";
      double half = (between.to() - between.from()) / 2;
      put(id, Unit.PERCENT, Estimate.around(between.from() + half, half));
      crossings.add(id);
    }
  }

  private void put(String id, Unit unit, Estimate estimate) {
    Origin origin = new Origin(own, other, List.of());
    Outcome outcome = new Outcome.Measured(estimate, 0.95);
    numbers.add(
        new ReportNumber(
            Metric.charging(id, id, unit, Method.INTERPOLATION), outcome, origin, List.of()));
  }
}
