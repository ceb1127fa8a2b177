package taperbook.chart.plots;

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
import taperbook.result.Curve;
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
import taperbook.session.RowRef;
import taperbook.session.Session;
import taperbook.session.Trace;

/**
 * Invented session results for charts. Numbers are set by hand or read off the readings by the
 * simplest method; their correctness is the subject of the tests of {@code metric}.
 */
public final class InventedSession {
  static final double KM_PER_PERCENT = 5.0;

  private final double[] seconds;
  private final double[] soc;
  private final double[] power;
  private final List<ReportNumber> numbers = new ArrayList<>();
  private List<WantedDistance> distances =
      List.of(new WantedDistance(100, Unit.MILE), new WantedDistance(200, Unit.MILE));
  private List<Integer> socMarks = List.of(50, 80);
  private SocWindow window = new SocWindow(20, 80);
  private Unit units = Unit.MILE;
  private Basis basis = Basis.DRIVEN;
  private double wideGapSeconds = 150;
  private String name = "invented";
  private String vehicle = "Northmoor Finch <61> & \"Co\"";
  private double usableKilowattHours = Double.NaN;

  InventedSession(double[] seconds, double[] soc, double[] power) {
    this.seconds = seconds.clone();
    this.soc = soc.clone();
    this.power = power.clone();
  }

  /** Twenty readings by eye: climb, plateau, ramp, steps, and one long gap. */
  public static InventedSession handRead() {
    double[] seconds = {
      0, 30, 60, 95, 130, 190, 250, 310, 380, 450, 510, 560, 620, 700, 790, 880, 1000, 1130, 1270,
      1480, 1600
    };
    double[] soc = {
      12, 13, 15, 17, 19, 23, 28, 32, 37, 42, 46, 49, 52, 56, 60, 64, 68, 72, 75, 80, 82
    };
    double[] power = {
      90, 118, 146, 166, 170, 171, 171, 170, 169, 158, 146, 138, 128, 118, 104, 102, 88, 86, 66, 52,
      45
    };
    return new InventedSession(seconds, soc, power)
        .measured("peak_power", Unit.KILOWATT, 171, 0.5)
        .measured("peak_reached_soc", Unit.PERCENT, 23, 2)
        .measured("peak_reached_time", Unit.SECOND, 190, 60)
        .measured("peak_hold_time", Unit.SECOND, 281, 30)
        .measured("peak_hold_soc_from", Unit.PERCENT, 17.8, 1)
        .measured("peak_hold_soc_to", Unit.PERCENT, 37.4, 1)
        .measured("start_soc", Unit.PERCENT, 12, 0.5)
        .measured("end_soc", Unit.PERCENT, 82, 0.5)
        .measured("session_time", Unit.SECOND, 1600, 1)
        .measured("energy_added", Unit.KILOWATT_HOUR, 49.8, 0.5)
        .crossings()
        .added();
  }

  /**
   * A reading every second for forty minutes, with noisy power and a charge in tenths of a per
   * cent.
   */
  public static InventedSession logger() {
    int n = 2400;
    double[] seconds = new double[n];
    double[] soc = new double[n];
    double[] power = new double[n];
    double charge = 8;
    for (int i = 0; i < n; i++) {
      seconds[i] = i;
      double climb = Math.min(1, 0.45 + i / 220.0);
      double taper = charge < 40 ? 1 : Math.max(0.16, 1 - (charge - 40) / 58);
      double wobble = 1.1 * Math.sin(i * 0.37) + 0.6 * Math.sin(i * 1.7);
      power[i] = Math.rint(10 * (182 * climb * taper + wobble)) / 10;
      soc[i] = Math.rint(10 * charge) / 10;
      charge = Math.min(100, charge + power[i] / 36 / 74);
    }
    return new InventedSession(seconds, soc, power)
        .measured("peak_power", Unit.KILOWATT, 183.6, 0.05)
        .measured("peak_reached_soc", Unit.PERCENT, 20.5, 0.05)
        .measured("peak_reached_time", Unit.SECOND, 176, 1)
        .measured("peak_hold_time", Unit.SECOND, 342, 2)
        .measured("peak_hold_soc_from", Unit.PERCENT, 16.1, 0.1)
        .measured("peak_hold_soc_to", Unit.PERCENT, 41.0, 0.1)
        .crossings()
        .added();
  }

  /** Only state of charge and time. */
  public static InventedSession socAndTime() {
    InventedSession full = handRead();
    return new InventedSession(full.seconds, full.soc, new double[0])
        .withheld("peak_power", Unit.KILOWATT, "power was not recorded")
        .crossings()
        .added();
  }

  /** The given readings, with a peak in a single row and no hold. */
  public static InventedSession plain(double[] seconds, double[] soc, double[] power) {
    return new InventedSession(seconds, soc, power)
        .withheld("peak_hold_time", Unit.SECOND, "the peak was read only once")
        .crossings()
        .added();
  }

  public InventedSession distances(WantedDistance... wanted) {
    distances = List.of(wanted);
    return added();
  }

  public InventedSession socMarks(Integer... marks) {
    socMarks = List.of(marks);
    return crossings();
  }

  public InventedSession window(int from, int to) {
    window = new SocWindow(from, to);
    return crossings();
  }

  InventedSession basis(Basis wanted) {
    basis = wanted;
    return added();
  }

  public InventedSession named(String wantedName, String wantedVehicle) {
    name = wantedName;
    vehicle = wantedVehicle;
    return this;
  }

  InventedSession scaledPower(double factor) {
    java.util.Arrays.setAll(power, i -> factor * power[i]);
    return this;
  }

  public InventedSession usableKilowattHours(double energy) {
    usableKilowattHours = energy;
    return this;
  }

  InventedSession kilometres() {
    units = Unit.KILOMETRE;
    return this;
  }

  public InventedSession wideGapSeconds(double atLeast) {
    wideGapSeconds = atLeast;
    return this;
  }

  public InventedSession measured(String id, Unit unit, double value, double half) {
    return put(id, unit, new Outcome.Measured(Estimate.around(value, half), 1));
  }

  public InventedSession withheld(String id, Unit unit, String reason) {
    return put(id, unit, new Outcome.Withheld(Message.verbatim(reason)));
  }

  private InventedSession put(String id, Unit unit, Outcome outcome) {
    numbers.removeIf(n -> n.id().equals(id));
    Origin origin = new Origin("invented", List.of());
    numbers.add(
        new ReportNumber(
            Metric.charging(id, id, unit, Method.INTERPOLATION), outcome, origin, List.of()));
    return this;
  }

  private InventedSession crossings() {
    for (int mark : socMarks) {
      putTime("time_to_soc_" + mark, crossing(mark));
    }
    double from = crossing(window.from());
    putTime("time_soc_" + window.idPart(), crossing(window.to()) - from);
    return this;
  }

  private InventedSession added() {
    for (WantedDistance distance : distances) {
      double gain = distance.kilometres() / KM_PER_PERCENT;
      String id = "time_to_add_" + distance.idPart();
      putTime(basis == Basis.RATED ? id + "_rated" : id, crossing(soc[0] + gain) - seconds[0]);
    }
    return this;
  }

  private void putTime(String id, double second) {
    if (Double.isNaN(second)) {
      withheld(id, Unit.SECOND, "it was not reached");
    } else {
      measured(id, Unit.SECOND, second, 12);
    }
  }

  /** The first time at a state of charge, or NaN. */
  private double crossing(double mark) {
    for (int i = 1; i < soc.length; i++) {
      if (soc[i - 1] <= mark && soc[i] >= mark && soc[i] > soc[i - 1]) {
        double share = (mark - soc[i - 1]) / (soc[i] - soc[i - 1]);
        return seconds[i - 1] + share * (seconds[i] - seconds[i - 1]);
      }
    }
    return Double.NaN;
  }

  public ReportResult result() {
    return new ReportResult(plan(), sessionResult(), List.of());
  }

  ReportPlan plan() {
    return new ReportPlan(
        "invented",
        new ReportPlan.Heading("Invented", "", Optional.empty()),
        new ReportPlan.Subject("invented", List.of(), List.of()),
        new ReportPlan.Wishes(distances, socMarks, List.of(window)),
        new ReportPlan.Style(units, basis, "report"),
        new ReportPlan.Article("", "reports/invented.md", 1));
  }

  SessionResult sessionResult() {
    return new SessionResult(
        session(), Optional.empty(), new Numbers(numbers), List.of(), curves(), List.of());
  }

  private Session session() {
    RowRef row = new RowRef("sessions/invented/conditions.csv", 2);
    Map<ConditionItem, Fact> facts = new EnumMap<>(ConditionItem.class);
    facts.put(
        ConditionItem.VEHICLE, new Fact(vehicle, "", Optional.empty(), HowKnown.DISPLAYED, row));
    if (!Double.isNaN(usableKilowattHours)) {
      facts.put(
          ConditionItem.BATTERY_USABLE_ENERGY,
          new Fact(
              "stated",
              "kWh",
              Optional.of(Estimate.exactly(usableKilowattHours)),
              HowKnown.DISPLAYED,
              row));
    }
    int[] lines = new int[seconds.length];
    java.util.Arrays.setAll(lines, i -> i + 2);
    Trace trace = new Trace("sessions/invented/readings.csv", seconds, soc, lines, 0.5, 0.5);
    return new Session(
        name,
        new Facts<>("conditions.csv", ConditionItem.class, facts),
        Map.of(Channel.SOC, trace),
        List.of(),
        new Interval(seconds[0], seconds[seconds.length - 1]));
  }

  private Curves curves() {
    double[] kilometres = new double[soc.length];
    java.util.Arrays.setAll(kilometres, i -> (soc[i] - soc[0]) * KM_PER_PERCENT);
    boolean hasPower = power.length > 0;
    return new Curves(
        hasPower ? Optional.of(curve(soc, power, 0.5)) : Optional.empty(),
        hasPower ? Optional.of(curve(seconds, power, 0.5)) : Optional.empty(),
        Optional.of(curve(seconds, soc, 0.5)),
        Optional.of(curve(seconds, kilometres, 1.0 * KM_PER_PERCENT)));
  }

  private Curve curve(double[] x, double[] y, double half) {
    double[] low = new double[y.length];
    double[] high = new double[y.length];
    boolean[] wide = new boolean[y.length];
    for (int i = 0; i < y.length; i++) {
      low[i] = y[i] - half;
      high[i] = y[i] + half;
      wide[i] = i + 1 < y.length && seconds[i + 1] - seconds[i] >= wideGapSeconds;
    }
    return new Curve(x, y, low, high, wide);
  }
}
