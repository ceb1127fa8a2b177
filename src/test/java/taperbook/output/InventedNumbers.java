package taperbook.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import taperbook.i18n.Message;
import taperbook.plan.Basis;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Numbers;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.result.Role;
import taperbook.session.Caveat;
import taperbook.session.Input;
import taperbook.session.Origin;
import taperbook.session.RowRef;

/** Numbers of an invented session, set by hand and not measured. */
final class InventedNumbers {
  private final String session;
  private final List<Caveat> caveats;
  private final List<ReportNumber> numbers = new ArrayList<>();

  InventedNumbers(String session, List<Caveat> caveats) {
    this.session = session;
    this.caveats = caveats;
  }

  Numbers full() {
    ends();
    peak();
    milestones();
    window();
    range();
    distances();
    return new Numbers(numbers);
  }

  /** A session that started at a higher state of charge and recorded less. */
  Numbers poorer() {
    add(
        "start_soc",
        "State of charge at the start",
        Unit.PERCENT,
        Method.END_READING,
        34,
        33.5,
        34.5);
    add("end_soc", "State of charge at the end", Unit.PERCENT, Method.END_READING, 80, 79.5, 80.5);
    add("peak_power", "Peak power", Unit.KILOWATT, Method.HIGHEST_READING, 121, 120.5, 121.5);
    add("peak_hold_time", "Time the peak was held", Unit.SECOND, Method.HOLD, 180, 120, 260);
    withheld(
        "time_soc_10_80",
        "Time from 10 to 80 %",
        Unit.SECOND,
        Method.WINDOW_TIME,
        "the session began at 34 %, above 10 %");
    withheld(
        "average_power_10_80",
        "Average power from 10 to 80 %",
        Unit.KILOWATT,
        Method.TIME_AVERAGE,
        "the session began at 34 %, above 10 %");
    return new Numbers(numbers);
  }

  private void ends() {
    add(
        "start_soc",
        "State of charge at the start",
        Unit.PERCENT,
        Method.END_READING,
        12,
        11.5,
        12.5);
    add("end_soc", "State of charge at the end", Unit.PERCENT, Method.END_READING, 90, 89.5, 90.5);
    add(
        "session_time",
        "Time from plugging in to the last reading",
        Unit.SECOND,
        Method.RECORDED_TIME,
        2475,
        2474.5,
        2475.5);
    add(
        "energy_added",
        "Energy added",
        Unit.KILOWATT_HOUR,
        Method.ENERGY_COUNTER,
        49.3,
        49.2,
        49.4);
    add(
        "energy_per_soc",
        "Energy for each per cent",
        Unit.KILOWATT_HOUR_PER_PERCENT,
        Method.ENERGY_SHARE,
        0.632,
        0.623,
        0.641);
    add(
        "implied_full_energy",
        "Implied energy of a full charge",
        Unit.KILOWATT_HOUR,
        Method.ENERGY_SHARE,
        63.2,
        62.3,
        64.1);
  }

  private void peak() {
    add("peak_power", "Peak power", Unit.KILOWATT, Method.HIGHEST_READING, 128, 127.5, 128.5);
    add(
        "peak_reached_soc",
        "State of charge at the peak",
        Unit.PERCENT,
        Method.FIRST_AT_PEAK,
        24,
        20.5,
        24.5);
    add(
        "peak_reached_time",
        "Time to the peak",
        Unit.SECOND,
        Method.FIRST_AT_PEAK,
        330,
        240,
        330.5);
    add("peak_hold_time", "Time the peak was held", Unit.SECOND, Method.HOLD, 405, 330, 520);
    add("peak_hold_soc_from", "Peak held from", Unit.PERCENT, Method.HOLD, 24, 20.5, 24.5);
    add("peak_hold_soc_to", "Peak held to", Unit.PERCENT, Method.HOLD, 46, 45.5, 50.5);
  }

  private void milestones() {
    double[][] rows = {
      {20, 245, 212, 281, 5.1, 4.6, 5.7, 118, 104, 128, 33, 29, 36},
      {40, 676, 640, 712, 17.7, 17.1, 18.3, 127, 124, 128.5, 116, 112, 120},
      {60, 1130, 1092, 1171, 30.4, 29.8, 31, 92, 88, 97, 198, 193, 203},
      {80, 1842, 1801, 1884, 43.0, 42.4, 43.6, 54, 51, 58, 281, 275, 287}
    };
    for (double[] r : rows) {
      int soc = (int) r[0];
      add(
          "time_to_soc_" + soc,
          "Time from plugging in to " + soc + " %",
          Unit.SECOND,
          Method.SOC_CROSSING,
          r[1],
          r[2],
          r[3]);
      add(
          "energy_to_soc_" + soc,
          "Energy added to " + soc + " %",
          Unit.KILOWATT_HOUR,
          Method.ENERGY_COUNTER,
          r[4],
          r[5],
          r[6]);
      add(
          "power_at_soc_" + soc,
          "Power at " + soc + " %",
          Unit.KILOWATT,
          Method.INTERPOLATION,
          r[7],
          r[8],
          r[9]);
      add(
          "distance_to_soc_" + soc,
          "Distance added to " + soc + " %",
          Unit.KILOMETRE,
          Method.SOC_SHARE,
          r[10],
          r[11],
          r[12]);
    }
    withheld(
        "time_to_soc_100",
        "Time from plugging in to 100 %",
        Unit.SECOND,
        Method.SOC_CROSSING,
        "the readings end at 90 %");
    withheld(
        "energy_to_soc_100",
        "Energy added to 100 %",
        Unit.KILOWATT_HOUR,
        Method.ENERGY_COUNTER,
        "the readings end at 90 %");
  }

  private void window() {
    withheld(
        "time_soc_10_80",
        "Time from 10 to 80 %",
        Unit.SECOND,
        Method.WINDOW_TIME,
        "the session began at 12 %, above 10 %");
    add(
        "time_soc_20_80",
        "Time from 20 to 80 %",
        Unit.SECOND,
        Method.WINDOW_TIME,
        1597,
        1520,
        1672);
    add(
        "average_power_20_80",
        "Average power from 20 to 80 %",
        Unit.KILOWATT,
        Method.TIME_AVERAGE,
        85.4,
        79.1,
        92.3);
    add(
        "soc_average_power_20_80",
        "Mean power over state of charge from 20 to 80 %",
        Unit.KILOWATT,
        Method.SOC_AVERAGE,
        95.1,
        91,
        99.5);
    add(
        "energy_soc_20_80",
        "Energy from 20 to 80 %",
        Unit.KILOWATT_HOUR,
        Method.ENERGY_COUNTER,
        37.9,
        36.7,
        39);
  }

  private void range() {
    add(
        Basis.DISPLAYED,
        "consumption",
        "Consumption of the range test",
        Unit.WATT_HOUR_PER_KILOMETRE,
        Method.CONSUMPTION,
        152.6,
        150.8,
        154.5);
    add(
        Basis.DRIVEN,
        "driven_range_full",
        "Driven range of a full battery",
        Unit.KILOMETRE,
        Method.DRIVEN_RANGE,
        413,
        406.7,
        419.6);
  }

  private void distances() {
    distance("150_km", 150, 36.3, 35.7, 36.9, 830, 780, 884, 862, 820, 905, 702, 660, 748);
    distance("300_km", 300, 72.6, 71.4, 73.8, 2010, 1948, 2080, 2075, 2001, 2147, 1610, 1560, 1668);
  }

  private void distance(String id, int km, double... v) {
    String words = km + " km";
    add(
        Basis.DRIVEN,
        "soc_for_" + id,
        "State of charge for " + words,
        Unit.PERCENT,
        Method.SOC_SHARE,
        v[0],
        v[1],
        v[2]);
    add(
        Basis.DRIVEN,
        "time_to_add_" + id,
        "Time to add " + words,
        Unit.SECOND,
        Method.TIME_TO_ADD_BY_SHARE,
        v[3],
        v[4],
        v[5]);
    add(
        Basis.ENERGY,
        "time_to_add_" + id + "_by_energy",
        "Time to add " + words + " by energy",
        Unit.SECOND,
        Method.TIME_TO_ADD_BY_ENERGY,
        v[6],
        v[7],
        v[8]);
    add(
        Basis.RATED,
        "time_to_add_" + id + "_rated",
        "Time to add " + words + " of rated range",
        Unit.SECOND,
        Method.TIME_TO_ADD_RATED,
        v[9],
        v[10],
        v[11]);
  }

  private void add(String id, String label, Unit unit, Method method, double... v) {
    add(Basis.READINGS, id, label, unit, method, v);
  }

  private void add(Basis basis, String id, String label, Unit unit, Method method, double... v) {
    Estimate estimate = new Estimate(v[0], new Interval(v[1], v[2]));
    numbers.add(number(id, label, unit, method, basis, new Outcome.Measured(estimate, 1)));
  }

  private void withheld(String id, String label, Unit unit, Method method, String reason) {
    numbers.add(
        number(
            id,
            label,
            unit,
            method,
            Basis.READINGS,
            new Outcome.Withheld(Message.verbatim(reason))));
  }

  private ReportNumber number(
      String id, String label, Unit unit, Method method, Basis basis, Outcome outcome) {
    // The number of rows and caveats varies, so that pages have short and long lists.
    int kind = numbers.size() % 3;
    List<RowRef> rows = new ArrayList<>(rows("readings.csv", 2, 4 + 12 * kind));
    if (basis != Basis.READINGS) {
      rows.add(new RowRef("sessions/finch-ring-road/range-test.csv", 4));
      rows.add(new RowRef("sessions/finch-ring-road/range-test.csv", 7));
    }
    List<Caveat> own = caveats.subList(0, Math.min(caveats.size(), 2 * kind + 1));
    return new ReportNumber(
        new Metric(id, label, unit, method, basis, Input.CHARGING, roles(id)),
        outcome,
        new Origin(session, rows),
        own);
  }

  /** Roles of some numbers, as in the demo of a page. */
  private static Set<Role> roles(String id) {
    return switch (id) {
      case "time_to_add_150_km", "time_to_add_300_km" -> Set.of(Role.MINUTES);
      case "peak_power", "peak_hold_time", "time_soc_20_80", "average_power_20_80" ->
          Set.of(Role.HEADLINE);
      case "peak_reached_soc", "peak_reached_time" -> Set.of(Role.CURVE);
      case "energy_added", "energy_per_soc" -> Set.of(Role.ENERGY);
      default -> Set.of();
    };
  }

  private List<RowRef> rows(String file, int first, int last) {
    return IntStream.rangeClosed(first, last)
        .mapToObj(line -> new RowRef("sessions/" + session + "/" + file, line))
        .toList();
  }
}
