package taperbook.measure.travel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.measure.charging.DistanceNumbers;
import taperbook.measure.ledger.Ledger;
import taperbook.measure.recording.RangeFigures;
import taperbook.measure.recording.Recording;
import taperbook.measure.road.ChargeClock;
import taperbook.measure.road.FastStretch;
import taperbook.model.Basis;
import taperbook.model.Estimate;
import taperbook.model.Input;
import taperbook.model.Interval;
import taperbook.model.Method;
import taperbook.model.Metric;
import taperbook.model.RowRef;
import taperbook.model.Unit;
import taperbook.model.WantedDistance;
import taperbook.words.Labels;

/** Where to unplug before a leg to the next station, so that the charge for it takes least time. */
final class NextLegNumbers {
  /** How much slower is still as good: a minute. */
  private static final double FLAT_SECONDS = 60;

  private final Recording recording;
  private final RangeFigures range;
  private final Ledger ledger;

  NextLegNumbers(Recording recording, RangeFigures range, Ledger ledger) {
    this.recording = recording;
    this.range = range;
    this.ledger = ledger;
  }

  void measure(List<WantedDistance> legs, int reserve) {
    legs.forEach(leg -> measure(leg, reserve));
  }

  private void measure(WantedDistance leg, int reserve) {
    Optional<Estimate> share = DistanceNumbers.share(leg, range.fullRange());
    Optional<ChargeClock> clock = recording.clock();
    if (share.isEmpty() || clock.isEmpty()) {
      withhold(
          leg,
          share.isEmpty() ? range.fullRange().withheld().orElseThrow() : recording.whyNoClock());
      return;
    }
    Optional<FastStretch> best = FastStretch.of(clock.get(), share.get().value(), reserve);
    Optional<List<RowRef>> rows =
        best.flatMap(b -> recording.rowsBetween(b.fromPercent(), b.toPercent()));
    if (best.isEmpty() || rows.isEmpty()) {
      withhold(
          leg,
          "it takes "
              + recording.wording().value(share.get(), Unit.PERCENT)
              + ", and the session holds no such stretch that begins at "
              + reserve
              + " % or more");
      return;
    }
    enter(leg, best.get(), rows.get(), best.get().endsWithin(clock.get(), reserve, FLAT_SECONDS));
  }

  /** Unplugged at a fixed point; where one arrives is known as well as the share. */
  private void enter(WantedDistance leg, FastStretch best, List<RowRef> stretch, Interval flat) {
    List<RowRef> rows = new ArrayList<>(stretch);
    rows.addAll(range.fullRange().rows());
    double unplug = best.toPercent();
    ledger.measured(soc(leg, "", "number.best_unplug_soc"), exactly(unplug), rows);
    ledger.enter(
        time(leg),
        recording.measure(d -> d.seconds(unplug - d.share(leg.kilometres()), unplug)),
        rows);
    ledger.measured(soc(leg, "_from", "number.best_unplug_soc_from"), exactly(flat.low()), rows);
    ledger.measured(soc(leg, "_to", "number.best_unplug_soc_to"), exactly(flat.high()), rows);
  }

  private static Estimate exactly(double percent) {
    return Estimate.exactly(percent);
  }

  private void withhold(WantedDistance leg, String reason) {
    ledger.withheld(soc(leg, "", "number.best_unplug_soc"), reason);
    ledger.withheld(time(leg), reason);
    ledger.withheld(soc(leg, "_from", "number.best_unplug_soc_from"), reason);
    ledger.withheld(soc(leg, "_to", "number.best_unplug_soc_to"), reason);
  }

  private static Metric soc(WantedDistance leg, String idEnd, String labelKey) {
    return new Metric(
        "best_unplug_soc_" + leg.idPart() + idEnd,
        Labels.of(labelKey, leg.words()),
        Unit.PERCENT,
        Method.BEST_UNPLUG,
        Basis.DRIVEN,
        Input.ROAD);
  }

  private static Metric time(WantedDistance leg) {
    return new Metric(
        "best_unplug_time_" + leg.idPart(),
        Labels.of("number.best_unplug_time", leg.words()),
        Unit.SECOND,
        Method.BEST_UNPLUG,
        Basis.DRIVEN,
        Input.ROAD);
  }
}
