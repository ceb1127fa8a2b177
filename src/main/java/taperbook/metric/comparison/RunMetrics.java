package taperbook.metric.comparison;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.fit.Quantiles;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.result.Contribution;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Numbers;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.result.Runs.Known;
import taperbook.result.Runs.Spread;
import taperbook.result.UncertaintySource;
import taperbook.session.Caveat;
import taperbook.session.RowRef;

/** Adds mean, spread and next-run prediction of each headline number over the runs of a session. */
public final class RunMetrics {
  private static final Set<UncertaintySource> OF_THE_DRIVE =
      Set.of(
          UncertaintySource.RANGE_DISTANCE,
          UncertaintySource.RANGE_SOC,
          UncertaintySource.RANGE_ENERGY,
          UncertaintySource.SPEED);

  private final List<Numbers> runs;
  private final List<Caveat> caveats;
  private final MetricCollector collector;
  private final Map<String, Double> shares = new LinkedHashMap<>();

  /**
   * Creates the metrics over runs.
   *
   * @param runs the numbers of each run, the reported session first; two or more
   * @param differences descriptions of how the runs differ
   */
  public RunMetrics(List<Numbers> runs, List<String> differences, MetricCollector collector) {
    this.runs = List.copyOf(runs);
    this.caveats = caveats(runs.size(), differences);
    this.collector = collector;
  }

  private static List<Caveat> caveats(int count, List<String> differences) {
    List<Caveat> caveats = new ArrayList<>();
    if (count == 2) {
      caveats.add(
          new Caveat(Caveat.Kind.REPEATS, Message.of("metric.run_metrics.two_runs_say_little_of")));
    }
    if (!differences.isEmpty()) {
      caveats.add(
          new Caveat(
              Caveat.Kind.REPEATS,
              Message.of(
                  "metric.run_metrics.runs_are_not_alike_in", String.join(", ", differences))));
    }
    return caveats;
  }

  /**
   * Adds the numbers.
   *
   * @param ids the headline numbers
   * @param powerId the number whose spread applies to every power and charging time
   */
  public Spread add(List<String> ids, String powerId) {
    for (String id : ids) {
      runs.get(0).find(id).ifPresent(this::add);
    }
    double most = shares.values().stream().mapToDouble(s -> s).max().orElse(0);
    String source = Texts.of("metric.run_metrics.runs", runs.size());
    return new Spread(Known.REPEATS, source, shares.getOrDefault(powerId, most), shares);
  }

  private void add(ReportNumber number) {
    List<ReportNumber> measured =
        runs.stream()
            .flatMap(n -> n.find(number.id()).stream())
            .filter(n -> n.estimate().isPresent())
            .toList();
    int n = measured.size();
    List<Metric> entries =
        List.of(
            metric(
                number, "_mean", Texts.of("number.run_mean", number.label(), n), Method.RUN_MEAN),
            metric(
                number,
                "_run_spread",
                Texts.of("number.run_spread", number.label(), n),
                Method.RUN_SPREAD),
            metric(
                number,
                "_run_to_run",
                Texts.of("number.run_to_run", number.label(), n),
                Method.RUN_TO_RUN),
            metric(
                number, "_next_run", Texts.of("number.next_run", number.label()), Method.NEXT_RUN));
    if (n < 2) {
      entries.forEach(
          e -> collector.withheld(e, Message.of("metric.run_metrics.fewer_than_two_of_runs")));
      return;
    }
    RunStatistics statistics = statistics(measured);
    List<RowRef> rows = measured.stream().flatMap(m -> m.origin().rows().stream()).toList();
    List<Caveat> own = new ArrayList<>(caveats);
    if (n < runs.size()) {
      Message count = Message.of("metric.run_metrics.only_of_runs_have_this", n, runs.size());
      own.add(new Caveat(Caveat.Kind.REPEATS, count));
    }
    List<Estimate> estimates =
        List.of(
            statistics.meanOfAll(),
            statistics.spread(),
            statistics.beyondReadings(),
            statistics.nextRun());
    for (int i = 0; i < estimates.size(); i++) {
      collector.covered(entries.get(i), Finding.of(estimates.get(i), rows), 0.95, own);
    }
    if (statistics.mean() > 0) {
      shares.put(number.id(), statistics.halfBeyondReadings() / statistics.mean());
    }
  }

  private static Metric metric(ReportNumber number, String ending, String label, Method method) {
    Metric of = number.metric();
    return new Metric(number.id() + ending, label, number.unit(), method, of.basis(), of.inputs());
  }

  private static RunStatistics statistics(List<ReportNumber> measured) {
    List<Double> values = new ArrayList<>();
    List<Double> readings = new ArrayList<>();
    double common = 0;
    double halfStep = 0;
    for (ReportNumber number : measured) {
      values.add(number.estimate().orElseThrow().value());
      double variance = Math.pow(standardUncertainty(number), 2);
      double drive = driveShare(number);
      readings.add(Math.sqrt((1 - drive) * variance));
      if (coverage(number) == 1) {
        halfStep = Math.max(halfStep, number.estimate().orElseThrow().bounds().width() / 2);
      }
      common += drive * variance / measured.size();
    }
    return new RunStatistics(values, readings, Math.sqrt(common), halfStep);
  }

  /**
   * Returns the standard uncertainty of an interval: of a normal distribution if it covers 95 %, of
   * a rectangular one if it is bounds (JCGM 100:2008, 4.3.4 and 4.3.7).
   */
  public static double standardUncertainty(ReportNumber number) {
    double half = number.estimate().orElseThrow().bounds().width() / 2;
    return half / (coverage(number) < 1 ? Quantiles.NORMAL_95 : Math.sqrt(3));
  }

  private static double coverage(ReportNumber number) {
    return number.outcome().fold(Outcome.Measured::coverage, w -> 1.0);
  }

  /** Returns the share of a number's variance that is due to the drive, which all runs share. */
  public static double driveShare(ReportNumber number) {
    List<Contribution> budget =
        number.outcome().fold(Outcome.Measured::budget, w -> List.<Contribution>of());
    double share =
        budget.stream()
            .filter(c -> OF_THE_DRIVE.contains(c.source()))
            .mapToDouble(Contribution::share)
            .sum();
    return Math.min(1, share);
  }

  /** Returns the spread that the tester states from other sources. */
  public static Optional<Spread> stated(Optional<ReportPlan.RunSpread> stated) {
    return stated.map(
        s -> new Spread(Known.STATED, s.source(), Quantiles.NORMAL_95 * s.share(), Map.of()));
  }
}
