package taperbook.metric.road;

import java.util.List;
import taperbook.i18n.Texts;
import taperbook.plan.Basis;
import taperbook.plan.RoadWishes;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Role;
import taperbook.session.Input;

/** Definitions of the numbers of a trip. */
final class TripMetricNames {
  static final Metric TIME = total("trip_time", Unit.SECOND);
  static final Metric DRIVING = total("trip_driving_time", Unit.SECOND);
  static final Metric CHARGING = total("trip_charging_time", Unit.SECOND);
  static final Metric STOPS = total("trip_stops", Unit.ONE);
  static final Metric ARRIVAL = total("trip_arrival_soc", Unit.PERCENT);
  static final Metric OTHER_STOPS = total("trip_next_best_stops", Unit.ONE);
  static final Metric OTHER_TIME = total("trip_next_best_extra_time", Unit.SECOND);

  /** Numbers that every trip has, whatever its stops. */
  static final List<Metric> OF_THE_WHOLE =
      List.of(TIME, DRIVING, CHARGING, STOPS, ARRIVAL, OTHER_STOPS, OTHER_TIME);

  private TripMetricNames() {}

  /** Returns the location of a stop. */
  static Metric kilometre(int number) {
    return metric(
        RoadWishes.stopId(number, "distance"),
        Texts.of("number.stop_distance", number),
        Unit.KILOMETRE);
  }

  /** Returns the charging time of a stop. */
  static Metric charging(int number) {
    return metric(
        RoadWishes.stopId(number, "time"), Texts.of("number.stop_time", number), Unit.SECOND);
  }

  /** Returns a state of charge of a stop. */
  static Metric stop(int number, String idEnd, String labelKey) {
    return metric(RoadWishes.stopId(number, idEnd), Texts.of(labelKey, number), Unit.PERCENT);
  }

  private static Metric metric(String id, String label, Unit unit) {
    return new Metric(id, label, unit, Method.TRIP_PLAN, Basis.DRIVEN, Input.ROAD);
  }

  private static Metric total(String id, Unit unit) {
    return metric(id, Texts.of("number." + id), unit).in(Role.TRIP);
  }
}
