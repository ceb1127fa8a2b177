package taperbook.output;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import taperbook.quantity.Estimate;
import taperbook.session.ConditionItem;
import taperbook.session.Fact;
import taperbook.session.Facts;
import taperbook.session.HowKnown;
import taperbook.session.Leg;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.RowRef;

final class InventedFacts {
  private InventedFacts() {}

  static Facts<ConditionItem> conditions(String session, String vehicle, String date) {
    String file = "sessions/" + session + "/conditions.csv";
    Map<ConditionItem, Fact> facts = new EnumMap<>(ConditionItem.class);
    facts.put(ConditionItem.DATE, fact(file, 2, date, "", HowKnown.MEASURED));
    facts.put(ConditionItem.PLACE, fact(file, 3, "Quarry Lane station", "", HowKnown.MEASURED));
    facts.put(ConditionItem.VEHICLE, fact(file, 4, vehicle, "", HowKnown.MEASURED));
    facts.put(ConditionItem.ODOMETER, fact(file, 5, "8420", "km", HowKnown.DISPLAYED));
    facts.put(
        ConditionItem.STATION_RATED_POWER, fact(file, 6, "200", "kW", HowKnown.FROM_THE_MAKER));
    facts.put(ConditionItem.STATION_SHARED, fact(file, 7, "no", "", HowKnown.MEASURED));
    facts.put(ConditionItem.AMBIENT_TEMPERATURE, fact(file, 8, "11", "Cel", HowKnown.DISPLAYED));
    facts.put(
        ConditionItem.BATTERY_TEMPERATURE_AT_START, fact(file, 9, "", "Cel", HowKnown.UNKNOWN));
    facts.put(ConditionItem.PRECONDITIONED, fact(file, 10, "yes", "", HowKnown.DISPLAYED));
    facts.put(ConditionItem.READ_FROM, fact(file, 11, "film", "", HowKnown.MEASURED));
    return new Facts<>(file, ConditionItem.class, facts);
  }

  static RangeTest rangeTest() {
    String file = "sessions/finch-ring-road/range-test.csv";
    Map<RangeItem, Fact> facts = new EnumMap<>(RangeItem.class);
    facts.put(RangeItem.DATE, fact(file, 2, "2026-05-02", "", HowKnown.MEASURED));
    facts.put(RangeItem.VEHICLE, fact(file, 3, "Northmoor Finch", "", HowKnown.MEASURED));
    facts.put(RangeItem.DISTANCE, fact(file, 4, "334.5", "km", HowKnown.DISPLAYED));
    facts.put(RangeItem.START_SOC, fact(file, 5, "92", "%", HowKnown.DISPLAYED));
    facts.put(RangeItem.END_SOC, fact(file, 6, "11", "%", HowKnown.DISPLAYED));
    facts.put(RangeItem.ENERGY_USED, fact(file, 7, "51.0", "kWh", HowKnown.DISPLAYED));
    facts.put(RangeItem.AVERAGE_SPEED, fact(file, 8, "108", "km/h", HowKnown.MEASURED));
    facts.put(RangeItem.AMBIENT_TEMPERATURE, fact(file, 9, "12", "Cel", HowKnown.DISPLAYED));
    facts.put(RangeItem.WIND_SPEED, fact(file, 10, "", "m/s", HowKnown.UNKNOWN));
    facts.put(RangeItem.ROUTE, fact(file, 11, "loop", "", HowKnown.MEASURED));
    facts.put(RangeItem.RATED_RANGE, fact(file, 12, "470", "km", HowKnown.FROM_THE_MAKER));
    return new RangeTest(
        "finch-ring-road",
        new Facts<>(file, RangeItem.class, facts),
        List.of(
            leg("laps 1 to 4", 2, 166.8, 5560, 25.2, 92, 52),
            leg("laps 5 to 8", 3, 167.7, 5590, 25.8, 52, 11)));
  }

  private static Leg leg(
      String name, int line, double km, double seconds, double kwh, double from, double to) {
    return new Leg(
        name,
        Estimate.around(km, 0.05),
        Optional.of(Estimate.around(seconds, 5)),
        Optional.of(Estimate.around(kwh, 0.05)),
        Optional.of(new Leg.Span(Estimate.around(from, 0.5), Estimate.around(to, 0.5))),
        new RowRef("sessions/finch-ring-road/legs.csv", line));
  }

  private static Fact fact(String file, int line, String value, String unit, HowKnown known) {
    return new Fact(value, unit, Optional.empty(), known, new RowRef(file, line));
  }
}
