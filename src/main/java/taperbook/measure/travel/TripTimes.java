package taperbook.measure.travel;

import java.util.Optional;
import taperbook.measure.recording.Recording;
import taperbook.measure.recording.SocStretch;
import taperbook.measure.road.TripPlan;
import taperbook.measure.road.TripTask;
import taperbook.model.Estimate;

/** Times and states of charge of a plan that is held fixed, with what the readings allow. */
final class TripTimes {
  private final Recording recording;
  private final TripTask task;
  private final Estimate fullRange;

  TripTimes(Recording recording, TripTask task, Estimate fullRange) {
    this.recording = recording;
    this.task = task;
    this.fullRange = fullRange;
  }

  /** Charging time of all stops, s; empty if the display cannot tell it. */
  Optional<Estimate> charging(TripPlan plan) {
    Estimate sum = Estimate.exactly(0);
    for (int k = 0; k < plan.stops().size(); k++) {
      Optional<Estimate> stop = chargingAt(plan, k);
      if (stop.isEmpty()) {
        return Optional.empty();
      }
      sum = sum.minus(stop.get().times(-1));
    }
    return Optional.of(sum);
  }

  /** Charging time of a stop, s; empty if the display cannot tell it. */
  Optional<Estimate> chargingAt(TripPlan plan, int k) {
    Estimate unplug = Estimate.exactly(plan.stops().get(k).unplugPercent());
    return SocStretch.of(recording, within(arrivalAt(plan, k)), unplug).map(SocStretch::seconds);
  }

  /** Sums of shares may miss the first reading by floating-point error. */
  private Estimate within(Estimate arrival) {
    double first = recording.soc().orElseThrow().firstValue();
    double value = Math.max(first, arrival.value());
    return new Estimate(value, arrival.bounds().hull(value));
  }

  /** State of charge on arrival at a stop, %. */
  Estimate arrivalAt(TripPlan plan, int k) {
    return left(plan, k - 1, plan.stops().get(k).kilometre());
  }

  /** State of charge at the end, %. */
  Estimate arrival(TripPlan plan) {
    return left(plan, plan.stops().size() - 1, task.distanceKilometres());
  }

  /** What is left of the charge that a stop, or the start, was left with. */
  private Estimate left(TripPlan plan, int stop, double kilometre) {
    boolean start = stop < 0;
    double unplug = start ? task.startPercent() : plan.stops().get(stop).unplugPercent();
    double driven = kilometre - (start ? 0 : plan.stops().get(stop).kilometre());
    return Estimate.exactly(unplug).minus(Estimate.exactly(100 * driven).over(fullRange));
  }
}
