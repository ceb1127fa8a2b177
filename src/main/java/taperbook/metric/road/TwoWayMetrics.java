package taperbook.metric.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import taperbook.format.Labels;
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
  private static final Metric OUT =
      metric("two_way_out_consumption", Labels.of("number.two_way_out_consumption"));
  private static final Metric BACK =
      metric("two_way_back_consumption", Labels.of("number.two_way_back_consumption"));
  private static final Metric MEAN =
      metric("two_way_consumption", Labels.of("number.two_way_consumption"));

  private final Optional<RangeTest> test;
  private final MetricCollector collector;

  TwoWayMetrics(Optional<RangeTest> test, MetricCollector collector) {
    this.test = test;
    this.collector = collector;
  }

  private static Metric metric(String id, String label) {
    return new Metric(
        id,
        label,
        Unit.WATT_HOUR_PER_KILOMETRE,
        Method.TWO_WAY_MEAN,
        Basis.ENERGY,
        Input.DRIVE,
        Set.of(Role.TWO_WAY));
  }

  void measure() {
    List<Leg> out = legs("out");
    List<Leg> back = legs("back");
    if (out.isEmpty() || back.isEmpty()) {
      withhold(
          test.filter(t -> !t.legs().isEmpty()).isPresent()
              ? "no legs are called out and back"
              : "the drive was not recorded leg by leg");
      return;
    }
    Optional<Estimate> there = consumption(out);
    Optional<Estimate> here = consumption(back);
    if (there.isEmpty() || here.isEmpty()) {
      withhold("the energy used is not known for every leg out and back");
      return;
    }
    List<RowRef> rows = new ArrayList<>(rows(out));
    rows.addAll(rows(back));
    collector.measured(OUT, there.get(), rows(out));
    collector.measured(BACK, here.get(), rows(back));
    collector.measured(MEAN, there.get().minus(here.get().times(-1)).times(0.5), rows);
  }

  private void withhold(String reason) {
    List.of(OUT, BACK, MEAN).forEach(entry -> collector.withheld(entry, reason));
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

  /** Returns energy over corrected distance, Wh/km; empty if a leg lacks either. */
  private Optional<Estimate> consumption(List<Leg> legs) {
    Estimate distance = Estimate.exactly(0);
    Estimate energy = Estimate.exactly(0);
    for (Leg leg : legs) {
      if (leg.energyUsed().isEmpty()) {
        return Optional.empty();
      }
      distance = distance.minus(leg.distance().times(-1));
      energy = energy.minus(leg.energyUsed().get().times(-1));
    }
    Estimate driven =
        test.flatMap(t -> t.facts().amount(RangeItem.ODOMETER_CORRECTION))
            .map(distance::times)
            .orElse(distance);
    return driven.bounds().low() > 0
        ? Optional.of(energy.times(1000).over(driven))
        : Optional.empty();
  }
}
