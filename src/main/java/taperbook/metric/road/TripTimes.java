package taperbook.metric.road;

import taperbook.metric.course.Draw;
import taperbook.metric.trip.TripPlan;
import taperbook.metric.trip.TripTask;

/** Times and states of charge of a fixed plan in a draw. */
final class TripTimes {
  private final TripTask task;
  private final TripPlan plan;

  TripTimes(TripTask task, TripPlan plan) {
    this.task = task;
    this.plan = plan;
  }

  /** Returns the charging time of all stops, s. */
  double charging(Draw draw) {
    double sum = 0;
    for (int k = 0; k < plan.stops().size(); k++) {
      sum += chargingAt(draw, k);
    }
    return sum;
  }

  /** Returns the charging time of a stop, s. */
  double chargingAt(Draw draw, int k) {
    return draw.seconds(arrivalAt(draw, k), plan.stops().get(k).unplugPercent());
  }

  /** Returns the state of charge on arrival at a stop, %. */
  double arrivalAt(Draw draw, int k) {
    return left(draw, k - 1, plan.stops().get(k).kilometre());
  }

  /** Returns the state of charge at the end, %. */
  double arrival(Draw draw) {
    return left(draw, plan.stops().size() - 1, task.distanceKilometres());
  }

  /** Returns the charge left from the departure charge of a stop, or of the start. */
  private double left(Draw draw, int stop, double kilometre) {
    boolean start = stop < 0;
    double unplug = start ? task.startPercent() : plan.stops().get(stop).unplugPercent();
    double driven = kilometre - (start ? 0 : plan.stops().get(stop).kilometre());
    return unplug - draw.share(driven);
  }
}
