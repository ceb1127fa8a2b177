package taperbook.measure.course;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import taperbook.model.DisplayRounding;
import taperbook.model.DriveEnds;
import taperbook.model.Estimate;
import taperbook.model.Facts;
import taperbook.model.Interval;
import taperbook.model.RangeItem;
import taperbook.model.RangeTest;
import taperbook.model.UncertaintySource;

/**
 * Draws range tests whose figures lie within the last digits that were written down, and whose
 * states of charge are such as the display shows, see {@link DriveEnds}.
 */
final class DriveSampler {
  private final Facts<RangeItem> facts;
  private final Optional<DriveEnds> ends;
  private final RandomNumbers random;
  private final Map<UncertaintySource, Map<String, List<Double>>> inputs =
      new EnumMap<>(UncertaintySource.class);
  private final Map<String, Double> last = new HashMap<>();
  private boolean mirrored;

  DriveSampler(RangeTest test, DisplayRounding rounding, long seed) {
    this.facts = test.facts();
    this.ends = DriveEnds.of(facts, rounding);
    this.random = new RandomNumbers(seed);
  }

  /** The drawn inputs by source. */
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
   * @param mirror true to place every figure opposite the one before in its interval
   */
  Drive draw(boolean mirror) {
    mirrored = mirror;
    double read = drawn(RangeItem.DISTANCE, UncertaintySource.RANGE_DISTANCE);
    double correction =
        facts.amount(RangeItem.ODOMETER_CORRECTION).isEmpty()
            ? 1
            : drawn(RangeItem.ODOMETER_CORRECTION, UncertaintySource.RANGE_DISTANCE);
    double driven = read * correction;
    double energy = drawn(RangeItem.ENERGY_USED, UncertaintySource.RANGE_ENERGY);
    double consumption =
        Double.isNaN(energy) || Double.isNaN(read)
            ? drawn(RangeItem.CONSUMPTION_DISPLAYED, UncertaintySource.RANGE_ENERGY)
            : energy * 1000 / driven;
    double used = ends.map(this::used).orElse(Double.NaN);
    double rated = facts.amount(RangeItem.RATED_RANGE).map(Estimate::value).orElse(Double.NaN);
    double speed = share("speed");
    note(UncertaintySource.SPEED, "speed", speed);
    return new Drive(driven * 100 / used, consumption, rated, speed);
  }

  /** Charge used, %. */
  private double used(DriveEnds known) {
    List<DisplayRounding> possible = known.rounding().possible();
    // One way for both ends, as both are read from one display.
    DisplayRounding way = possible.get((int) (possible.size() * share("way")));
    double full = known.fullShare(way);
    boolean isFull = share("full") < full;
    double start = isFull ? 100 : within(known.starts(way), "start");
    double used = start - within(known.ends(way), "end");
    note(UncertaintySource.RANGE_SOC, "used", used);
    return used;
  }

  private double drawn(RangeItem item, UncertaintySource source) {
    Optional<Estimate> estimate = facts.amount(item);
    if (estimate.isEmpty()) {
      return Double.NaN;
    }
    double value = within(estimate.get().bounds(), item.words());
    note(source, item.words(), value);
    return value;
  }

  private double within(Interval bounds, String name) {
    return bounds.low() + share(name) * bounds.width();
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
