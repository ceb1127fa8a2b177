package taperbook.metric.quality;

import java.util.Optional;
import taperbook.format.NumberFormatter;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;

/**
 * Deviation of the air temperature from mild weather. The caveat grows continuously from zero; the
 * range of mild weather is common practice without a source.
 */
final class MildWeather {
  private static final double LEAST_CELSIUS = 15;
  private static final double MOST_CELSIUS = 25;

  private MildWeather() {}

  /** Returns the degrees below mild weather, if they round to one or more. */
  static Optional<Estimate> below(Estimate air) {
    return degrees(Estimate.exactly(LEAST_CELSIUS).minus(air));
  }

  /** Returns the degrees above mild weather, if they round to one or more. */
  static Optional<Estimate> above(Estimate air) {
    return degrees(air.minus(Estimate.exactly(MOST_CELSIUS)));
  }

  private static Optional<Estimate> degrees(Estimate far) {
    return Math.rint(far.value()) >= 1 ? Optional.of(far) : Optional.empty();
  }

  /** Describes the range of mild weather. */
  static String words(NumberFormatter formatter) {
    return "mild weather (taken as "
        + formatter.range(new Interval(LEAST_CELSIUS, MOST_CELSIUS), Unit.CELSIUS)
        + ")";
  }
}
