package taperbook.metric.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.course.DriveFigures;
import taperbook.metric.fit.SampleMean;
import taperbook.metric.recording.DriveSpeed;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.plan.Basis;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.Drives;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.session.DisplayRounding;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.RowRef;

/**
 * Metrics of several drives of the reported car: each drive, their spread, and range over speed.
 */
public final class DriveMetrics {
  private final Drives drives;
  private final DisplayRounding rounding;
  private final String session;
  private final MetricCollector collector;

  public DriveMetrics(Recording recording, Drives drives, MetricCollector collector) {
    this.drives = drives;
    this.rounding = recording.session().displayRounding();
    this.session = recording.session().name();
    this.collector = collector;
  }

  /** Adds the numbers; none for a compared session or a single drive. */
  public void measure(ReportPlan plan) {
    if (!session.equals(plan.subject().session()) || drives.named().size() < 2) {
      return;
    }
    for (int k = 1; k <= drives.named().size(); k++) {
      each(k, drives.named().get(k - 1));
    }
    spread("consumption", Unit.WATT_HOUR_PER_KILOMETRE, DriveFigures::consumption);
    spread("driven_range_full", Unit.KILOMETRE, DriveFigures::fullRange);
    if (drives.speeds() > 1) {
      new SpeedMetrics(drives, rounding, collector).measure(plan.style().units());
    }
  }

  private void each(int k, RangeTest test) {
    RangeFigures figures = RangeFigures.of(Optional.of(test), rounding, Basis.DRIVEN);
    String id = "drive_" + k + "_";
    collector.measured(
        metric(
            id + "speed",
            Texts.of("number.drive_speed", k, test.name()),
            Unit.KILOMETRE_PER_HOUR,
            Method.STATED_FACT),
        Finding.of(
                DriveSpeed.of(test.facts()), Message.of("metric.common.average_speed_is_not_known"))
            .from(v -> DriveSpeed.rows(test.facts())));
    collector.measured(
        metric(
            id + "consumption",
            Texts.of("number.drive_consumption", k, test.name()),
            Unit.WATT_HOUR_PER_KILOMETRE,
            figures.consumptionMethod()),
        figures.consumption());
    collector.measured(
        metric(
            id + "range",
            Texts.of("number.drive_range", k, test.name()),
            Unit.KILOMETRE,
            Method.DRIVEN_RANGE),
        figures.fullRange());
  }

  /** Adds the standard deviation between the averaged drives; none for a single drive. */
  private void spread(String of, Unit unit, Function<DriveFigures, Optional<Estimate>> quantity) {
    List<RangeTest> agreeing = drives.agreeing();
    List<Double> values =
        agreeing.stream()
            .map(t -> quantity.apply(DriveFigures.of(t, rounding)))
            .flatMap(Optional::stream)
            .map(Estimate::value)
            .toList();
    if (values.size() > 1) {
      String label = Texts.of("number.drive_spread", Texts.of("number." + of), values.size());
      collector.measured(
          metric(of + "_drive_spread", label, unit, Method.DRIVES_MEAN),
          Finding.of(Estimate.exactly(SampleMean.of(values).deviation()), rows(agreeing)));
    }
  }

  static Metric metric(String id, String label, Unit unit, Method method) {
    Basis basis = unit == Unit.KILOMETRE ? Basis.DRIVEN : Basis.ENERGY;
    return new Metric(id, label, unit, method, basis, Set.of());
  }

  static List<RowRef> rows(List<RangeTest> tests) {
    List<RowRef> rows = new ArrayList<>();
    for (RangeTest test : tests) {
      rows.addAll(
          RangeFigures.rows(
              test.facts(),
              RangeItem.DISTANCE,
              RangeItem.ODOMETER_CORRECTION,
              RangeItem.START_SOC,
              RangeItem.END_SOC,
              RangeItem.ENERGY_USED,
              RangeItem.AVERAGE_SPEED,
              RangeItem.AMBIENT_TEMPERATURE,
              RangeItem.AIR_PRESSURE,
              RangeItem.START_ELEVATION));
    }
    return rows;
  }
}
