package taperbook.measure.travel;

import java.util.List;
import taperbook.measure.ledger.Entry;
import taperbook.measure.ledger.Scope;
import taperbook.model.Basis;
import taperbook.model.Method;
import taperbook.model.RoadWishes;
import taperbook.model.Unit;
import taperbook.words.Labels;

/** What the numbers of a trip are called. */
final class TripEntries {
  static final Entry TIME = entry("trip_time", Labels.of("number.trip_time"), Unit.SECOND);
  static final Entry DRIVING =
      entry("trip_driving_time", Labels.of("number.trip_driving_time"), Unit.SECOND);
  static final Entry CHARGING =
      entry("trip_charging_time", Labels.of("number.trip_charging_time"), Unit.SECOND);
  static final Entry STOPS = entry("trip_stops", Labels.of("number.trip_stops"), Unit.ONE);
  static final Entry ARRIVAL =
      entry("trip_arrival_soc", Labels.of("number.trip_arrival_soc"), Unit.PERCENT);
  static final Entry OTHER_STOPS =
      entry("trip_next_best_stops", Labels.of("number.trip_next_best_stops"), Unit.ONE);
  static final Entry OTHER_TIME =
      entry(
          "trip_next_best_extra_time", Labels.of("number.trip_next_best_extra_time"), Unit.SECOND);

  /** What every trip has, whatever its stops. */
  static final List<Entry> OF_THE_WHOLE =
      List.of(TIME, DRIVING, CHARGING, STOPS, ARRIVAL, OTHER_STOPS, OTHER_TIME);

  private TripEntries() {}

  /** Where a stop is. */
  static Entry kilometre(int number) {
    return entry(
        RoadWishes.stopId(number, "distance"),
        Labels.of("number.stop_distance", number),
        Unit.KILOMETRE);
  }

  /** How long a stop charges. */
  static Entry charging(int number) {
    return entry(
        RoadWishes.stopId(number, "time"), Labels.of("number.stop_time", number), Unit.SECOND);
  }

  /** A state of charge of a stop. */
  static Entry stop(int number, String idEnd, String labelKey) {
    return entry(RoadWishes.stopId(number, idEnd), Labels.of(labelKey, number), Unit.PERCENT);
  }

  private static Entry entry(String id, String label, Unit unit) {
    return new Entry(id, label, unit, Method.TRIP_PLAN, Basis.DRIVEN, Scope.ROAD);
  }
}
