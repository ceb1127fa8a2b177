package taperbook.metric.quality;

import taperbook.quantity.Interval;
import taperbook.session.ConditionItem;
import taperbook.session.Facts;

/** What energy may lose from one place at which it is counted to the next. */
final class Losses {
  /**
   * Most that is lost on the way into or out of a battery, as a share of what went in: the losses
   * of charge and discharge, and what heating or cooling the battery takes. Common practice, no
   * source.
   */
  private static final double MOST = 0.12;

  /** Energy behind a lossy way over the energy in front of it. */
  private static final Interval ONE_WAY = new Interval(1 - MOST, 1);

  private static final Interval NONE = Interval.exactly(1);

  private Losses() {}

  /** The most that a ratio allows to be lost, in per cent. */
  static long percent(Interval ratio) {
    return Math.round(100 * (1 - ratio.low()));
  }

  /** Energy that came out while driving over energy that was counted while charging. */
  static Interval drivenOverCharged(Facts<ConditionItem> facts) {
    boolean countedAtStation =
        facts.text(ConditionItem.ENERGY_COUNTED_AT).filter("station"::equals).isPresent();
    return countedAtStation ? ONE_WAY.times(ONE_WAY) : ONE_WAY;
  }

  /**
   * Power over time against the energy counter: not 1 only where the two are declared to be taken
   * at different places. The display of a car shows what the battery takes.
   */
  static Interval powerOverCounter(Facts<ConditionItem> facts) {
    int power = facts.text(ConditionItem.POWER_MEASURED_AT).map(Losses::place).orElse(-1);
    int counter = facts.text(ConditionItem.ENERGY_COUNTED_AT).map(Losses::place).orElse(-1);
    if (power < 0 || counter < 0 || power == counter) {
      return NONE;
    }
    return power < counter ? ONE_WAY : NONE.over(ONE_WAY);
  }

  /** Places in the order in which energy comes from them, from the battery on. */
  private static int place(String words) {
    return switch (words) {
      case "car", "battery" -> 0;
      case "inlet" -> 1;
      default -> 2;
    };
  }
}
