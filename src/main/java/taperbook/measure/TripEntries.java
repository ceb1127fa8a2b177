package taperbook.measure;

import java.util.List;
import taperbook.model.Basis;
import taperbook.model.Method;
import taperbook.model.RoadWishes;
import taperbook.model.Unit;

/** What the numbers of a trip are called. */
final class TripEntries {
  static final Entry TIME = entry("trip_time", "Time for the trip", Unit.SECOND);
  static final Entry DRIVING = entry("trip_driving_time", "Driving time of the trip", Unit.SECOND);
  static final Entry CHARGING =
      entry("trip_charging_time", "Charging time of the trip", Unit.SECOND);
  static final Entry STOPS = entry("trip_stops", "Stops of the trip", Unit.ONE);
  static final Entry ARRIVAL =
      entry("trip_arrival_soc", "State of charge at the end of the trip", Unit.PERCENT);
  static final Entry OTHER_STOPS =
      entry("trip_next_best_stops", "Stops of the next best plan", Unit.ONE);
  static final Entry OTHER_TIME =
      entry("trip_next_best_extra_time", "The next best plan takes more by", Unit.SECOND);

  /** What every trip has, whatever its stops. */
  static final List<Entry> OF_THE_WHOLE =
      List.of(TIME, DRIVING, CHARGING, STOPS, ARRIVAL, OTHER_STOPS, OTHER_TIME);

  private TripEntries() {}

  /** Where a stop is. */
  static Entry kilometre(int number) {
    return entry(
        RoadWishes.stopId(number, "distance"), label(number, "distance driven"), Unit.KILOMETRE);
  }

  /** How long a stop charges. */
  static Entry charging(int number) {
    return entry(RoadWishes.stopId(number, "time"), label(number, "charging time"), Unit.SECOND);
  }

  /** A state of charge of a stop. */
  static Entry stop(int number, String idEnd, String words) {
    return entry(RoadWishes.stopId(number, idEnd), label(number, words), Unit.PERCENT);
  }

  private static String label(int number, String words) {
    return "Stop " + number + " of the trip: " + words;
  }

  private static Entry entry(String id, String label, Unit unit) {
    return new Entry(id, label, unit, Method.TRIP_PLAN, Basis.DRIVEN, Scope.ROAD);
  }
}
