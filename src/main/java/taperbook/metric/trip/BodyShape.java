package taperbook.metric.trip;

import java.util.Arrays;
import java.util.Optional;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;

/**
 * Typical values of a car body shape, as wide estimates for what the tester does not state. Common
 * practice, no source; from memory of published specifications.
 */
public enum BodyShape {
  /** A compact car with a tailgate. */
  HATCHBACK("hatchback", new Interval(0.55, 0.75), new Interval(1400, 2000)),
  /** A car with a boot. */
  SALOON("saloon", new Interval(0.47, 0.65), new Interval(1500, 2300)),
  /** A car with a long roof. */
  ESTATE("estate", new Interval(0.53, 0.75), new Interval(1600, 2500)),
  /** A tall car. */
  CROSSOVER("crossover", new Interval(0.62, 0.95), new Interval(1600, 2700)),
  /** A van. */
  VAN("van", new Interval(0.85, 1.5), new Interval(1800, 3200));

  private static final Interval ROLLING = new Interval(0.007, 0.013);

  private final String words;
  private final Interval dragArea;
  private final Interval mass;

  BodyShape(String words, Interval dragArea, Interval mass) {
    this.words = words;
    this.dragArea = dragArea;
    this.mass = mass;
  }

  /** Returns the body shape of a word. */
  public static Optional<BodyShape> ofWords(String words) {
    return Arrays.stream(values()).filter(b -> b.words.equals(words)).findFirst();
  }

  /** Returns the drag coefficient times frontal area, m2. */
  public Estimate dragArea() {
    return middle(dragArea);
  }

  /** Returns the mass of the empty car, kg. */
  public Estimate mass() {
    return middle(mass);
  }

  /** Returns the rolling resistance over weight on tarmac; the same for all shapes. */
  public static Estimate rollingCoefficient() {
    return middle(ROLLING);
  }

  private static Estimate middle(Interval interval) {
    return Estimate.around((interval.low() + interval.high()) / 2, interval.width() / 2);
  }
}
