package taperbook.measure.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import taperbook.model.Estimate;
import taperbook.model.Interval;
import taperbook.model.Numbers;
import taperbook.model.ReportPlan;
import taperbook.model.RoadTopic;
import taperbook.model.RoadWishes;
import taperbook.model.Trip;
import taperbook.model.WantedDistance;

/**
 * The simulated numbers of the road. Where to stop and to unplug was chosen before, on the readings
 * as they stand, and is held fixed: drawn are the clock of the session, the driven range and the
 * speed.
 *
 * <p>The most that a minute buys is not among them and keeps its bounds. The fastest of many short
 * stretches is fast by its rounding errors too, and of 1,000 invented sessions an interval by
 * simulation held the truth in 89 % only.
 */
final class RoadOutputs {
  private static final int SECONDS_PER_HOUR = 3600;

  private final Numbers numbers;
  private final List<Outputs.Output> outputs = new ArrayList<>();

  private RoadOutputs(Numbers numbers) {
    this.numbers = numbers;
  }

  static List<Outputs.Output> of(ReportPlan plan, Numbers numbers) {
    RoadOutputs all = new RoadOutputs(numbers);
    RoadWishes road = plan.wishes().road();
    if (road.wants(RoadTopic.PLUG_IN)) {
      RoadWishes.plugInDistances(plan.style().units()).forEach(all::plugIn);
    }
    if (road.wants(RoadTopic.NEXT_LEG)) {
      plan.wishes().distances().forEach(all::nextLeg);
    }
    road.trip().ifPresent(all::trip);
    return all.outputs;
  }

  private void add(String id, ToDoubleFunction<DrawnSession> value) {
    if (numbers.estimate(id).isPresent()) {
      outputs.add(new Outputs.Output(id, value));
    }
  }

  private static double share(DrawnSession drawn, double kilometres) {
    return 100 * kilometres / drawn.drive().fullRange();
  }

  private static double seconds(DrawnSession drawn, double from, double to) {
    return Math.max(0, drawn.soc().timeOf(to) - drawn.soc().timeOf(from));
  }

  private void plugIn(WantedDistance distance) {
    double km = distance.kilometres();
    for (int from : RoadWishes.PLUG_IN_SOC) {
      add(RoadWishes.plugInId(from, distance), d -> seconds(d, from, from + share(d, km)));
    }
  }

  private void nextLeg(WantedDistance leg) {
    double km = leg.kilometres();
    numbers
        .estimate("best_unplug_soc_" + leg.idPart())
        .map(Estimate::value)
        .ifPresent(
            unplug ->
                add(
                    "best_unplug_time_" + leg.idPart(),
                    d -> seconds(d, unplug - share(d, km), unplug)));
  }

  private void trip(Trip trip) {
    if (numbers.estimate("trip_time").isEmpty()) {
      return;
    }
    FixedPlan plan = FixedPlan.of(trip, numbers);
    double beside = plan.stops() * trip.secondsPerStop();
    // The bounds of the driving time are those of the speed, its correction included.
    double hours = trip.distance().kilometres() * SECONDS_PER_HOUR;
    Interval speeds =
        numbers
            .estimate("trip_driving_time")
            .orElseThrow()
            .bounds()
            .mapMonotone(seconds -> hours / seconds);
    ToDoubleFunction<DrawnSession> driving = d -> hours / d.drive().speedWithin(speeds);
    add("trip_time", d -> plan.charging(d) + driving.applyAsDouble(d) + beside);
    add("trip_driving_time", driving);
    add("trip_charging_time", plan::charging);
    add("trip_arrival_soc", plan::arrival);
    for (int k = 0; k < plan.stops(); k++) {
      int stop = k;
      add(RoadWishes.stopId(k + 1, "arrival_soc"), d -> plan.arrivalAt(d, stop));
      add(RoadWishes.stopId(k + 1, "time"), d -> plan.chargingAt(d, stop));
    }
  }

  /** The stops of a trip as the numbers tell them. */
  private record FixedPlan(
      double start, List<Double> kilometres, List<Double> unplugs, double end) {
    static FixedPlan of(Trip trip, Numbers numbers) {
      List<Double> kilometres = new ArrayList<>();
      List<Double> unplugs = new ArrayList<>();
      int stops = (int) numbers.estimate("trip_stops").orElseThrow().value();
      for (int k = 1; k <= stops; k++) {
        kilometres.add(numbers.estimate(RoadWishes.stopId(k, "distance")).orElseThrow().value());
        unplugs.add(numbers.estimate(RoadWishes.stopId(k, "unplug_soc")).orElseThrow().value());
      }
      return new FixedPlan(trip.startSoc(), kilometres, unplugs, trip.distance().kilometres());
    }

    int stops() {
      return unplugs.size();
    }

    double arrivalAt(DrawnSession drawn, int k) {
      return left(drawn, k - 1, kilometres.get(k));
    }

    double arrival(DrawnSession drawn) {
      return left(drawn, stops() - 1, end);
    }

    private double left(DrawnSession drawn, int stop, double kilometre) {
      double driven = kilometre - (stop < 0 ? 0 : kilometres.get(stop));
      return (stop < 0 ? start : unplugs.get(stop)) - share(drawn, driven);
    }

    double chargingAt(DrawnSession drawn, int k) {
      return seconds(drawn, arrivalAt(drawn, k), unplugs.get(k));
    }

    double charging(DrawnSession drawn) {
      double sum = 0;
      for (int k = 0; k < stops(); k++) {
        sum += chargingAt(drawn, k);
      }
      return sum;
    }
  }
}
