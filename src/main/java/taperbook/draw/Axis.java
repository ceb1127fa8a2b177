package taperbook.draw;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * One axis: it begins at zero, and its ticks are 1, 2 or 5 times a power of ten apart.
 *
 * @param title what it shows, with the unit
 * @param max where it ends, above zero; not always a tick
 * @param step distance between ticks
 */
record Axis(String title, double max, double step) {
  /** Checks that the axis has a length and ticks. */
  Axis {
    if (!(max > 0 && step > 0 && Double.isFinite(max) && step <= max)) {
      throw new IllegalArgumentException("no such axis: 0 to " + max + " by " + step);
    }
  }

  /** State of charge, always in full: 0 to 100 %. */
  static Axis stateOfCharge(int step) {
    return new Axis("State of charge (%)", 100, step);
  }

  /**
   * An axis from zero that ends where it is told, with round ticks.
   *
   * @param max where it ends; ends at 1 if that is not above zero
   * @param mostTicks most ticks above zero
   */
  static Axis upTo(String title, double max, int mostTicks) {
    double end = max > 0 ? max : 1;
    return new Axis(title, end, roundStep(end, mostTicks));
  }

  /** Ticks in order, zero first. */
  List<Double> ticks() {
    List<Double> ticks = new ArrayList<>();
    for (int i = 0; i * step <= max * (1 + 1e-9); i++) {
      ticks.add(i * step);
    }
    return ticks;
  }

  /** A tick in figures. */
  String tickText(double tick) {
    int places = Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9));
    return new BigDecimal(tick).setScale(places, RoundingMode.HALF_EVEN).toPlainString();
  }

  private static double roundStep(double max, int mostTicks) {
    double decade = Math.pow(10, Math.floor(Math.log10(max / mostTicks)));
    for (double factor : new double[] {1, 2, 5, 10}) {
      if (factor * decade * mostTicks >= max * (1 - 1e-9)) {
        return factor * decade;
      }
    }
    return 10 * decade;
  }
}
