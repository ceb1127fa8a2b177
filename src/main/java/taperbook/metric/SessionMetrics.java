package taperbook.metric;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Message;
import taperbook.metric.course.Courses;
import taperbook.metric.fit.EnergyFit;
import taperbook.metric.quality.CrossChecks;
import taperbook.metric.quality.DriveCaveats;
import taperbook.metric.quality.SessionCaveats;
import taperbook.metric.recording.EventFinder;
import taperbook.metric.recording.Finding;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.recording.RangeFigures;
import taperbook.metric.recording.Recording;
import taperbook.metric.road.DriveMetrics;
import taperbook.metric.road.RoadMetrics;
import taperbook.metric.session.AgeingMetrics;
import taperbook.metric.session.CRateMetrics;
import taperbook.metric.session.CapacityMetrics;
import taperbook.metric.session.CommonGroundMetrics;
import taperbook.metric.session.DistanceMetrics;
import taperbook.metric.session.LimitMetrics;
import taperbook.metric.session.LossMetrics;
import taperbook.metric.session.PeakMetrics;
import taperbook.metric.session.SessionTotals;
import taperbook.metric.session.SocTimeMetrics;
import taperbook.metric.session.StopMetrics;
import taperbook.metric.session.StopPhaseMetrics;
import taperbook.metric.session.TaperMetrics;
import taperbook.metric.session.WindowMetrics;
import taperbook.plan.ReportPlan;
import taperbook.plan.RoadTopic;
import taperbook.quantity.SocWindow;
import taperbook.result.CommonGround;
import taperbook.result.CrossCheck;
import taperbook.result.Curves;
import taperbook.result.Drives;
import taperbook.result.Numbers;
import taperbook.result.ReportNumber;
import taperbook.result.SessionResult;
import taperbook.session.Caveat;
import taperbook.session.RangeTest;
import taperbook.session.Session;

/**
 * Measures one session of a report in two steps: first by itself, which yields its part of the
 * common ground of all sessions, and then on that common ground.
 */
final class SessionMetrics {
  private final ReportPlan plan;
  private final boolean isReported;
  private final Drives drives;
  private final Optional<RangeTest> reported;
  private final Recording recording;
  private final RangeFigures range;
  private final List<Caveat> caveats;
  private final MisreadEffects effects;

  /**
   * Creates the metrics of a session.
   *
   * @param plan the report plan
   * @param session the session
   * @param main the reported session, whose car sets the speed of a trip
   * @param others sessions to compare with for ageing
   * @param rangeTests the range tests to choose from; those of the session's vehicle count
   * @param redraw index of an alternative set of draws; 0 is that of a report
   */
  SessionMetrics(
      ReportPlan plan,
      Session session,
      Session main,
      List<Session> others,
      List<RangeTest> rangeTests,
      int redraw) {
    NumberFormatter formatter = new NumberFormatter(plan.style());
    this.plan = plan;
    this.isReported = session.name().equals(main.name());
    this.drives = Drives.of(session.vehicle(), rangeTests);
    this.reported = Drives.of(main.vehicle(), rangeTests).first();
    List<RangeTest> agreeing = drives.agreeing();
    this.recording =
        Recording.of(
            session, new Courses(session, agreeing, Courses.FOR_REPORT, redraw), formatter);
    this.range = RangeFigures.of(agreeing, session.displayRounding(), plan.style().basis());
    List<Caveat> all = new ArrayList<>(SessionCaveats.of(recording));
    all.addAll(DriveCaveats.of(drives, formatter));
    this.caveats = List.copyOf(all);
    this.effects =
        MisreadEffects.of(
            numbers(others),
            session,
            plan,
            s -> new SessionMetrics(plan, s, main, others, rangeTests, redraw).numbers());
  }

  Recording recording() {
    return recording;
  }

  /** Returns the numbers, without those on common ground and without C-rates. */
  Numbers numbers() {
    return effects.numbers();
  }

  /** Returns an empty collector for further numbers of the session. */
  MetricCollector collector() {
    return new MetricCollector(recording.session().name(), caveats);
  }

  /** Returns the session as a repeat of another: a subset of its numbers and curves. */
  SessionResult asRepeat(List<String> ids) {
    List<ReportNumber> kept = ids.stream().flatMap(i -> numbers().find(i).stream()).toList();
    return new SessionResult(
        recording.session(),
        drives.first(),
        new Numbers(kept),
        List.of(),
        new CurveBuilder(recording, range).make(),
        caveats);
  }

  /** Returns the caveats of the numbers of this session, by input. */
  List<Caveat> caveats() {
    return caveats;
  }

  /** Returns {@link #numbers()} with C-rates added. */
  Numbers numbersWithRates() {
    return numbers().plus(rates(numbers(), CommonGround.NONE));
  }

  /**
   * Returns the full result of the session, including numbers on common ground.
   *
   * @param ofRuns numbers over its repeats
   */
  SessionResult result(CommonGround ground, Numbers ofRuns) {
    // Cross-checks use worst-case rounding bounds, not 95 % intervals.
    List<CrossCheck> checks =
        new CrossChecks(recording, drives.first(), ofFirst(), effects.numbers())
            .make(plan.wishes().distances());
    MetricCollector common = new MetricCollector(recording.session().name(), caveats);
    new CommonGroundMetrics(recording, range, common).measure(ground, plan.wishes());
    Numbers all = numbers().plus(ofRuns).plus(common.numbers());
    List<Caveat> concerned = new ArrayList<>(caveats);
    concerned.addAll(disagreements(checks));
    concerned.addAll(effects.caveats());
    concerned.sort(Comparator.comparing(Caveat::kind));
    return new SessionResult(
        recording.session(),
        drives,
        all.plus(rates(all, ground)),
        checks,
        curves(),
        concerned,
        EventFinder.of(recording.session()));
  }

  private Curves curves() {
    CurveBuilder curves = new CurveBuilder(recording, range);
    return isReported
        ? curves.ofReported(plan.wishes().road().wants(RoadTopic.PER_MINUTE), plan.style().units())
        : curves.make();
  }

  /**
   * Returns the figures of the first drive only: its record, legs and energies belong to one drive.
   */
  private RangeFigures ofFirst() {
    return RangeFigures.of(
        drives.first(), recording.session().displayRounding(), range.chosenBasis());
  }

  private Numbers numbers(List<Session> others) {
    MetricCollector collector = new MetricCollector(recording.session().name(), caveats);
    new PeakMetrics(recording, collector).measure();
    new SessionTotals(recording, collector).measure();
    new TaperMetrics(recording, collector).measure();
    Finding<EnergyFit> line = CapacityMetrics.fit(recording);
    CapacityMetrics.measure(line, collector);
    new AgeingMetrics(recording, line, collector).measure(others);
    new LossMetrics(recording, drives.first(), line, collector).measure();
    new LimitMetrics(recording, collector).measure();
    new WindowMetrics(recording, collector)
        .measure(plan.wishes().windows(), plan.wishes().windows().get(0));
    new SocTimeMetrics(recording, range, collector).measure(plan.wishes().socMarks());
    new DistanceMetrics(recording, range, collector).measure(plan.wishes().distances());
    new StopMetrics(recording, range, collector).measure(plan.wishes().windows());
    StopPhaseMetrics.measure(recording.session(), collector);
    new DriveMetrics(recording, drives, collector).measure(plan);
    new RoadMetrics(recording, drives.first(), reported, range, ofFirst(), collector).measure(plan);
    return collector.numbers();
  }

  /** Compares the stops of the session's day with the first of them. */
  Numbers stops(List<Session> stops, double runShare) {
    return new LaterStopMetrics(recording, stops, caveats, runShare).measure();
  }

  private Numbers rates(Numbers numbers, CommonGround ground) {
    List<SocWindow> windows = new ArrayList<>(plan.wishes().windows());
    ground.windows().stream().filter(w -> !windows.contains(w)).forEach(windows::add);
    return CRateMetrics.of(recording, numbers, windows, caveats);
  }

  private List<Caveat> disagreements(List<CrossCheck> checks) {
    List<Caveat> found = new ArrayList<>();
    for (CrossCheck check : checks) {
      if (check.outcome() instanceof CrossCheck.Compared compared && !compared.agrees()) {
        found.add(
            new Caveat(
                Caveat.Kind.CROSS_CHECK,
                Message.of(
                    "metric.session_metrics.two_differ_by_more_than",
                    check.title(),
                    recording.formatter().value(compared.difference(), check.unit()),
                    NumberFormatter.allowed(compared))));
      }
    }
    return found;
  }
}
