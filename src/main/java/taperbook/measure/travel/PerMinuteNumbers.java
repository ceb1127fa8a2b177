package taperbook.measure.travel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import taperbook.measure.ledger.Entry;
import taperbook.measure.ledger.Ledger;
import taperbook.measure.ledger.Scope;
import taperbook.measure.recording.RangeFigures;
import taperbook.measure.recording.Recording;
import taperbook.measure.recording.SocStretch;
import taperbook.measure.recording.TenPercent;
import taperbook.measure.road.ChargeClock;
import taperbook.measure.road.FastStretch;
import taperbook.measure.road.SlowFrom;
import taperbook.model.Basis;
import taperbook.model.Estimate;
import taperbook.model.Interval;
import taperbook.model.Method;
import taperbook.model.RowRef;
import taperbook.model.Unit;
import taperbook.words.Labels;

/** How much road a minute of charging buys: where most, and where only half as much. */
final class PerMinuteNumbers {
  private static final Entry BEST =
      entry(
          "road_per_minute_best",
          Labels.of("number.road_per_minute_best"),
          Unit.KILOMETRE_PER_MINUTE);
  private static final Entry FROM =
      entry(
          "road_per_minute_best_soc_from",
          Labels.of("number.road_per_minute_best_soc_from"),
          Unit.PERCENT);
  private static final Entry TO =
      entry(
          "road_per_minute_best_soc_to",
          Labels.of("number.road_per_minute_best_soc_to"),
          Unit.PERCENT);
  private static final Entry HALF =
      entry("road_per_minute_half_soc", Labels.of("number.road_per_minute_half_soc"), Unit.PERCENT);

  private final Recording recording;
  private final RangeFigures range;
  private final Ledger ledger;

  PerMinuteNumbers(Recording recording, RangeFigures range, Ledger ledger) {
    this.recording = recording;
    this.range = range;
    this.ledger = ledger;
  }

  private static Entry entry(String id, String label, Unit unit) {
    return new Entry(id, label, unit, Method.ROAD_PER_MINUTE, Basis.DRIVEN, Scope.ROAD);
  }

  void measure() {
    Optional<ChargeClock> clock = recording.soc().flatMap(ChargeClock::of);
    Optional<Estimate> full = range.fullRange().estimate();
    if (clock.isEmpty() || full.isEmpty()) {
      withhold(
          full.isEmpty() ? range.fullRange().withheld().orElseThrow() : recording.whyNoClock());
      return;
    }
    Optional<FastStretch> best = FastStretch.of(clock.get(), TenPercent.WIDTH, clock.get().low());
    Optional<SocStretch> time =
        best.flatMap(b -> TenPercent.from(recording, b.fromPercent()))
            .filter(t -> t.seconds().bounds().low() > 0);
    if (best.isEmpty() || time.isEmpty()) {
      withhold("the session gained too little to time a stretch of 10 %");
      return;
    }
    List<RowRef> rows = new ArrayList<>(time.get().rows());
    rows.addAll(range.fullRange().rows());
    ledger.measured(BEST, TenPercent.kilometresPerMinute(full.get(), time.get()), rows);
    ledger.measured(FROM, Estimate.exactly(best.get().fromPercent()), rows);
    ledger.measured(TO, Estimate.exactly(best.get().toPercent()), rows);
    half(new TenPercent(recording, clock.get()), time.get(), best.get().seconds());
  }

  private void half(TenPercent stretches, SocStretch best, double bestSeconds) {
    Interval fastest = best.seconds().bounds();
    OptionalDouble at = SlowFrom.of(stretches.middles(), stretches.seconds(), 2 * bestSeconds);
    OptionalDouble earliest = SlowFrom.of(stretches.middles(), stretches.most(), 2 * fastest.low());
    OptionalDouble latest = SlowFrom.of(stretches.middles(), stretches.least(), 2 * fastest.high());
    if (at.isEmpty() || earliest.isEmpty() || latest.isEmpty()) {
      ledger.withheld(HALF, "the readings do not end surely below half of the most");
      return;
    }
    double value = at.getAsDouble();
    Interval bounds = new Interval(earliest.getAsDouble(), latest.getAsDouble()).hull(value);
    List<RowRef> rows = new ArrayList<>(best.rows());
    rows.addAll(stretches.rowsAt(value));
    ledger.measured(HALF, new Estimate(value, bounds), rows);
  }

  private void withhold(String reason) {
    List.of(BEST, FROM, TO, HALF).forEach(entry -> ledger.withheld(entry, reason));
  }
}
