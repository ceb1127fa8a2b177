package taperbook.chart.model;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.quantity.Unit;

/**
 * A linear axis with ticks 1, 2 or 5 times a power of ten apart.
 *
 * @param title its quantity, without the unit
 * @param unit its unit
 * @param min its start, not always a tick
 * @param max its end, not always a tick
 * @param step distance between ticks
 */
public record Axis(String title, String unit, double min, double max, double step) {
  /** Validates that the axis has a length and ticks. */
  public Axis {
    if (!(min < max && step > 0 && step <= max - min && Double.isFinite(max - min))) {
      throw new IllegalArgumentException("no such axis: " + min + " to " + max + " by " + step);
    }
  }

  /** Headroom above the highest power for its label, as a factor on the axis. */
  private static final double HEADROOM = 1.22;

  private static final double MORE_HEADROOM = 1.16;

  /** Returns the state-of-charge axis, always from 0 to 100 %. */
  public static Axis stateOfCharge(int step) {
    return new Axis(Texts.of("head.soc"), NumberFormatter.name(Unit.PERCENT), 0, 100, step);
  }

  /** Returns an axis of time since plugging in, slightly longer than the recording, min. */
  public static Axis time(double lastMinute) {
    return upTo(Texts.of("axis.time"), NumberFormatter.name(Unit.MINUTE), lastMinute * 1.02, 9);
  }

  /** Returns an axis of charging power with headroom, kW. */
  public static Axis power(double highestKilowatt) {
    return power(Texts.of("axis.power"), NumberFormatter.name(Unit.KILOWATT), highestKilowatt);
  }

  /** Returns an axis of a power quantity with headroom. */
  public static Axis power(String title, String unit, double highest) {
    return upTo(title, unit, highest * HEADROOM, 6);
  }

  /** Returns this axis with more headroom, for labels of several lines. */
  public Axis withRoom() {
    return upTo(title, unit, max * MORE_HEADROOM, 6);
  }

  /**
   * Returns an axis from zero to a given end, with round ticks.
   *
   * @param max its end; 1 is used if that is not above zero
   * @param mostTicks maximum number of ticks above zero
   */
  public static Axis upTo(String title, String unit, double max, int mostTicks) {
    double end = max > 0 ? max : 1;
    return between(title, unit, 0, end, mostTicks);
  }

  /**
   * Returns an axis between two values, with round ticks.
   *
   * @param mostTicks maximum number of steps between ticks
   */
  public static Axis between(String title, String unit, double min, double max, int mostTicks) {
    return new Axis(title, unit, min, max, roundStep(max - min, mostTicks));
  }

  /** Returns its length, in its unit. */
  public double length() {
    return max - min;
  }

  /** Returns the ticks in order. */
  public List<Double> ticks() {
    List<Double> ticks = new ArrayList<>();
    for (int i = (int) Math.ceil(min / step - 1e-9); i * step <= max + 1e-9 * step; i++) {
      ticks.add(i * step);
    }
    return ticks;
  }

  /** Formats a tick. */
  public String tickText(double tick) {
    int places = Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9));
    return new BigDecimal(tick)
        .setScale(places, RoundingMode.HALF_EVEN)
        .toPlainString()
        .replace('-', '\u2212');
  }

  /**
   * Returns the ticks with their labels, the last one with the unit.
   *
   * @param every spacing of the labelled ticks, counted from zero
   */
  public Map<Double, String> figures(int every) {
    Map<Double, String> figures = new LinkedHashMap<>();
    List<Double> figured = ticks().stream().filter(t -> Math.round(t / step) % every == 0).toList();
    for (double tick : figured) {
      boolean last = tick == figured.get(figured.size() - 1);
      figures.put(tick, last ? tickText(tick) + "\u00a0" + unit : tickText(tick));
    }
    return figures;
  }

  private static double roundStep(double length, int mostTicks) {
    double decade = Math.pow(10, Math.floor(Math.log10(length / mostTicks)));
    for (double factor : new double[] {1, 2, 5, 10}) {
      if (factor * decade * mostTicks >= length * (1 - 1e-9)) {
        return factor * decade;
      }
    }
    return 10 * decade;
  }
}
