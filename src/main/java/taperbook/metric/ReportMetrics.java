package taperbook.metric;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import taperbook.format.SessionNames;
import taperbook.metric.comparison.ConditionSimilarity;
import taperbook.metric.comparison.CurveComparison;
import taperbook.metric.comparison.RunCurve;
import taperbook.metric.comparison.RunMetrics;
import taperbook.metric.recording.MetricCollector;
import taperbook.metric.session.StopPhaseMetrics;
import taperbook.plan.ReportPlan;
import taperbook.plan.ReportPlan.Season;
import taperbook.quantity.Unit;
import taperbook.result.CommonGround;
import taperbook.result.Numbers;
import taperbook.result.PairResult;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.Runs;
import taperbook.result.Runs.Spread;
import taperbook.result.SessionResult;
import taperbook.session.Caveat;
import taperbook.session.ConditionItem;
import taperbook.session.RangeTest;
import taperbook.session.Session;

/** Measures everything that a report asks for. The entry point of this stage. */
public final class ReportMetrics {
  private ReportMetrics() {}

  /**
   * Measures the reported session and the compared sessions, and compares them.
   *
   * @param plan the report plan
   * @param main the reported session
   * @param compared the sessions it is compared with, in order
   * @param rangeTests the range tests that the report names; each session uses the first that was
   *     driven with its own vehicle
   * @return numbers, checks, curves and caveats of each session, and the comparisons
   */
  public static ReportResult measure(
      ReportPlan plan, Session main, List<Session> compared, List<RangeTest> rangeTests) {
    return measure(
        plan,
        new Sessions(main, compared, List.of(), List.of(), Season.none()),
        rangeTests,
        Again.NO);
  }

  /**
   * The sessions of a report.
   *
   * @param main the reported session
   * @param compared the sessions it is compared with, in order
   * @param repeats further runs of the reported session, in order
   * @param stops the stops of a day in their order, the reported session among them; may be empty
   * @param season warm and cold runs of the reported car; may be empty
   */
  public record Sessions(
      Session main,
      List<Session> compared,
      List<Session> repeats,
      List<Session> stops,
      Season<Session, RangeTest> season) {
    public Sessions {
      compared = List.copyOf(compared);
      repeats = List.copyOf(repeats);
      stops = List.copyOf(stops);
    }
  }

  /**
   * Options for measuring a report again.
   *
   * @param ground common ground of a published version, which is kept while the readings cover it
   * @param redraw index of an alternative set of draws; 0 is that of a report
   */
  public record Again(Optional<CommonGround> ground, int redraw) {
    /** Options of a first measurement. */
    public static final Again NO = new Again(Optional.empty(), 0);
  }

  /**
   * Measures as {@link #measure(ReportPlan, Session, List, List)}, with repeats or options for
   * measuring again.
   */
  public static ReportResult measure(
      ReportPlan asked, Sessions given, List<RangeTest> rangeTests, Again again) {
    ReportPlan inUnits = temperature(given.main()).map(asked::withTemperature).orElse(asked);
    ReportPlan plan =
        StopPhaseMetrics.overhead(given.main())
            .map(o -> inUnits.withMeasuredStop(o.value()))
            .orElse(inUnits);
    int redraw = again.redraw();
    Session main = given.main();
    List<SessionMetrics> sessions = new ArrayList<>();
    sessions.add(new SessionMetrics(plan, main, main, given.compared(), rangeTests, redraw));
    given
        .compared()
        .forEach(
            s -> sessions.add(new SessionMetrics(plan, s, main, List.of(), rangeTests, redraw)));
    List<SessionMetrics> repeats =
        given.repeats().parallelStream()
            .map(s -> new SessionMetrics(plan, s, main, List.of(), rangeTests, redraw))
            .toList();
    CommonGround ground = CommonGroundFinder.of(sessions, again.ground());
    MetricCollector ofRuns = sessions.get(0).collector();
    Runs runs = runs(plan, sessions.get(0), repeats, ofRuns);
    // Each pair has its own seeds, so parallel execution gives the same result as sequential.
    CompletableFuture<List<PairResult>> pairs =
        CompletableFuture.supplyAsync(() -> pairs(sessions, runs.spread()));
    Numbers none = new Numbers(List.of());
    List<SessionResult> results =
        sessions.parallelStream()
            .map(s -> s.result(ground, s == sessions.get(0) ? ofRuns.numbers() : none))
            .toList();
    double runShare = runs.spread().power();
    Numbers ofSeasons =
        new SeasonMetrics(plan, main, rangeTests, redraw, runShare).measure(given.season());
    return new ReportResult(
        plan,
        results.get(0).with(sessions.get(0).stops(given.stops(), runShare)).with(ofSeasons),
        results.subList(1, results.size()),
        ground,
        withDifferences(pairs.join(), results, ground, plan, runs.spread()),
        runs,
        ConditionSimilarity.unlike(results.stream().map(SessionResult::session).toList()));
  }

  /** Returns the temperature unit that the reported session uses. */
  private static Optional<Unit> temperature(Session session) {
    return session
        .conditions()
        .known(ConditionItem.AMBIENT_TEMPERATURE)
        .or(() -> session.conditions().known(ConditionItem.BATTERY_TEMPERATURE_AT_START))
        .flatMap(f -> Unit.ofSymbol(f.unit()));
  }

  private static List<PairResult> withDifferences(
      List<PairResult> pairs,
      List<SessionResult> results,
      CommonGround ground,
      ReportPlan plan,
      Spread spread) {
    SessionNames names = SessionNames.of(results.stream().map(SessionResult::session).toList());
    List<PairResult> all = new ArrayList<>();
    for (int i = 1; i < results.size(); i++) {
      all.add(
          pairs
              .get(i - 1)
              .with(
                  new PairMetrics(results.get(0), results.get(i), names.words(i), spread)
                      .measure(ground, plan.wishes())));
    }
    return all;
  }

  private static Runs runs(
      ReportPlan plan,
      SessionMetrics main,
      List<SessionMetrics> repeats,
      MetricCollector collector) {
    if (repeats.isEmpty()) {
      Spread stated = RunMetrics.stated(plan.subject().runSpread()).orElse(Spread.NOT_MEASURED);
      return new Runs(List.of(), Optional.empty(), stated);
    }
    List<SessionMetrics> all = new ArrayList<>(List.of(main));
    all.addAll(repeats);
    List<String> differences =
        ConditionSimilarity.differencesOfRuns(
            all.stream().map(s -> s.recording().session()).toList());
    List<String> ids = main.numbers().headline().stream().map(ReportNumber::id).toList();
    Spread spread =
        new RunMetrics(all.stream().map(SessionMetrics::numbers).toList(), differences, collector)
            .add(ids, "average_power_" + plan.wishes().windows().get(0).idPart());
    return new Runs(
        repeats.stream().map(s -> s.asRepeat(ids)).toList(),
        RunCurve.of(all.stream().map(s -> s.recording().courses()).toList()),
        spread);
  }

  /**
   * Measures one session by itself.
   *
   * @param plan the report plan
   * @param session the session
   * @param rangeTests the range tests to choose from, by vehicle
   */
  public static Numbers measureSession(
      ReportPlan plan, Session session, List<RangeTest> rangeTests) {
    return new SessionMetrics(plan, session, session, List.of(), rangeTests, 0).numbersWithRates();
  }

  private static List<PairResult> pairs(List<SessionMetrics> sessions, Spread spread) {
    List<Session> all = sessions.stream().map(s -> s.recording().session()).toList();
    SessionNames names = SessionNames.of(all);
    List<PairResult> pairs = new ArrayList<>();
    for (int i = 1; i < all.size(); i++) {
      Set<Caveat> caveats = new LinkedHashSet<>(sessions.get(0).caveats());
      caveats.addAll(sessions.get(i).caveats());
      pairs.add(
          CurveComparison.of(
              sessions.get(0).recording().courses(),
              sessions.get(i).recording().courses(),
              names.words(i),
              List.copyOf(caveats),
              spread.power()));
    }
    return pairs;
  }
}
