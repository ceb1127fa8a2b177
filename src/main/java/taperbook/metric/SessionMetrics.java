package taperbook.metric;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import taperbook.format.NumberFormatter;
import taperbook.metric.course.Courses;
import taperbook.metric.fit.EnergyFit;
import taperbook.metric.quality.CrossChecks;
import taperbook.metric.quality.DriveCaveats;
import taperbook.metric.quality.SessionCaveats;
import taperbook.metric.recording.EventFinder;
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
 * Measures one session of a report in two steps: first by itself, from which it follows what all
 * sessions have in common, and then on that common ground.
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
   * Measures a session by itself.
   *
   * @param plan what the report asks for
   * @param session the session
   * @param main the reported session, whose car sets the speed of a trip
   * @param others sessions that it is held against for ageing
   * @param rangeTests the range tests to choose from; those of the session's vehicle count
   * @param redraw which other draws to take; 0 are those of a report
   */
  SessionMetrics(
      ReportPlan plan,
      Session session,
      Session main,
      List<Session> others,
      List<RangeTest> rangeTests,
      int redraw) {
    NumberFormatter wording = new NumberFormatter(plan.style());
    this.plan = plan;
    this.isReported = session.name().equals(main.name());
    this.drives = Drives.of(session.vehicle(), rangeTests);
    this.reported = Drives.of(main.vehicle(), rangeTests).first();
    List<RangeTest> agreeing = drives.agreeing();
    this.recording =
        Recording.of(session, new Courses(session, agreeing, Courses.FOR_REPORT, redraw), wording);
    this.range = RangeFigures.of(agreeing, session.displayRounding(), plan.style().basis());
    List<Caveat> all = new ArrayList<>(SessionCaveats.of(recording));
    all.addAll(DriveCaveats.of(drives, wording));
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

  /** The numbers, without those on common ground and without C-rates. */
  Numbers numbers() {
    return effects.numbers();
  }

  /** An empty ledger for more numbers of the session. */
  MetricCollector ledger() {
    return new MetricCollector(recording.session().name(), caveats);
  }

  /** The session as a repeat of another: some of its numbers and its curves. */
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

  /** What concerns numbers of this session, by what they are computed from. */
  List<Caveat> caveats() {
    return caveats;
  }

  /** As {@link #numbers()}, with C-rates. */
  Numbers numbersWithRates() {
    return numbers().plus(rates(numbers(), CommonGround.NONE));
  }

  /**
   * All that is measured of the session, on common ground as well.
   *
   * @param ofRuns numbers over its repeats
   */
  SessionResult result(CommonGround ground, Numbers ofRuns) {
    // Checks are judged by what rounding allows at the most, so by bounds and not by coverage.
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

  /** What the first drive alone came to: its record, legs and energies are of one drive. */
  private RangeFigures ofFirst() {
    return RangeFigures.of(
        drives.first(), recording.session().displayRounding(), range.chosenBasis());
  }

  private Numbers numbers(List<Session> others) {
    MetricCollector ledger = new MetricCollector(recording.session().name(), caveats);
    new PeakMetrics(recording, ledger).measure();
    new SessionTotals(recording, ledger).measure();
    new TaperMetrics(recording, ledger).measure();
    Optional<EnergyFit> line = CapacityMetrics.fit(recording);
    new CapacityMetrics(recording, line, ledger).measure();
    new AgeingMetrics(recording, line, ledger).measure(others);
    new LossMetrics(recording, drives.first(), line, ledger).measure();
    new LimitMetrics(recording, ledger).measure();
    new WindowMetrics(recording, ledger)
        .measure(plan.wishes().windows(), plan.wishes().windows().get(0));
    new SocTimeMetrics(recording, range, ledger).measure(plan.wishes().socMarks());
    new DistanceMetrics(recording, range, ledger).measure(plan.wishes().distances());
    new StopMetrics(recording, range, ledger).measure(plan.wishes().windows());
    StopPhaseMetrics.measure(recording.session(), ledger);
    new DriveMetrics(recording, drives, ledger).measure(plan);
    new RoadMetrics(recording, drives.first(), reported, range, ofFirst(), ledger).measure(plan);
    return ledger.numbers();
  }

  /** The stops of the session's day against the first of them. */
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
                check.title()
                    + ": the two differ by "
                    + recording.wording().value(compared.difference(), check.unit())
                    + ", more than the displays' "
                    + NumberFormatter.allowed(compared)
                    + "."));
      }
    }
    return found;
  }
}
