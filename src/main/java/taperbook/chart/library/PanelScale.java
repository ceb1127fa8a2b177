package taperbook.chart.library;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * A linear scale with round ticks, 1, 2 or 5 times a power of ten apart.
 *
 * @param from its start
 * @param to its end, above {@code from}; not always a tick
 * @param step distance between ticks
 */
record PanelScale(double from, double to, double step) {
  /** Validates that the scale has a length and ticks. */
  PanelScale {
    if (!(from < to && step > 0 && Double.isFinite(to) && Double.isFinite(from))) {
      throw new IllegalArgumentException("no such scale: " + from + " to " + to + " by " + step);
    }
  }

  /** Returns a scale from zero; to 1 if the end is not above zero. */
  static PanelScale upTo(double to, int mostTicks) {
    double end = to > 0 ? to : 1;
    return new PanelScale(0, end, roundStep(end, mostTicks));
  }

  /** Returns a scale over some values with a margin on both sides, never below zero. */
  static PanelScale over(double least, double most, int mostTicks) {
    double room = Math.max(0.06 * (most - least), 0.02 * Math.max(1, Math.abs(most)));
    double from = Math.max(0, least - room);
    double to = most + room;
    return new PanelScale(from, to, roundStep(to - from, mostTicks));
  }

  /** Returns the ticks in order. */
  List<Double> ticks() {
    List<Double> ticks = new ArrayList<>();
    long first = (long) Math.ceil(from / step - 1e-9);
    for (long i = first; i * step <= to + 1e-9 * step; i++) {
      ticks.add(i * step);
    }
    return ticks;
  }

  /** Formats a tick. */
  String text(double tick) {
    int places = Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9));
    return new BigDecimal(tick).setScale(places, RoundingMode.HALF_EVEN).toPlainString();
  }

  /** Formats a tick; the last one includes the unit. */
  String text(double tick, String unit) {
    return tick + step > to + 1e-9 * step ? text(tick) + "\u00a0" + unit : text(tick);
  }

  /** Returns the relative position of a value, 0 at the start and 1 at the end. */
  double share(double value) {
    return (value - from) / (to - from);
  }

  static double roundStep(double length, int mostTicks) {
    double decade = Math.pow(10, Math.floor(Math.log10(length / mostTicks)));
    for (double factor : new double[] {1, 2, 5}) {
      if (factor * decade * mostTicks >= length * (1 - 1e-9)) {
        return factor * decade;
      }
    }
    return 10 * decade;
  }
}
