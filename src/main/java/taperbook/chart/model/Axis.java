package taperbook.chart.model;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import taperbook.format.Labels;
import taperbook.format.NumberFormatter;
import taperbook.quantity.Unit;

/**
 * One axis: it holds zero, and its ticks are 1, 2 or 5 times a power of ten apart.
 *
 * @param title what it shows, without the unit
 * @param unit its unit
 * @param min where it begins, zero or below; not always a tick
 * @param max where it ends, above zero; not always a tick
 * @param step distance between ticks
 */
public record Axis(String title, String unit, double min, double max, double step) {
  /** Checks that the axis has a length and ticks. */
  public Axis {
    boolean hasLength = min <= 0 && max > 0 && Double.isFinite(max) && Double.isFinite(min);
    if (!(hasLength && step > 0 && step <= max - min)) {
      throw new IllegalArgumentException("no such axis: " + min + " to " + max + " by " + step);
    }
  }

  /** An axis that begins at zero. */
  Axis(String title, String unit, double max, double step) {
    this(title, unit, 0, max, step);
  }

  /** Room above the highest power for its label, as a factor on the axis. */
  private static final double HEADROOM = 1.22;

  private static final double MORE_HEADROOM = 1.16;

  /** State of charge, always in full: 0 to 100 %. */
  public static Axis stateOfCharge(int step) {
    return new Axis(Labels.of("head.soc"), NumberFormatter.name(Unit.PERCENT), 100, step);
  }

  /** Time since plugging in, a little longer than what was recorded, min. */
  public static Axis time(double lastMinute) {
    return upTo(Labels.of("axis.time"), NumberFormatter.name(Unit.MINUTE), lastMinute * 1.02, 9);
  }

  /** Charging power with room above the highest, kW. */
  public static Axis power(double highestKilowatt) {
    return power(Labels.of("axis.power"), NumberFormatter.name(Unit.KILOWATT), highestKilowatt);
  }

  /** A measure of power with room above the highest. */
  public static Axis power(String title, String unit, double highest) {
    return upTo(title, unit, highest * HEADROOM, 6);
  }

  /** This axis with more room above, for labels of several lines. */
  public Axis withRoom() {
    return upTo(title, unit, max * MORE_HEADROOM, 6);
  }

  /**
   * An axis from zero that ends where it is told, with round ticks.
   *
   * @param max where it ends; ends at 1 if that is not above zero
   * @param mostTicks most ticks above zero
   */
  public static Axis upTo(String title, String unit, double max, int mostTicks) {
    double end = max > 0 ? max : 1;
    return new Axis(title, unit, end, roundStep(end, mostTicks));
  }

  /**
   * An axis on both sides of zero, with round ticks.
   *
   * @param min where it begins, below zero
   * @param max where it ends, above zero
   * @param mostTicks most steps between ticks over its length
   */
  public static Axis across(String title, String unit, double min, double max, int mostTicks) {
    return new Axis(title, unit, min, max, roundStep(max - min, mostTicks));
  }

  /** Its length, in its own unit. */
  public double length() {
    return max - min;
  }

  /** Ticks in order, zero among them. */
  public List<Double> ticks() {
    List<Double> ticks = new ArrayList<>();
    int below = (int) Math.floor(-min / step * (1 + 1e-9));
    for (int i = -below; i * step <= max * (1 + 1e-9); i++) {
      ticks.add(i * step);
    }
    return ticks;
  }

  /** A tick in figures. */
  public String tickText(double tick) {
    int places = Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9));
    return new BigDecimal(tick)
        .setScale(places, RoundingMode.HALF_EVEN)
        .toPlainString()
        .replace('-', '\u2212');
  }

  /**
   * Ticks with their figures, the last one with the unit.
   *
   * @param every which ticks get figures: each of so many, counted from zero
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
