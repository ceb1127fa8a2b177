package taperbook.metric.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import taperbook.i18n.Message;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.plan.Basis;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Role;
import taperbook.session.Input;
import taperbook.session.Leg;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.RowRef;

/** Computes the consumption of the outward and return legs, and the mean of both directions. */
final class TwoWayMetrics {
  private static final Metric OUT = metric("two_way_out_consumption");
  private static final Metric BACK = metric("two_way_back_consumption");
  private static final Metric MEAN = metric("two_way_consumption");

  private static final Message NO_ENERGY =
      Message.of("metric.two_way_metrics.energy_used_is_not_known");

  private final Optional<RangeTest> test;
  private final MetricCollector collector;

  TwoWayMetrics(Optional<RangeTest> test, MetricCollector collector) {
    this.test = test;
    this.collector = collector;
  }

  private static Metric metric(String id) {
    return Metric.of(
            id, Unit.WATT_HOUR_PER_KILOMETRE, Method.TWO_WAY_MEAN, Basis.ENERGY, Input.DRIVE)
        .in(Role.TWO_WAY);
  }

  void measure() {
    List<Leg> out = legs("out");
    List<Leg> back = legs("back");
    Message noLegs =
        test.filter(t -> !t.legs().isEmpty()).isPresent()
            ? Message.of("metric.two_way_metrics.no_legs_are_called_out")
            : Message.of("metric.two_way_metrics.drive_was_not_recorded_leg");
    Finding<?> both =
        Finding.of(back, List.of()).filter(b -> !out.isEmpty() && !b.isEmpty(), noLegs);
    Finding<Estimate> there = both.flatMap(b -> consumption(out));
    Finding<Estimate> here = both.flatMap(b -> consumption(back));
    Finding<Estimate> sum = there.flatMap(t -> here.map(h -> t.minus(h.times(-1))));
    collector.measured(OUT, sum.value().isPresent() ? there : sum);
    collector.measured(BACK, sum.value().isPresent() ? here : sum);
    collector.measured(MEAN, sum.map(s -> s.times(0.5)));
  }

  /** Returns the legs whose name begins with a word. */
  private List<Leg> legs(String word) {
    return test.map(RangeTest::legs).orElse(List.of()).stream()
        .filter(leg -> leg.name().strip().toLowerCase(Locale.ROOT).matches(word + "\\b.*"))
        .toList();
  }

  private List<RowRef> rows(List<Leg> legs) {
    List<RowRef> rows = new ArrayList<>(legs.stream().map(Leg::row).toList());
    test.ifPresent(t -> rows.addAll(t.facts().rows(RangeItem.ODOMETER_CORRECTION)));
    return rows;
  }

  /** Returns energy over corrected distance, Wh/km, unless a leg lacks either. */
  private Finding<Estimate> consumption(List<Leg> legs) {
    Estimate distance = Estimate.exactly(0);
    Estimate energy = Estimate.exactly(0);
    for (Leg leg : legs) {
      if (leg.energyUsed().isEmpty()) {
        return Finding.missing(NO_ENERGY);
      }
      distance = distance.minus(leg.distance().times(-1));
      energy = energy.minus(leg.energyUsed().get().times(-1));
    }
    Estimate driven =
        test.flatMap(t -> t.facts().amount(RangeItem.ODOMETER_CORRECTION))
            .map(distance::times)
            .orElse(distance);
    return driven.bounds().low() > 0
        ? Finding.of(energy.times(1000).over(driven), rows(legs))
        : Finding.missing(NO_ENERGY);
  }
}
