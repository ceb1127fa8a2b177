package taperbook.metric.quality;

import java.util.Optional;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.Session;
import taperbook.session.Trace;

/** Limits of power and charge that hold whatever happened between readings. */
final class PhysicalLimits {
  /** Largest power as a multiple of the greater rating: common practice without a source. */
  private static final double BEYOND_RATINGS = 1.5;

  /** Minimum size of an implausible charge reading that goes up and returns, or the reverse, %. */
  private static final double JUMP = 5;

  private final Optional<Double> mostPower;
  private final Optional<Trace> soc;

  PhysicalLimits(Session session) {
    Optional<Double> station = rated(session, ConditionItem.STATION_RATED_POWER);
    Optional<Double> car = rated(session, ConditionItem.VEHICLE_RATED_PEAK_POWER);
    // A car's rating without a station's sets no limit.
    this.mostPower = station.map(s -> BEYOND_RATINGS * car.map(c -> Math.max(c, s)).orElse(s));
    this.soc = session.trace(Channel.SOC);
  }

  private static Optional<Double> rated(Session session, ConditionItem item) {
    return session.conditions().amount(item).map(Estimate::value);
  }

  /**
   * Returns the possible powers, kW, if the reading is not among them; empty if it may be right.
   */
  Optional<Interval> possibleUnless(Trace power, int i) {
    double read = power.value(i);
    double most = mostPower.orElse(Double.POSITIVE_INFINITY);
    boolean backwards = read < 0 && rises(power.second(i));
    if (!backwards && read <= most) {
      return Optional.empty();
    }
    double highest = 0;
    for (int k = 0; k < power.size(); k++) {
      highest = k != i && power.value(k) <= most ? Math.max(highest, power.value(k)) : highest;
    }
    double left = i > 0 ? power.value(i - 1) : highest;
    double right = i + 1 < power.size() ? power.value(i + 1) : highest;
    double low = Math.min(left, right);
    double high = Math.max(left, right);
    return Optional.of(
        low >= 0 && high <= most
            ? new Interval(low, high)
            : new Interval(0, highest > 0 ? highest : most));
  }

  /** Returns true if the charge rises across a time. */
  private boolean rises(double second) {
    if (soc.isEmpty()) {
      return false;
    }
    Trace q = soc.get();
    int before = Math.max(0, q.indexAtOrBefore(second - 1e-9));
    int after = Math.min(q.size() - 1, before + 1);
    while (after + 1 < q.size() && q.second(after) <= second) {
      after++;
    }
    return q.value(after) > q.value(before);
  }

  /** Returns true if a charge is far above both neighbouring readings, or far below both. */
  static boolean jumps(Trace soc, int i) {
    if (i == 0 || i + 1 == soc.size()) {
      return false;
    }
    double over = soc.value(i) - Math.max(soc.value(i - 1), soc.value(i + 1));
    double under = Math.min(soc.value(i - 1), soc.value(i + 1)) - soc.value(i);
    return Math.max(over, under) >= JUMP;
  }
}
