package taperbook.input;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.Fact;
import taperbook.session.Facts;
import taperbook.session.Session;
import taperbook.session.Trace;

/**
 * Checks that the energy read and the charge gained imply a battery that matches the stated one: a
 * wrong unit, or a thousands separator read as a decimal mark, makes it a thousand times too small.
 *
 * <p>The bounds admit every real session. Usable energy falls to two thirds as a battery ages, and
 * a station counts up to 50 % more than the battery takes, so a factor of three covers both; a
 * display may be corrected by five points during charging, and heating may take an additional 15
 * kW. Readings of power are checked only by their maximum, which a few readings miss by less than a
 * factor of ten.
 */
final class BatteryCheck {
  private static final double FACTOR = 3;
  private static final double FACTOR_OF_POWER = 10;
  private static final double CORRECTED_POINTS = 5;
  private static final double BESIDE_KILOWATTS = 15;
  private static final double SECONDS_PER_HOUR = 3600;

  /** Range of batteries if none is stated: from mopeds to lorries. */
  private static final Interval ANY_KILOWATT_HOURS = new Interval(2, 2000);

  private final Facts<ConditionItem> facts;
  private final Trace soc;
  private final Interval usable;
  private final ProblemLog log;

  private BatteryCheck(Facts<ConditionItem> facts, Trace soc, ProblemLog log) {
    this.facts = facts;
    this.soc = soc;
    this.usable =
        facts
            .amount(ConditionItem.BATTERY_USABLE_ENERGY)
            .map(Estimate::bounds)
            .orElse(ANY_KILOWATT_HOURS);
    this.log = log;
  }

  /** Reports the first channel that implies another battery. */
  static void check(Session session, ProblemLog log) {
    Optional<Trace> soc = session.trace(Channel.SOC);
    if (soc.isEmpty()) {
      return;
    }
    BatteryCheck check = new BatteryCheck(session.conditions(), soc.get(), log);
    for (Channel counter : new Channel[] {Channel.ENERGY_ADDED, Channel.STATION_ENERGY}) {
      session.trace(counter).ifPresent(trace -> check.energy(counter, trace));
    }
    for (Channel display : new Channel[] {Channel.POWER, Channel.STATION_POWER}) {
      session.trace(display).ifPresent(trace -> check.power(display, trace));
    }
  }

  private void energy(Channel channel, Trace energy) {
    int from = 0;
    int to = energy.size() - 1;
    while (from < to && energy.second(from) < soc.firstSecond()) {
      from++;
    }
    while (from < to && energy.second(to) > soc.lastSecond()) {
      to--;
    }
    if (from >= to) {
      return;
    }
    Interval rise = rise(energy.second(from), energy.second(to));
    double step = 2 * energy.halfStep();
    double added = energy.value(to) - energy.value(from);
    double beside = BESIDE_KILOWATTS * (energy.second(to) - energy.second(from)) / SECONDS_PER_HOUR;
    double min = minForRise(rise);
    double max = usable.high() * (rise.high() + CORRECTED_POINTS) / 100;
    if (FACTOR * (added + step) < min || added - step > FACTOR * max + beside) {
      double implied = 100 * added / Math.max(1, (rise.low() + rise.high()) / 2);
      report(
          channel,
          energy,
          to,
          plain(added) + " kWh " + whileRising(rise) + ", a battery of " + plain(implied) + " kWh");
    }
  }

  private void power(Channel channel, Trace power) {
    double greatest = power.max();
    Interval rise = rise(soc.firstSecond(), soc.lastSecond());
    double hours = (soc.lastSecond() - soc.firstSecond()) / SECONDS_PER_HOUR;
    if (greatest > 0 && FACTOR_OF_POWER * greatest * hours < minForRise(rise)) {
      String max = "at most " + plain(greatest) + " kW " + whileRising(rise);
      double battery = 100 * greatest * hours / rise.low();
      report(
          channel,
          power,
          power.indexOfMax(),
          max + ", a battery of " + plain(battery) + " kWh or less");
    }
  }

  private double minForRise(Interval rise) {
    return usable.low() * Math.max(0, rise.low() - CORRECTED_POINTS) / 100;
  }

  /** Returns the bounds of the charge gained between two times at which it was read. */
  private Interval rise(double from, double to) {
    int before = soc.indexAtOrBefore(from);
    int start = soc.second(before) == from ? before : before + 1;
    int last = soc.indexAtOrBefore(to);
    int end = soc.second(last) == to ? last : last + 1;
    double step = 2 * soc.halfStep();
    return Interval.between(
        soc.value(last) - soc.value(start) - step, soc.value(end) - soc.value(before) + step);
  }

  private static String whileRising(Interval rise) {
    return "while the charge rises by " + plain((rise.low() + rise.high()) / 2) + " %";
  }

  private void report(Channel channel, Trace trace, int index, String found) {
    String column = channel.columnName();
    Optional<Fact> stated = facts.known(ConditionItem.BATTERY_USABLE_ENERGY);
    log.add(
        ProblemCode.BATTERY_CONTRADICTED,
        trace.row(index).line(),
        0,
        found,
        stated
            .map(
                fact ->
                    "between a third and three times the "
                        + fact.written()
                        + " "
                        + fact.unit()
                        + " of "
                        + fact.row())
            .orElse("a battery that a vehicle can have, from 2 to 2000 kWh"),
        "correct the unit or the decimal mark of "
            + column
            + (stated.isPresent() ? ", or the battery usable energy" : ""));
  }

  private static String plain(double amount) {
    return new BigDecimal(amount).round(new MathContext(2)).toPlainString();
  }
}
