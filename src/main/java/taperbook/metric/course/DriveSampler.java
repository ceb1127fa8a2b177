package taperbook.metric.course;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import taperbook.metric.fit.Quantiles;
import taperbook.metric.fit.SampleMean;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.result.UncertaintySource;
import taperbook.session.DisplayRounding;
import taperbook.session.DriveEnds;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;

/**
 * Draws range tests whose figures lie within the recorded last digits and whose states of charge
 * are consistent with the display, see {@link DriveEnds}.
 *
 * <p>For several drives, draws their mean. Common errors, the odometer correction and the display
 * rounding, are drawn once for all. Independent errors come from the figures or, if wider, from the
 * spread of the drives:
 *
 * <pre>
 *   mean = (x[1] + ... + x[n]) / n + t s / sqrt(n)
 * </pre>
 *
 * with the standard deviation <i>s</i> between drives and Student's <i>t</i> with n - 1 degrees of
 * freedom (JCGM 100:2008, 4.2 and G.3), in equal steps of its probability.
 */
final class DriveSampler {
  private static final String WAY = "way";
  private static final String BETWEEN = "between";

  /**
   * Values of t beyond this probability are outside every interval and would only affect the mean.
   */
  private static final double MOST = 0.98;

  private final List<One> drives;
  private final RandomNumbers random;
  private final Map<UncertaintySource, Map<String, List<Double>>> inputs =
      new EnumMap<>(UncertaintySource.class);
  private final Map<String, Double> last = new HashMap<>();
  private final Optional<SampleMean> consumptions;
  private final Optional<SampleMean> ranges;
  private final double[] levels;
  private int pairs;
  private boolean mirrored;

  /**
   * Creates a sampler of the mean of some drives.
   *
   * @param tests at least one
   * @param count number of draws, even
   */
  DriveSampler(List<RangeTest> tests, DisplayRounding rounding, int count, long seed) {
    this.drives =
        IntStream.range(0, tests.size())
            .mapToObj(
                i -> new One(DriveFigures.of(tests.get(i), rounding), i == 0 ? "" : " " + (i + 1)))
            .toList();
    this.random = new RandomNumbers(seed);
    this.consumptions = wider(DriveFigures::consumption);
    this.ranges = wider(DriveFigures::fullRange);
    this.levels =
        drives.size() > 1 ? levels(count / 2, new RandomNumbers(seed + 100)) : new double[0];
  }

  /** Returns probabilities of t in equal steps, shuffled, in antithetic pairs. */
  private static double[] levels(int pairs, RandomNumbers random) {
    double[] levels = new double[pairs];
    for (int i = 0; i < pairs; i++) {
      int other = (int) ((i + 1) * random.uniform());
      levels[i] = levels[other];
      levels[other] = Math.min(MOST, 1 - i / (2.0 * pairs));
    }
    return levels;
  }

  /** Returns the spread of the drives, if it is wider than their figures allow. */
  private Optional<SampleMean> wider(Function<DriveFigures, Optional<Estimate>> quantity) {
    List<Estimate> figures =
        drives.stream().map(One::figures).map(quantity).flatMap(Optional::stream).toList();
    List<Double> values = figures.stream().map(Estimate::value).toList();
    // Rectangular distributions, JCGM 100:2008, 4.3.7.
    double own = figures.stream().mapToDouble(f -> Math.pow(f.bounds().width(), 2) / 12).sum();
    if (values.size() < 2) {
      return Optional.empty();
    }
    double half = Quantiles.NORMAL_95 * Math.sqrt(own) / values.size();
    return Optional.of(SampleMean.of(values)).filter(mean -> mean.half95() > half);
  }

  /** Returns the drawn inputs by source. */
  Map<UncertaintySource, List<double[]>> inputs() {
    Map<UncertaintySource, List<double[]>> all = new EnumMap<>(UncertaintySource.class);
    inputs.forEach(
        (source, byName) -> {
          List<double[]> arrays = new ArrayList<>();
          byName.values().forEach(v -> arrays.add(v.stream().mapToDouble(x -> x).toArray()));
          all.put(source, arrays);
        });
    return all;
  }

  /**
   * Draws a drive.
   *
   * @param antithetic true to draw the antithetic values of the previous draw
   */
  Drive draw(boolean antithetic) {
    mirrored = antithetic;
    List<Figures> drawn = drives.stream().map(One::draw).toList();
    double rated =
        drives.get(0).amount(RangeItem.RATED_RANGE).map(Estimate::value).orElse(Double.NaN);
    double speed = share("speed");
    note(UncertaintySource.SPEED, "speed", speed);
    boolean rises = drives.size() > 1 && share(BETWEEN) < 0.5;
    double level = drives.size() > 1 ? levels[pairs % levels.length] : 0.5;
    pairs += antithetic ? 1 : 0;
    double sign = rises ? 1 : -1;
    note(UncertaintySource.BETWEEN_DRIVES, BETWEEN, sign * level);
    // A drive with a higher consumption has a shorter range.
    return new Drive(
        mean(drawn, Figures::fullRange, Figures::middleRange, ranges, -sign, level),
        mean(drawn, Figures::consumption, Figures::middleConsumption, consumptions, sign, level),
        rated,
        speed);
  }

  private static double mean(
      List<Figures> drawn,
      ToDoubleFunction<Figures> byFigures,
      ToDoubleFunction<Figures> middle,
      Optional<SampleMean> between,
      double sign,
      double level) {
    ToDoubleFunction<Figures> quantity = between.isPresent() ? middle : byFigures;
    double mean =
        drawn.stream()
            .mapToDouble(quantity)
            .filter(v -> !Double.isNaN(v))
            .average()
            .orElse(Double.NaN);
    return between.isEmpty()
        ? mean
        : mean
            + sign * Quantiles.student(level, between.get().count() - 1) * between.get().standard();
  }

  /**
   * One draw of one drive; NaN for unknown values.
   *
   * @param middleRange the range with only the common errors drawn
   * @param middleConsumption the same for the consumption
   */
  private record Figures(
      double fullRange, double consumption, double middleRange, double middleConsumption) {}

  /** One of the drives. */
  private final class One {
    private final DriveFigures figures;
    private final String key;

    One(DriveFigures figures, String key) {
      this.figures = figures;
      this.key = key;
    }

    DriveFigures figures() {
      return figures;
    }

    Optional<Estimate> amount(RangeItem item) {
      return figures.facts().amount(item);
    }

    Figures draw() {
      double read = drawn(RangeItem.DISTANCE, UncertaintySource.RANGE_DISTANCE);
      double correction =
          amount(RangeItem.ODOMETER_CORRECTION).isEmpty()
              ? 1
              : drawn(RangeItem.ODOMETER_CORRECTION, UncertaintySource.RANGE_DISTANCE);
      double energy = drawn(RangeItem.ENERGY_USED, UncertaintySource.RANGE_ENERGY);
      boolean displayed = Double.isNaN(energy) || Double.isNaN(read);
      double consumption =
          displayed
              ? drawn(RangeItem.CONSUMPTION_DISPLAYED, UncertaintySource.RANGE_ENERGY)
              : energy * 1000 / (read * correction);
      double middle =
          displayed
              ? middle(RangeItem.CONSUMPTION_DISPLAYED)
              : middle(RangeItem.ENERGY_USED) * 1000 / (middle(RangeItem.DISTANCE) * correction);
      double[] used = figures.ends().map(this::used).orElse(new double[] {Double.NaN, Double.NaN});
      return new Figures(
          read * correction * 100 / used[0],
          consumption,
          middle(RangeItem.DISTANCE) * correction * 100 / used[1],
          middle);
    }

    private double middle(RangeItem item) {
      return amount(item).map(Estimate::value).orElse(Double.NaN);
    }

    /** Returns the charge used, drawn and at the middle of the display's interval, %. */
    private double[] used(DriveEnds known) {
      List<DisplayRounding> possible = known.rounding().possible();
      // One place for all ends, as all are read from the same display.
      double place = key.isEmpty() ? share(WAY) : last.getOrDefault(WAY, 0.5);
      DisplayRounding way = possible.get((int) (possible.size() * place));
      boolean isFull = share("full" + key) < known.fullShare(way);
      double start = isFull ? 100 : within(known.starts(way), "start" + key);
      double used = start - within(known.ends(way), "end" + key);
      note(UncertaintySource.RANGE_SOC, "used" + key, used);
      double middle = (isFull ? 100 : known.starts(way).middle()) - known.ends(way).middle();
      return new double[] {used, middle};
    }

    private Optional<Double> ofFirst(RangeItem item) {
      return key.isEmpty() ? Optional.empty() : Optional.ofNullable(last.get(item.words()));
    }

    private double drawn(RangeItem item, UncertaintySource source) {
      Optional<Estimate> estimate = amount(item);
      if (estimate.isEmpty()) {
        return Double.NaN;
      }
      String name = item.words() + key;
      // All drives share the same odometer error.
      Optional<Double> common =
          item == RangeItem.ODOMETER_CORRECTION ? ofFirst(item) : Optional.empty();
      double value =
          common
              .map(share -> at(estimate.get().bounds(), share))
              .orElseGet(() -> within(estimate.get().bounds(), name));
      note(source, name, value);
      return value;
    }
  }

  private double within(Interval bounds, String name) {
    return at(bounds, share(name));
  }

  private static double at(Interval bounds, double share) {
    return bounds.low() + share * bounds.width();
  }

  private double share(String name) {
    double share = mirrored ? 1 - last.getOrDefault(name, 0.5) : random.uniform();
    last.put(name, share);
    return share;
  }

  private void note(UncertaintySource source, String name, double value) {
    inputs
        .computeIfAbsent(source, s -> new TreeMap<>())
        .computeIfAbsent(name, i -> new ArrayList<>())
        .add(value);
  }
}
