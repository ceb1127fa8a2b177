package taperbook.metric;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import taperbook.plan.Basis;
import taperbook.plan.ReportPlan;
import taperbook.plan.RoadWishes;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.ReportResult;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.Fact;
import taperbook.session.Facts;
import taperbook.session.HowKnown;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.RowRef;
import taperbook.session.Session;
import taperbook.session.Trace;

/** Builds sessions, range tests, and plans for tests. */
public final class Sessions {
  private final Map<Channel, Trace> traces = new EnumMap<>(Channel.class);
  private final Map<ConditionItem, Fact> facts = new EnumMap<>(ConditionItem.class);
  private String name = "test-session";
  private double clockHalfStep;

  private Sessions() {}

  public static Sessions session() {
    Sessions empty = new Sessions();
    return empty.text(ConditionItem.VEHICLE, "Northmoor Finch");
  }

  public Sessions named(String newName) {
    name = newName;
    return this;
  }

  public Sessions clockHalfStep(double seconds) {
    clockHalfStep = seconds;
    return this;
  }

  /** Adds a channel; NaN is a blank cell. Row i is line i + 2. */
  public Sessions channel(Channel channel, double halfStep, double[] seconds, double[] values) {
    List<Integer> kept = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      if (!Double.isNaN(values[i])) {
        kept.add(i);
      }
    }
    traces.put(
        channel,
        new Trace(
            "sessions/" + name + "/readings.csv",
            kept.stream().mapToDouble(i -> seconds[i]).toArray(),
            kept.stream().mapToDouble(i -> values[i]).toArray(),
            kept.stream().mapToInt(i -> i + 2).toArray(),
            halfStep,
            clockHalfStep));
    return this;
  }

  public Sessions text(ConditionItem item, String text) {
    facts.put(item, new Fact(text, "", Optional.empty(), HowKnown.DISPLAYED, row()));
    return this;
  }

  public Sessions amount(ConditionItem item, double base, double half) {
    facts.put(
        item,
        new Fact(
            "" + base, "", Optional.of(Estimate.around(base, half)), HowKnown.DISPLAYED, row()));
    return this;
  }

  public Sessions unknown(ConditionItem item) {
    facts.put(item, new Fact("", "", Optional.empty(), HowKnown.UNKNOWN, row()));
    return this;
  }

  private RowRef row() {
    return new RowRef("sessions/" + name + "/conditions.csv", facts.size() + 2);
  }

  public Session build() {
    double first = traces.values().stream().mapToDouble(Trace::firstSecond).min().orElseThrow();
    double last = traces.values().stream().mapToDouble(Trace::lastSecond).max().orElseThrow();
    return new Session(
        name,
        new Facts<>("sessions/" + name + "/conditions.csv", ConditionItem.class, facts),
        traces,
        List.of(),
        new Interval(first, last));
  }

  /** A range test of the same vehicle; amounts in base units with half a step, as displayed. */
  public static RangeTest rangeTest(Map<RangeItem, Estimate> amounts) {
    return rangeTest("drive", "Northmoor Finch", amounts, HowKnown.DISPLAYED);
  }

  /** As {@link #rangeTest(Map)}, with amounts that were not displayed by the car. */
  public static RangeTest measured(Map<RangeItem, Estimate> amounts) {
    return rangeTest("drive", "Northmoor Finch", amounts, HowKnown.MEASURED);
  }

  public static RangeTest rangeTest(
      String name, String vehicle, Map<RangeItem, Estimate> amounts, HowKnown howKnown) {
    String file = "sessions/" + name + "/range-test.csv";
    Map<RangeItem, Fact> facts = new EnumMap<>(RangeItem.class);
    facts.put(
        RangeItem.VEHICLE,
        new Fact(vehicle, "", Optional.empty(), HowKnown.DISPLAYED, new RowRef(file, 3)));
    amounts.forEach(
        (item, amount) ->
            facts.put(
                item,
                new Fact(
                    "" + amount.value(),
                    "",
                    Optional.of(amount),
                    howKnown,
                    new RowRef(file, facts.size() + 2))));
    return new RangeTest(name, new Facts<>(file, RangeItem.class, facts), List.of());
  }

  /** A plan in miles with the given windows and distances and marks at every ten per cent. */
  public static ReportPlan plan(List<SocWindow> windows, List<WantedDistance> distances) {
    return plan(windows, distances, Unit.MILE, Basis.DRIVEN);
  }

  public static ReportPlan plan(
      List<SocWindow> windows, List<WantedDistance> distances, Unit units, Basis basis) {
    return new ReportPlan(
        "test",
        new ReportPlan.Heading("Test", "Tester", Optional.of(LocalDate.of(2026, 3, 14))),
        new ReportPlan.Subject("test-session", List.of(), List.of("drive")),
        new ReportPlan.Wishes(distances, List.of(10, 20, 30, 40, 50, 60, 70, 80, 90, 100), windows),
        new ReportPlan.Style(units, basis, "report"),
        new ReportPlan.Article("", "reports/test.md", 1));
  }

  /** A plan in kilometres with distances and road topics. */
  public static ReportPlan roadPlan(List<WantedDistance> distances, RoadWishes road) {
    return roadPlan(distances, List.of(50), road);
  }

  /** A plan in kilometres with distances, marks, and road topics. */
  public static ReportPlan roadPlan(
      List<WantedDistance> distances, List<Integer> marks, RoadWishes road) {
    ReportPlan plan = plan(List.of(new SocWindow(10, 80)), distances, Unit.KILOMETRE, Basis.DRIVEN);
    return new ReportPlan(
        plan.name(),
        plan.heading(),
        plan.subject(),
        new ReportPlan.Wishes(distances, marks, plan.wishes().windows(), road),
        plan.style(),
        plan.article());
  }

  /** Measures one session with the window 10-80 % and without a range test. */
  public static ReportResult measure(Session session, SocWindow... windows) {
    List<SocWindow> requested =
        windows.length == 0 ? List.of(new SocWindow(10, 80)) : List.of(windows);
    return ReportMetrics.measure(plan(requested, List.of()), session, List.of(), List.of());
  }
}
