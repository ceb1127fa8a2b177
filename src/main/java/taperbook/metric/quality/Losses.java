package taperbook.metric.quality;

import taperbook.quantity.Interval;
import taperbook.session.ConditionItem;
import taperbook.session.Facts;

/** Energy losses between two places of measurement. */
final class Losses {
  /**
   * Largest loss into or out of a battery, as a share of the input: charge and discharge losses,
   * and heating or cooling of the battery. Common practice without a source.
   */
  private static final double MOST = 0.12;

  /** Ratio of energy after a lossy path to energy before it. */
  private static final Interval ONE_WAY = new Interval(1 - MOST, 1);

  private static final Interval NONE = Interval.exactly(1);

  private Losses() {}

  /** Returns the largest loss that a ratio allows, in per cent. */
  static long percent(Interval ratio) {
    return Math.round(100 * (1 - ratio.low()));
  }

  /** Returns the ratio of energy measured while driving to energy counted while charging. */
  static Interval drivenOverCharged(Facts<ConditionItem> facts) {
    boolean countedAtStation =
        facts.text(ConditionItem.ENERGY_COUNTED_AT).filter("station"::equals).isPresent();
    return countedAtStation ? ONE_WAY.times(ONE_WAY) : ONE_WAY;
  }

  /**
   * Returns the ratio of integrated power to the energy counter: other than 1 only if the two are
   * declared to be measured at different places. A car's display shows the battery side.
   */
  static Interval powerOverCounter(Facts<ConditionItem> facts) {
    int power = facts.text(ConditionItem.POWER_MEASURED_AT).map(Losses::place).orElse(-1);
    int counter = facts.text(ConditionItem.ENERGY_COUNTED_AT).map(Losses::place).orElse(-1);
    if (power < 0 || counter < 0 || power == counter) {
      return NONE;
    }
    return power < counter ? ONE_WAY : NONE.over(ONE_WAY);
  }

  /**
   * Returns the rank of a place of measurement, in the order of energy flow from the battery on.
   */
  private static int place(String words) {
    return switch (words) {
      case "car", "battery" -> 0;
      case "inlet" -> 1;
      default -> 2;
    };
  }
}
