package taperbook.metric.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.course.DriveFigures;
import taperbook.metric.fit.LinePoint;
import taperbook.metric.fit.YorkLine;
import taperbook.metric.recording.DriveSpeed;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.Drives;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.session.Caveat;
import taperbook.session.DisplayRounding;
import taperbook.session.RangeTest;

/**
 * Consumption and range at speeds between the driven ones, from the road load:
 *
 * <pre>
 *   c = a + b x    x = d / d[1] v^2
 * </pre>
 *
 * with the speed <i>v</i> and the air density <i>d</i>, relative to that of the first drive.
 *
 * @see <a href="https://www.sae.org/standards/content/j2263_202005/">SAE J1263 and J2263 on the
 *     form of the road load, from memory</a>
 */
final class SpeedMetrics {
  private static final double COVERAGE = 0.95;

  private static final int KILOMETRES_PER_HOUR = 10;
  private static final int MILES_PER_HOUR = 5;

  /** Tolerance for floating-point error. */
  private static final double NOISE = 1e-9;

  private static final Message SCATTER =
      Message.of("metric.speed_metrics.drives_scatter_too_much_to");

  private static final Message TWO_SPEEDS =
      Message.of("metric.speed_metrics.drives_at_two_speeds_determine");

  private final List<RangeTest> tests;
  private final DisplayRounding rounding;
  private final MetricCollector collector;
  private final List<Estimate> air;

  SpeedMetrics(Drives drives, DisplayRounding rounding, MetricCollector collector) {
    this.tests =
        drives.inLikeWeather().stream().filter(t -> DriveSpeed.of(t.facts()).isPresent()).toList();
    this.rounding = rounding;
    this.collector = collector;
    List<DriveConditions> all = tests.stream().map(t -> new DriveConditions(t.facts())).toList();
    List<Estimate> each = all.stream().map(DriveConditions::density).toList();
    this.air = all.stream().allMatch(a -> a.missing().isEmpty()) ? each : List.of();
  }

  void measure(Unit units) {
    Unit unit = units == Unit.MILE ? Unit.MILE_PER_HOUR : Unit.KILOMETRE_PER_HOUR;
    String symbol = units == Unit.MILE ? "mph" : unit.symbol();
    int step = units == Unit.MILE ? MILES_PER_HOUR : KILOMETRES_PER_HOUR;
    List<Double> speeds =
        tests.stream().map(t -> unit.fromBase(speed(t).value())).sorted().toList();
    int first = (int) Math.ceil(speeds.get(0) / step - NOISE);
    int last = (int) Math.floor(speeds.get(speeds.size() - 1) / step + NOISE);
    Line charge = new Line(DriveFigures::chargePerKilometre);
    Line consumption = new Line(DriveFigures::consumption);
    for (int k = first; k <= last; k++) {
      String words = k * step + " " + symbol;
      String id = Drives.speedId(k * step, unit);
      double v = unit.toBase(k * step);
      add(
          metric("range" + id, Texts.of("number.range_at", words), Unit.KILOMETRE),
          charge,
          charge.at(v).filter(y -> y.bounds().low() > 0).map(Estimate.exactly(100)::over));
      add(
          metric(
              "consumption" + id,
              Texts.of("number.consumption_at", words),
              Unit.WATT_HOUR_PER_KILOMETRE),
          consumption,
          consumption.at(v));
    }
  }

  private static Metric metric(String id, String label, Unit unit) {
    return DriveMetrics.metric(id, label, unit, Method.RANGE_OVER_SPEED);
  }

  private void add(Metric metric, Line line, Optional<Estimate> estimate) {
    List<Caveat> own = new ArrayList<>(List.of(line.caveat()));
    own.addAll(collector.caveats(Caveat.Kind.DRIVE));
    collector.covered(
        metric,
        Finding.of(estimate, line.isExactlyDetermined() ? TWO_SPEEDS : SCATTER)
            .from(e -> DriveMetrics.rows(line.drives)),
        COVERAGE,
        own);
  }

  private static Estimate speed(RangeTest test) {
    return DriveSpeed.of(test.facts()).orElseThrow();
  }

  /**
   * A figure of all drives that have it, over the square of the speed in the air of the first
   * drive.
   */
  private final class Line {
    private final List<RangeTest> drives;
    private final Optional<YorkLine> line;
    private final double correction;
    private final boolean isSpeedCorrected;

    Line(Function<DriveFigures, Optional<Estimate>> quantity) {
      List<RangeTest> known = new ArrayList<>();
      List<LinePoint> points = new ArrayList<>();
      for (int i = 0; i < tests.size(); i++) {
        DriveFigures figures = DriveFigures.of(tests.get(i), rounding);
        Optional<Estimate> y = quantity.apply(figures);
        if (y.isPresent()) {
          known.add(tests.get(i));
          points.add(point(i, figures, y.get()));
        }
      }
      this.drives = List.copyOf(known);
      this.line = isExactlyDetermined() ? Optional.empty() : Optional.of(YorkLine.through(points));
      this.correction = known.stream().mapToDouble(Line::correction).max().orElse(0);
      this.isSpeedCorrected = known.stream().anyMatch(t -> DriveSpeed.isOfTheCar(t.facts()));
    }

    /** Returns true if there are just enough speeds to determine the line. */
    boolean isExactlyDetermined() {
      return new Drives(drives).speeds() < Drives.MIN_SPEEDS;
    }

    private LinePoint point(int i, DriveFigures figures, Estimate y) {
      Estimate v = figures.speed(DriveSpeed.isOfTheCar(figures.facts())).orElseThrow();
      Estimate density = air.isEmpty() ? Estimate.exactly(1) : air.get(i).over(air.get(0));
      double x = density.value() * v.value() * v.value();
      double relative =
          Math.hypot(v.bounds().width() / v.value(), half(air.isEmpty() ? density : air.get(i)));
      return LinePoint.rounded(x, y.value(), x * relative, y.bounds().width() / 2);
    }

    /** Returns half the bounds as a share of the value. */
    private static double half(Estimate estimate) {
      return estimate.bounds().width() / 2 / estimate.value();
    }

    private static double correction(RangeTest test) {
      return DriveSpeed.correction(test.facts()).map(Line::half).orElse(0.0);
    }

    /** Returns the line at a speed, km/h; empty if there are just enough speeds to determine it. */
    Optional<Estimate> at(double v) {
      return line.map(
          l -> {
            double x = v * v;
            double y = l.at(x);
            // An odometer error affects both the distance and the displayed speed.
            double byOdometer = correction * (y + (isSpeedCorrected ? 2 * l.slope() * x : 0));
            return Estimate.around(y, Math.hypot(l.half95At(x), byOdometer));
          });
    }

    Caveat caveat() {
      return new Caveat(
          Caveat.Kind.RANGE_TEST,
          Message.of(
              "metric.speed_metrics.line_through_drives_each_with",
              drives.size(),
              drives.stream().map(RangeTest::name).collect(Collectors.joining(", ")),
              air.isEmpty()
                  ? Texts.of("metric.speed_metrics.density_of_air_is_not")
                  : Texts.of("metric.speed_metrics.for_air_of_first")));
    }
  }
}
