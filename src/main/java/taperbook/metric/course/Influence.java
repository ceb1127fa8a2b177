package taperbook.metric.course;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import taperbook.result.UncertaintySource;

/** An input of the draws with its values in some of them, used for budgets. */
final class Influence {
  private final double[] values;
  private final double squares;
  private final double variance;
  private final Map<UncertaintySource, Double> shares;

  /**
   * Creates an input.
   *
   * @param values its value in some draws; for a reading its prediction without its own error
   * @param variance variance of the input, or of the reading's error, before conditioning on other
   *     readings
   * @param shares division of that variance between sources
   */
  Influence(double[] values, double variance, Map<UncertaintySource, Double> shares) {
    double mean = Arrays.stream(values).average().orElse(0);
    this.values = Arrays.stream(values).map(v -> v - mean).toArray();
    double sum = 0;
    for (double value : this.values) {
      sum += value * value;
    }
    this.squares = sum;
    this.variance = variance;
    this.shares = shares;
  }

  /**
   * Creates the input of a reading.
   *
   * @param form the reading
   * @param predictions its predictions without its own error in some of the draws
   * @param step step of the display of the charge, %
   */
  static Influence of(ReadingForm form, double[] predictions, double step) {
    Observation o = form.observation;
    UncertaintySource display =
        switch (o.channel()) {
          case POWER -> UncertaintySource.POWER_DISPLAY;
          case ENERGY_ADDED -> UncertaintySource.ENERGY_DISPLAY;
          default -> UncertaintySource.SOC_DISPLAY;
        };
    Map<UncertaintySource, Double> parts = new EnumMap<>(UncertaintySource.class);
    double clock = form.variance - (form.isOpen() ? form.partVariance : o.displayVariance());
    double shown = o.displayVariance();
    if (form.isOpen()) {
      parts.put(UncertaintySource.READING_HABIT, form.edges * (1 - form.edges) * step * step / 4);
      shown *= 1 - form.edges;
    }
    parts.put(display, shown);
    parts.put(UncertaintySource.CLOCK, clock);
    double sum = parts.values().stream().mapToDouble(v -> v).sum();
    parts.replaceAll((source, part) -> part / sum);
    return new Influence(predictions, sum, parts);
  }

  /** Returns the sum of products of the values minus their mean with others, one for each draw. */
  double times(double[] others) {
    double sum = 0;
    for (int k = 0; k < values.length; k++) {
      sum += others[k] * values[k];
    }
    return sum;
  }

  /** Returns the sum of the squares of all values minus their mean. */
  double squares() {
    return squares;
  }

  /** Returns the number of draws. */
  int size() {
    return values.length;
  }

  double variance() {
    return variance;
  }

  Map<UncertaintySource, Double> shares() {
    return shares;
  }
}
