package taperbook.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;

/**
 * The range tests of one car, in the order in which they are named. The first determines the speed
 * and weather that the report is based on. Tests that agree with it are averaged, and tests in
 * similar weather at other speeds form a range over speed if there are three speeds or more.
 *
 * @param named all range tests; may be empty
 */
public record Drives(List<RangeTest> named) {
  /**
   * Maximum difference of speeds that count as the same, km/h: at 110 km/h such a difference
   * changes consumption by about 4 %. Common practice, no source.
   */
  public static final double SAME_SPEED = 3;

  /**
   * Maximum difference of air temperatures that count as similar, °C: such a difference changes the
   * density of air by 2 %. Common practice, no source.
   */
  public static final double SIMILAR_TEMPERATURE = 5;

  /** The speed limit as text, in the unit that a tester uses. */
  public static final String SAME_SPEED_WORDS = "3 km/h";

  public static final String SIMILAR_TEMPERATURE_WORDS = "5 Cel";

  /**
   * Minimum number of speeds for a range over speed: two determine a line but not how well it fits.
   */
  public static final int MIN_SPEEDS = 3;

  /** Tolerance for floating-point errors. */
  private static final double NOISE = 1e-9;

  public static final Drives NONE = new Drives(List.of());

  private static final Pattern RANGE_AT = Pattern.compile("range(_at_\\d+_(?:km_h|mph))");

  public Drives {
    named = List.copyOf(named);
  }

  /** Selects the range tests of a car. */
  public static Drives of(String vehicle, List<RangeTest> rangeTests) {
    return new Drives(rangeTests.stream().filter(t -> t.vehicle().equals(vehicle)).toList());
  }

  /** Returns the drive that determines the speed and weather that the report is based on. */
  public Optional<RangeTest> first() {
    return named.stream().findFirst();
  }

  /** Returns the first drive, and those at the same speed in similar weather. */
  public List<RangeTest> agreeing() {
    return inLikeWeather().stream()
        .filter(t -> t.equals(named.get(0)) || isNear(speed(t), speed(named.get(0)), SAME_SPEED))
        .toList();
  }

  /** Returns the first drive, and those at any known speed in similar weather. */
  public List<RangeTest> inLikeWeather() {
    return named.stream()
        .filter(t -> t.equals(named.get(0)) || (isLike(t) && speed(t).isPresent()))
        .toList();
  }

  private boolean isLike(RangeTest test) {
    return isNear(temperature(test), temperature(named.get(0)), SIMILAR_TEMPERATURE);
  }

  private static boolean isNear(Optional<Double> one, Optional<Double> other, double limit) {
    return one.isPresent()
        && other.isPresent()
        && Math.abs(one.get() - other.get()) <= limit + NOISE;
  }

  private static Optional<Double> temperature(RangeTest test) {
    return test.facts().amount(RangeItem.AMBIENT_TEMPERATURE).map(Estimate::value);
  }

  /**
   * Returns the speed that all drives state: the target speed if all state it, otherwise the
   * average.
   */
  private Optional<Double> speed(RangeTest test) {
    boolean aimed =
        named.stream().allMatch(t -> t.facts().amount(RangeItem.TARGET_SPEED).isPresent());
    RangeItem item = aimed ? RangeItem.TARGET_SPEED : RangeItem.AVERAGE_SPEED;
    return test.facts().amount(item).map(Estimate::value);
  }

  /** Returns the number of different speeds driven in similar weather. */
  public int speeds() {
    int count = 0;
    double last = Double.NEGATIVE_INFINITY;
    for (double speed :
        inLikeWeather().stream().flatMap(t -> speed(t).stream()).sorted().toList()) {
      if (speed - last > SAME_SPEED + NOISE) {
        count++;
        last = speed;
      }
    }
    return count;
  }

  /**
   * Returns the suffixes of {@code range} and {@code consumption} in the ids of numbers at a speed,
   * ascending.
   */
  public static List<String> speedIds(Numbers numbers) {
    return numbers.all().stream()
        .filter(n -> n.estimate().isPresent())
        .flatMap(n -> RANGE_AT.matcher(n.id()).results())
        .map(found -> found.group(1))
        .toList();
  }

  /** Returns the speed in such an id, in the unit of the report. */
  public static int speedOf(String id) {
    return Integer.parseInt(id.split("_", -1)[2]);
  }

  /** Returns the id suffix for a speed in km/h or mi/h. */
  public static String speedId(int speed, Unit unit) {
    return "_at_" + speed + (unit == Unit.MILE_PER_HOUR ? "_mph" : "_km_h");
  }

  /** Returns true if there is a range over speed. */
  public boolean hasRangeOverSpeed() {
    return speeds() >= MIN_SPEEDS;
  }

  /**
   * A drive that no number uses.
   *
   * @param test the drive
   * @param item the item that excludes it
   */
  public record Unused(RangeTest test, RangeItem item) {}

  /** Returns the drives that no number uses, with the reason. */
  public List<Unused> unused() {
    List<Unused> unused = new ArrayList<>();
    List<RangeTest> used = hasRangeOverSpeed() ? inLikeWeather() : agreeing();
    for (RangeTest test : named) {
      if (!used.contains(test)) {
        boolean weather = !isLike(test);
        RangeItem speed =
            test.facts().amount(RangeItem.TARGET_SPEED).isPresent()
                ? RangeItem.TARGET_SPEED
                : RangeItem.AVERAGE_SPEED;
        unused.add(new Unused(test, weather ? RangeItem.AMBIENT_TEMPERATURE : speed));
      }
    }
    return unused;
  }
}
