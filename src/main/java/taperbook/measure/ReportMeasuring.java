package taperbook.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import taperbook.measure.energy.EnergyFit;
import taperbook.measure.simulate.SessionSimulation;
import taperbook.model.Caveat;
import taperbook.model.CrossCheck;
import taperbook.model.Numbers;
import taperbook.model.RangeTest;
import taperbook.model.ReportPlan;
import taperbook.model.ReportResult;
import taperbook.model.RoadTopic;
import taperbook.model.Session;
import taperbook.model.SessionResult;
import taperbook.words.Wording;

/** Measures all that a report asks for. The one entrance to this stage. */
public final class ReportMeasuring {
  private ReportMeasuring() {}

  /**
   * Measures the reported session and those it is compared with.
   *
   * @param plan what the report asks for
   * @param main the reported session
   * @param compared the sessions it is held against, in order
   * @param rangeTests the range tests that the report names; each session uses the first that was
   *     driven with its own vehicle
   * @return numbers, checks, curves and caveats of each session
   */
  public static ReportResult measure(
      ReportPlan plan, Session main, List<Session> compared, List<RangeTest> rangeTests) {
    return new ReportResult(
        plan,
        session(plan, main, compared, rangeTests),
        compared.stream().map(one -> session(plan, one, List.of(), rangeTests)).toList());
  }

  /**
   * Measures one session with bounds only: what rounding and gaps allow at the most, without the
   * coverage intervals and budgets that a simulation takes time for.
   *
   * @param plan what the report asks for
   * @param session the session
   * @param rangeTests the range tests to choose from, by vehicle
   */
  public static Numbers bounded(ReportPlan plan, Session session, List<RangeTest> rangeTests) {
    Recording recording = Recording.of(session, new Wording(plan.style().units()));
    RangeFigures range = RangeFigures.of(testOf(session, rangeTests), plan.style().basis());
    return numbers(
        plan,
        recording,
        testOf(session, rangeTests),
        range,
        List.of(),
        SessionCaveats.of(recording));
  }

  private static Optional<RangeTest> testOf(Session session, List<RangeTest> rangeTests) {
    return rangeTests.stream().filter(t -> t.vehicle().equals(session.vehicle())).findFirst();
  }

  private static SessionResult session(
      ReportPlan plan, Session session, List<Session> others, List<RangeTest> rangeTests) {
    Wording wording = new Wording(plan.style().units());
    Optional<RangeTest> test = testOf(session, rangeTests);
    Recording recording = Recording.of(session, wording);
    RangeFigures range = RangeFigures.of(test, plan.style().basis());
    List<Caveat> caveats = new ArrayList<>(SessionCaveats.of(recording));
    caveats.addAll(DriveCaveats.of(test, wording));
    Numbers bounded = numbers(plan, recording, test, range, others, caveats);
    // Checks are judged by what rounding allows at the most, so by bounds and not by coverage.
    List<CrossCheck> checks =
        new CrossChecks(recording, test, range, bounded).make(plan.wishes().distances());
    Numbers numbers = SessionSimulation.refine(plan, session, test, bounded);
    caveats.addAll(disagreements(checks, wording));
    caveats.sort(Comparator.comparing(Caveat::kind));
    return new SessionResult(
        session,
        test,
        numbers,
        checks,
        new CurveSet(recording, range).make(plan.wishes().road().wants(RoadTopic.PER_MINUTE)),
        caveats);
  }

  private static Numbers numbers(
      ReportPlan plan,
      Recording recording,
      Optional<RangeTest> test,
      RangeFigures range,
      List<Session> others,
      List<Caveat> caveats) {
    Ledger ledger = new Ledger(recording.session().name(), caveats);
    new PeakNumbers(recording, ledger).measure();
    new SessionNumbers(recording, ledger).measure();
    new TaperNumbers(recording, ledger).measure();
    Optional<EnergyFit> line = CapacityNumbers.fit(recording);
    new CapacityNumbers(recording, line, ledger).measure();
    new AgeingNumbers(recording, line, ledger).measure(others);
    new LossNumbers(recording, test, line, ledger).measure();
    new LimitNumbers(recording, ledger).measure();
    new WindowNumbers(recording, ledger).measure(plan.wishes().windows());
    new SocTimeNumbers(recording, range, ledger).measure(plan.wishes().socMarks());
    new DistanceNumbers(recording, range, ledger).measure(plan.wishes().distances());
    new RoadNumbers(recording, test, range, ledger).measure(plan);
    return ledger.numbers();
  }

  private static List<Caveat> disagreements(List<CrossCheck> checks, Wording wording) {
    List<Caveat> found = new ArrayList<>();
    for (CrossCheck check : checks) {
      if (check.outcome() instanceof CrossCheck.Compared compared && !compared.agrees()) {
        found.add(
            new Caveat(
                Caveat.Kind.CROSS_CHECK,
                check.title()
                    + ": the two differ by "
                    + wording.value(compared.difference(), check.unit())
                    + ", more than the displays' rounding allows."));
      }
    }
    return found;
  }
}
