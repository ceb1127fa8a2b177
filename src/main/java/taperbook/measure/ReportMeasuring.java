package taperbook.measure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import taperbook.measure.charging.DoorNumbers;
import taperbook.measure.compare.CurveComparison;
import taperbook.model.Caveat;
import taperbook.model.CommonGround;
import taperbook.model.Numbers;
import taperbook.model.PairResult;
import taperbook.model.RangeTest;
import taperbook.model.ReportPlan;
import taperbook.model.ReportResult;
import taperbook.model.Session;
import taperbook.model.SessionResult;
import taperbook.words.SessionNames;

/** Measures all that a report asks for. The one entrance to this stage. */
public final class ReportMeasuring {
  private ReportMeasuring() {}

  /**
   * Measures the reported session and those it is compared with, and holds them against each other.
   *
   * @param plan what the report asks for
   * @param main the reported session
   * @param compared the sessions it is held against, in order
   * @param rangeTests the range tests that the report names; each session uses the first that was
   *     driven with its own vehicle
   * @return numbers, checks, curves and caveats of each session, and what came of comparing them
   */
  public static ReportResult measure(
      ReportPlan plan, Session main, List<Session> compared, List<RangeTest> rangeTests) {
    return measure(plan, main, compared, rangeTests, Again.NO);
  }

  /**
   * What is different when a report is measured again.
   *
   * @param ground the common ground of a published version, which holds while readings cover it
   * @param redraw which other draws to take; 0 are those of a report
   */
  public record Again(Optional<CommonGround> ground, int redraw) {
    /** Measured for the first time. */
    public static final Again NO = new Again(Optional.empty(), 0);
  }

  /** As {@link #measure(ReportPlan, Session, List, List)}, where something was published before. */
  public static ReportResult measure(
      ReportPlan asked,
      Session main,
      List<Session> compared,
      List<RangeTest> rangeTests,
      Again again) {
    ReportPlan plan =
        DoorNumbers.overhead(main).map(o -> asked.withMeasuredStop(o.value())).orElse(asked);
    int redraw = again.redraw();
    List<SessionMeasuring> sessions = new ArrayList<>();
    sessions.add(new SessionMeasuring(plan, main, main, compared, rangeTests, redraw));
    compared.forEach(
        s -> sessions.add(new SessionMeasuring(plan, s, main, List.of(), rangeTests, redraw)));
    CommonGround ground = GroundSearch.of(sessions, again.ground());
    // Each from its own seeds: made beside each other, they come out as one after the other.
    CompletableFuture<List<PairResult>> pairs =
        CompletableFuture.supplyAsync(() -> pairs(sessions));
    List<SessionResult> results = sessions.parallelStream().map(s -> s.result(ground)).toList();
    return new ReportResult(
        plan, results.get(0), results.subList(1, results.size()), ground, pairs.join());
  }

  /**
   * Measures one session by itself.
   *
   * @param plan what the report asks for
   * @param session the session
   * @param rangeTests the range tests to choose from, by vehicle
   */
  public static Numbers alone(ReportPlan plan, Session session, List<RangeTest> rangeTests) {
    return new SessionMeasuring(plan, session, session, List.of(), rangeTests, 0)
        .numbersWithRates();
  }

  private static List<PairResult> pairs(List<SessionMeasuring> sessions) {
    List<Session> all = sessions.stream().map(s -> s.recording().session()).toList();
    SessionNames names = SessionNames.of(all);
    List<PairResult> pairs = new ArrayList<>();
    for (int i = 1; i < all.size(); i++) {
      Set<Caveat> caveats = new LinkedHashSet<>(sessions.get(0).chargingCaveats());
      caveats.addAll(sessions.get(i).chargingCaveats());
      pairs.add(
          CurveComparison.of(
              sessions.get(0).recording().courses(),
              sessions.get(i).recording().courses(),
              names.words(i),
              List.copyOf(caveats)));
    }
    return pairs;
  }
}
