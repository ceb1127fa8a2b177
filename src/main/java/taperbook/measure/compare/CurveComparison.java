package taperbook.measure.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.measure.compare.PairLedger.Heading;
import taperbook.model.Caveat;
import taperbook.model.Curve;
import taperbook.model.Estimate;
import taperbook.model.Interval;
import taperbook.model.Method;
import taperbook.model.PairResult;
import taperbook.model.RowRef;
import taperbook.model.Session;
import taperbook.model.Stretch;
import taperbook.model.Unit;

/**
 * Holds the power curve of a session against that of another. The one entrance to this package.
 *
 * <p>Every interval comes from the same drawn pairs of sessions. They are meant to hold in 95 % of
 * cases: the stretches and crossings all together, each other number by itself.
 */
public final class CurveComparison {
  private static final double COVERAGE = 0.95;

  /** Draws of a pair: the share that the band covers is then known to a third of a per cent. */
  private static final int TRIALS = 4000;

  private static final double COVERAGE_OF_BOUNDS = 1;

  /** Less than this in common is nothing to compare, %. */
  private static final double LEAST_PERCENT = 1;

  private final Session session;
  private final Session other;
  private final String name;
  private final PairLedger ledger;

  private CurveComparison(Session session, Session other, String name, List<Caveat> caveats) {
    this.session = session;
    this.other = other;
    this.name = name;
    this.ledger = new PairLedger(session.name(), other.name(), caveats);
  }

  /**
   * Compares two sessions.
   *
   * @param session the reported session
   * @param other the session it is held against
   * @param name what the other is called in labels, a few words
   * @param caveats what concerns the charging of either
   */
  public static PairResult of(Session session, Session other, String name, List<Caveat> caveats) {
    return of(session, other, name, caveats, TRIALS);
  }

  static PairResult of(
      Session session, Session other, String name, List<Caveat> caveats, int trials) {
    return new CurveComparison(session, other, name, caveats).result(trials);
  }

  private PairResult result(int trials) {
    Optional<Side> one = Side.of(session);
    Optional<Side> two = Side.of(other);
    if (one.isEmpty() || two.isEmpty()) {
      return nothing(Side.whyNot(one.isEmpty() ? session : other));
    }
    Estimate from = later(one.get().start(), two.get().start());
    Estimate to = earlier(one.get().end(), two.get().end());
    if (to.value() - from.value() < LEAST_PERCENT) {
      return nothing("the two sessions share less than 1 % of state of charge");
    }
    Interval window = new Interval(from.value(), to.value());
    Pair pair = new Pair(one.get(), two.get(), window, trials);
    shared(pair, from, to);
    List<Stretches.Span> spans = Stretches.of(pair.band());
    return new PairResult(
        other.name(),
        Optional.of(window),
        stretches(pair, spans),
        crossings(pair, spans),
        Optional.of(DifferenceCurve.of(pair)),
        ledger.numbers());
  }

  private PairResult nothing(String why) {
    for (Heading heading : List.of(sharedFrom(), sharedTo(), meanLead(), timeGain())) {
      ledger.withheld(heading, why);
    }
    Optional<Curve> none = Optional.empty();
    return new PairResult(
        other.name(), Optional.empty(), List.of(), List.of(), none, ledger.numbers());
  }

  private static Estimate later(Estimate a, Estimate b) {
    Interval bounds =
        new Interval(
            Math.max(a.bounds().low(), b.bounds().low()),
            Math.max(a.bounds().high(), b.bounds().high()));
    return new Estimate(Math.max(a.value(), b.value()), bounds);
  }

  private static Estimate earlier(Estimate a, Estimate b) {
    return later(a.times(-1), b.times(-1)).times(-1);
  }

  private Heading sharedFrom() {
    return new Heading(
        "shared_soc_from",
        "States of charge that this session shares with " + name + ": from",
        Unit.PERCENT,
        Method.SHARED_WINDOW);
  }

  private Heading sharedTo() {
    return new Heading(
        "shared_soc_to",
        "States of charge that this session shares with " + name + ": until",
        Unit.PERCENT,
        Method.SHARED_WINDOW);
  }

  private Heading meanLead() {
    return new Heading(
        "mean_lead_shared",
        "Mean power of this session less that of " + name + ", over all that both went through",
        Unit.KILOWATT,
        Method.POWER_LEAD);
  }

  private Heading timeGain() {
    return new Heading(
        "time_gain_shared",
        "Time of " + name + " less that of this session, over all that both went through",
        Unit.SECOND,
        Method.TIME_GAIN);
  }

  private void shared(Pair pair, Estimate from, Estimate to) {
    double low = from.value();
    double high = to.value();
    ledger.measured(sharedFrom(), from, COVERAGE_OF_BOUNDS, pair.rows(low, low));
    ledger.measured(sharedTo(), to, COVERAGE_OF_BOUNDS, pair.rows(high, high));
    List<RowRef> rows = pair.rows(low, high);
    ledger.measured(meanLead(), pair.meanLead(low, high), COVERAGE, rows);
    ledger.measured(timeGain(), pair.timeGain(low, high), COVERAGE, rows);
  }

  private List<Stretch> stretches(Pair pair, List<Stretches.Span> spans) {
    List<Stretch> stretches = new ArrayList<>();
    int led = 0;
    for (Stretches.Span span : spans) {
      Optional<Stretch.Ids> ids = Optional.empty();
      if (span.isLed()) {
        led++;
        ids = Optional.of(lead(pair, span, led));
      }
      stretches.add(new Stretch(span.order(), span.from(), span.to(), ids));
    }
    return stretches;
  }

  private Stretch.Ids lead(Pair pair, Stretches.Span span, int k) {
    String id = "lead_" + k + "_";
    Stretch.Ids ids =
        new Stretch.Ids(id + "soc_from", id + "soc_to", id + "power", id + "time_gain");
    String which = span.order() == Stretch.Order.AHEAD ? "ahead of " : "behind ";
    String label = "Stretch " + k + ", this session " + which + name + ": ";
    double from = span.from();
    double to = span.to();
    List<RowRef> rows = pair.rows(from, to);
    Method stretch = Method.LEAD_STRETCH;
    ledger.measured(
        new Heading(ids.from(), label + "from", Unit.PERCENT, stretch),
        Estimate.exactly(from),
        COVERAGE,
        rows);
    ledger.measured(
        new Heading(ids.to(), label + "until", Unit.PERCENT, stretch),
        Estimate.exactly(to),
        COVERAGE,
        rows);
    ledger.measured(
        new Heading(
            ids.lead(), label + "mean difference in power", Unit.KILOWATT, Method.POWER_LEAD),
        pair.meanLead(from, to),
        COVERAGE,
        rows);
    ledger.measured(
        new Heading(ids.gain(), label + "time gained", Unit.SECOND, Method.TIME_GAIN),
        pair.timeGain(from, to),
        COVERAGE,
        rows);
    return ids;
  }

  private List<String> crossings(Pair pair, List<Stretches.Span> spans) {
    List<String> ids = new ArrayList<>();
    for (Estimate crossing : CurveCrossing.all(pair.band(), spans)) {
      int k = ids.size() + 1;
      String id = "crossing_" + k + "_soc";
      ledger.measured(
          new Heading(
              id,
              "Crossing " + k + " of this session's curve with that of " + name,
              Unit.PERCENT,
              Method.CURVE_CROSSING),
          crossing,
          COVERAGE,
          pair.rows(crossing.bounds().low(), crossing.bounds().high()));
      ids.add(id);
    }
    return ids;
  }
}
