package taperbook.prosecheck;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import taperbook.i18n.Message;
import taperbook.plan.Basis;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.Curves;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Numbers;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.Fact;
import taperbook.session.Facts;
import taperbook.session.HowKnown;
import taperbook.session.Origin;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.RowRef;
import taperbook.session.Session;
import taperbook.session.Trace;

final class InventedCharge {
  static final String FILE = "reports/finch.md";
  static final int FIRST_LINE = 12;

  private static final String MAIN = "finch-quarry-lane";
  private static final String EARLIER = "finch-quarry-lane-first";

  // id, unit, value, low, high
  private static final Object[][] NUMBERS = {
    {"peak_power", Unit.KILOWATT, 171, 170.5, 171.5},
    {"peak_reached_soc", Unit.PERCENT, 21, 18, 21.5},
    {"peak_reached_time", Unit.SECOND, 170, 131, 171},
    {"peak_hold_time", Unit.SECOND, 387, 371, 405},
    {"peak_hold_soc_from", Unit.PERCENT, 17, 15.5, 17.7},
    {"peak_hold_soc_to", Unit.PERCENT, 44, 43, 45},
    {"start_soc", Unit.PERCENT, 9, 8.5, 9.5},
    {"end_soc", Unit.PERCENT, 82, 81.5, 82.5},
    {"session_time", Unit.SECOND, 1980, 1979.5, 1980.5},
    {"energy_added", Unit.KILOWATT_HOUR, 44.1, 44.0, 44.2},
    {"implied_full_energy", Unit.KILOWATT_HOUR, 60.4, 59.9, 61.2},
    {"time_soc_10_80", Unit.SECOND, 1862, 1840, 1890},
    {"time_soc_20_80", Unit.SECOND, 1640, 1618, 1662},
    {"average_power_10_80", Unit.KILOWATT, 82.4, 81, 83.8},
    {"soc_average_power_10_80", Unit.KILOWATT, 91.6, 90.4, 92.9},
    {"energy_soc_10_80", Unit.KILOWATT_HOUR, 42.3, 41.7, 42.9},
    {"average_power_20_80", Unit.KILOWATT, 79.8, 78.3, 81.4},
    {"energy_soc_20_80", Unit.KILOWATT_HOUR, 36.3, 35.8, 36.9},
    {"time_to_soc_20", Unit.SECOND, 240, 228, 251},
    {"time_to_soc_30", Unit.SECOND, 370, 358, 383},
    {"time_to_soc_40", Unit.SECOND, 520, 508, 533},
    {"time_to_soc_50", Unit.SECOND, 720, 706, 735},
    {"time_to_soc_60", Unit.SECOND, 990, 974, 1006},
    {"time_to_soc_70", Unit.SECOND, 1380, 1362, 1399},
    {"time_to_soc_80", Unit.SECOND, 1885, 1863, 1908},
    {"power_at_soc_20", Unit.KILOWATT, 170, 168.5, 171},
    {"power_at_soc_50", Unit.KILOWATT, 140, 138, 142},
    {"power_at_soc_60", Unit.KILOWATT, 112, 110, 114},
    {"power_at_soc_70", Unit.KILOWATT, 78, 76.5, 79.5},
    {"power_at_soc_80", Unit.KILOWATT, 48, 47.4, 48.7},
    {"energy_to_soc_80", Unit.KILOWATT_HOUR, 42.9, 42.4, 43.4},
    {"distance_to_soc_80", Unit.KILOMETRE, 251, 248, 254},
    {"consumption", Unit.WATT_HOUR_PER_KILOMETRE, 171.2, 169.4, 173.1},
    {"driven_range_full", Unit.KILOMETRE, 353, 348, 358.5},
    {"soc_for_100_km", Unit.PERCENT, 28.3, 27.9, 28.7},
    {"time_to_add_100_km", Unit.SECOND, 474, 455, 494},
    {"time_to_add_100_km_by_energy", Unit.SECOND, 468, 459, 477},
    {"time_to_add_100_km_rated", Unit.SECOND, 392, 375, 410},
    {"time_to_add_150_km", Unit.SECOND, 765, 740, 791},
    {"time_to_add_150_km_by_energy", Unit.SECOND, 758, 744, 772},
    {"time_to_add_150_km_rated", Unit.SECOND, 610, 590, 631},
    {"time_to_add_100_mi", Unit.SECOND, 845, 818, 873},
    {"time_to_add_100_mi_by_energy", Unit.SECOND, 838, 822, 854},
  };

  private static final Object[][] EARLIER_NUMBERS = {
    {"peak_power", Unit.KILOWATT, 148, 147.5, 148.5},
    {"peak_hold_time", Unit.SECOND, 120, 100, 140},
    {"time_soc_20_80", Unit.SECOND, 1810, 1788, 1833},
  };

  private InventedCharge() {}

  static ReportResult with(String article) {
    return with(article, true);
  }

  /** Returns the same result, with or without an earlier session for comparison. */
  static ReportResult with(String article, boolean compared) {
    ReportPlan plan =
        new ReportPlan(
            "finch",
            new ReportPlan.Heading("Northmoor Finch", "A. Tester", Optional.empty()),
            new ReportPlan.Subject(
                MAIN, compared ? List.of(EARLIER) : List.of(), List.of("finch-ring-road")),
            new ReportPlan.Wishes(
                List.of(
                    new WantedDistance(100, Unit.KILOMETRE),
                    new WantedDistance(150, Unit.KILOMETRE),
                    new WantedDistance(100, Unit.MILE)),
                List.of(20, 30, 40, 50, 60, 70, 80),
                List.of(new SocWindow(10, 80), new SocWindow(20, 80))),
            new ReportPlan.Style(Unit.KILOMETRE, Basis.DRIVEN, "report"),
            new ReportPlan.Article(article, FILE, FIRST_LINE));
    SessionResult main = session(MAIN, "Northmoor Finch, second battery revision", NUMBERS);
    SessionResult earlier =
        session(EARLIER, "Northmoor Finch, first battery revision", EARLIER_NUMBERS);
    return new ReportResult(plan, main, compared ? List.of(earlier) : List.of());
  }

  private static SessionResult session(String name, String vehicle, Object[][] rows) {
    Trace soc =
        new Trace("r.csv", new double[] {0, 1980}, new double[] {9, 82}, new int[] {2, 3}, 0.5, 0);
    return new SessionResult(
        new Session(
            name,
            conditions(vehicle),
            Map.of(Channel.SOC, soc),
            List.of(),
            Interval.between(0, 1980)),
        Optional.of(rangeTest(vehicle)),
        numbers(name, rows),
        List.of(),
        new Curves(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
        List.of());
  }

  private static Numbers numbers(String session, Object[][] rows) {
    List<ReportNumber> numbers = new ArrayList<>();
    for (Object[] row : rows) {
      Estimate estimate =
          new Estimate(number(row[2]), Interval.between(number(row[3]), number(row[4])));
      String id = row[0].toString();
      numbers.add(number(session, id, (Unit) row[1], new Outcome.Measured(estimate, 0.95)));
    }
    numbers.add(
        number(
            session,
            "time_to_soc_90",
            Unit.SECOND,
            new Outcome.Withheld(Message.verbatim("it ended at 82 %"))));
    return new Numbers(numbers);
  }

  private static ReportNumber number(String session, String id, Unit unit, Outcome outcome) {
    return new ReportNumber(
        Metric.charging(id, id.replace('_', ' '), unit, Method.HIGHEST_READING),
        outcome,
        new Origin(session, List.of()),
        List.of());
  }

  private static double number(Object value) {
    return ((Number) value).doubleValue();
  }

  private static Facts<ConditionItem> conditions(String vehicle) {
    Map<ConditionItem, Fact> facts = new EnumMap<>(ConditionItem.class);
    facts.put(ConditionItem.VEHICLE, text(vehicle));
    facts.put(ConditionItem.PLACE, text("Quarry Lane"));
    facts.put(ConditionItem.STATION_RATED_POWER, amount("200", "kW", 200, 0.5));
    facts.put(ConditionItem.VEHICLE_RATED_PEAK_POWER, amount("175", "kW", 175, 0.5));
    facts.put(ConditionItem.ODOMETER, amount("8420", "km", 8420, 0.5));
    facts.put(ConditionItem.AMBIENT_TEMPERATURE, amount("11", "Cel", 11, 0.5));
    facts.put(ConditionItem.BATTERY_TEMPERATURE_AT_START, amount("27", "Cel", 27, 0.5));
    facts.put(ConditionItem.PRECONDITIONING_TIME, amount("25", "min", 1500, 30));
    facts.put(ConditionItem.BATTERY_USABLE_ENERGY, amount("62", "kWh", 62, 0.5));
    return new Facts<>("c.csv", ConditionItem.class, facts);
  }

  private static RangeTest rangeTest(String vehicle) {
    Map<RangeItem, Fact> facts = new EnumMap<>(RangeItem.class);
    facts.put(RangeItem.VEHICLE, text(vehicle));
    facts.put(RangeItem.DISTANCE, amount("314.2", "km", 314.2, 0.05));
    facts.put(RangeItem.START_SOC, amount("96", "%", 96, 0.5));
    facts.put(RangeItem.END_SOC, amount("7", "%", 7, 0.5));
    facts.put(RangeItem.ENERGY_USED, amount("53.8", "kWh", 53.8, 0.05));
    facts.put(RangeItem.AVERAGE_SPEED, amount("108", "km/h", 108, 0.5));
    facts.put(RangeItem.TARGET_SPEED, amount("110", "km/h", 110, 0.5));
    facts.put(RangeItem.AMBIENT_TEMPERATURE, amount("9", "Cel", 9, 0.5));
    facts.put(RangeItem.RATED_RANGE, amount("430", "km", 430, 0.5));
    return new RangeTest(
        "finch-ring-road", new Facts<>("t.csv", RangeItem.class, facts), List.of());
  }

  private static Fact text(String value) {
    return new Fact(value, "", Optional.empty(), HowKnown.MEASURED, new RowRef("c.csv", 2));
  }

  private static Fact amount(String written, String unit, double value, double half) {
    return new Fact(
        written,
        unit,
        Optional.of(Estimate.around(value, half)),
        HowKnown.MEASURED,
        new RowRef("c.csv", 2));
  }
}
