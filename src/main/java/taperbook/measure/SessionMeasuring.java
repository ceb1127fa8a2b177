package taperbook.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import taperbook.measure.capacity.AgeingNumbers;
import taperbook.measure.capacity.CapacityNumbers;
import taperbook.measure.capacity.LossNumbers;
import taperbook.measure.caveat.DriveCaveats;
import taperbook.measure.caveat.SessionCaveats;
import taperbook.measure.charging.CRates;
import taperbook.measure.charging.CommonNumbers;
import taperbook.measure.charging.DistanceNumbers;
import taperbook.measure.charging.DoorNumbers;
import taperbook.measure.charging.LimitNumbers;
import taperbook.measure.charging.PeakNumbers;
import taperbook.measure.charging.SessionNumbers;
import taperbook.measure.charging.SocTimeNumbers;
import taperbook.measure.charging.StopNumbers;
import taperbook.measure.charging.TaperNumbers;
import taperbook.measure.charging.WindowNumbers;
import taperbook.measure.course.Courses;
import taperbook.measure.crosscheck.CrossChecks;
import taperbook.measure.energy.EnergyFit;
import taperbook.measure.ledger.Ledger;
import taperbook.measure.recording.Events;
import taperbook.measure.recording.RangeFigures;
import taperbook.measure.recording.Recording;
import taperbook.measure.travel.DriveNumbers;
import taperbook.measure.travel.RoadNumbers;
import taperbook.model.Caveat;
import taperbook.model.CommonGround;
import taperbook.model.CrossCheck;
import taperbook.model.Curves;
import taperbook.model.Drives;
import taperbook.model.Numbers;
import taperbook.model.RangeTest;
import taperbook.model.ReportNumber;
import taperbook.model.ReportPlan;
import taperbook.model.RoadTopic;
import taperbook.model.Session;
import taperbook.model.SessionResult;
import taperbook.model.SocWindow;
import taperbook.words.Wording;

/**
 * Measures one session of a report in two steps: first by itself, from which it follows what all
 * sessions have in common, and then on that common ground.
 */
final class SessionMeasuring {
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
  SessionMeasuring(
      ReportPlan plan,
      Session session,
      Session main,
      List<Session> others,
      List<RangeTest> rangeTests,
      int redraw) {
    Wording wording = new Wording(plan.style());
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
            s -> new SessionMeasuring(plan, s, main, others, rangeTests, redraw).numbers());
  }

  Recording recording() {
    return recording;
  }

  /** The numbers, without those on common ground and without C-rates. */
  Numbers numbers() {
    return effects.numbers();
  }

  /** An empty ledger for more numbers of the session. */
  Ledger ledger() {
    return new Ledger(recording.session().name(), caveats);
  }

  /** The session as a repeat of another: some of its numbers and its curves. */
  SessionResult asRepeat(List<String> ids) {
    List<ReportNumber> kept = ids.stream().flatMap(i -> numbers().find(i).stream()).toList();
    return new SessionResult(
        recording.session(),
        drives.first(),
        new Numbers(kept),
        List.of(),
        new CurveSet(recording, range).make(),
        caveats);
  }

  /** What concerns numbers of this session, by what they are computed from. */
  List<Caveat> caveats() {
    return caveats;
  }

  /** As {@link #numbers()}, with C-rates. */
  Numbers numbersWithRates() {
    return numbers().and(rates(numbers(), CommonGround.NONE));
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
    Ledger common = new Ledger(recording.session().name(), caveats);
    new CommonNumbers(recording, range, common).measure(ground, plan.wishes());
    Numbers all = numbers().and(ofRuns).and(common.numbers());
    List<Caveat> concerned = new ArrayList<>(caveats);
    concerned.addAll(disagreements(checks));
    concerned.addAll(effects.caveats());
    concerned.sort(Comparator.comparing(Caveat::kind));
    return new SessionResult(
        recording.session(),
        drives,
        all.and(rates(all, ground)),
        checks,
        curves(),
        concerned,
        Events.of(recording.session()));
  }

  private Curves curves() {
    CurveSet curves = new CurveSet(recording, range);
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
    Ledger ledger = new Ledger(recording.session().name(), caveats);
    new PeakNumbers(recording, ledger).measure();
    new SessionNumbers(recording, ledger).measure();
    new TaperNumbers(recording, ledger).measure();
    Optional<EnergyFit> line = CapacityNumbers.fit(recording);
    new CapacityNumbers(recording, line, ledger).measure();
    new AgeingNumbers(recording, line, ledger).measure(others);
    new LossNumbers(recording, drives.first(), line, ledger).measure();
    new LimitNumbers(recording, ledger).measure();
    new WindowNumbers(recording, ledger)
        .measure(plan.wishes().windows(), plan.wishes().windows().get(0));
    new SocTimeNumbers(recording, range, ledger).measure(plan.wishes().socMarks());
    new DistanceNumbers(recording, range, ledger).measure(plan.wishes().distances());
    new StopNumbers(recording, range, ledger).measure(plan.wishes().windows());
    DoorNumbers.measure(recording.session(), ledger);
    new DriveNumbers(recording, drives, ledger).measure(plan);
    new RoadNumbers(recording, drives.first(), reported, range, ofFirst(), ledger).measure(plan);
    return ledger.numbers();
  }

  /** The stops of the session's day against the first of them. */
  Numbers stops(List<Session> stops, double runShare) {
    return new LaterStops(recording, stops, caveats, runShare).measure();
  }

  private Numbers rates(Numbers numbers, CommonGround ground) {
    List<SocWindow> windows = new ArrayList<>(plan.wishes().windows());
    ground.windows().stream().filter(w -> !windows.contains(w)).forEach(windows::add);
    return CRates.of(recording, numbers, windows, caveats);
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
                    + Wording.allowed(compared)
                    + "."));
      }
    }
    return found;
  }
}
