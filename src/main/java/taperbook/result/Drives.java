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
 * The range tests of one car, in the order in which they are named. The first decides which speed
 * and weather the report rests on; those that agree with it are averaged, and those in like weather
 * at other speeds make a range over speed if there are three speeds or more.
 *
 * @param named all of them; perhaps none
 */
public record Drives(List<RangeTest> named) {
  /**
   * Speeds that differ by no more are the same, km/h: at 110 km/h so much moves the consumption by
   * some 4 %. Common practice, no source.
   */
  public static final double SAME_SPEED = 3;

  /**
   * Air temperatures that differ by no more are alike, °C: so much moves the density of the air by
   * 2 %. Common practice, no source.
   */
  public static final double LIKE_TEMPERATURE = 5;

  /** The limits as a tester writes them. */
  public static final String SAME_SPEED_WORDS = "3 km/h";

  public static final String LIKE_TEMPERATURE_WORDS = "5 Cel";

  /** Two speeds determine a line and cannot tell how well it fits. */
  public static final int LEAST_SPEEDS = 3;

  /** Room for floating point. */
  private static final double NOISE = 1e-9;

  /** No drive. */
  public static final Drives NONE = new Drives(List.of());

  private static final Pattern RANGE_AT = Pattern.compile("range(_at_\\d+_(?:km_h|mph))");

  /** Copies the list. */
  public Drives {
    named = List.copyOf(named);
  }

  /** Those of a car among others. */
  public static Drives of(String vehicle, List<RangeTest> rangeTests) {
    return new Drives(rangeTests.stream().filter(t -> t.vehicle().equals(vehicle)).toList());
  }

  /** The drive that decides which speed and weather the report rests on. */
  public Optional<RangeTest> first() {
    return named.stream().findFirst();
  }

  /** The first, and those at the same speed in like weather. */
  public List<RangeTest> agreeing() {
    return inLikeWeather().stream()
        .filter(t -> t.equals(named.get(0)) || isNear(speed(t), speed(named.get(0)), SAME_SPEED))
        .toList();
  }

  /** The first, and those at any known speed in like weather. */
  public List<RangeTest> inLikeWeather() {
    return named.stream()
        .filter(t -> t.equals(named.get(0)) || (isLike(t) && speed(t).isPresent()))
        .toList();
  }

  private boolean isLike(RangeTest test) {
    return isNear(temperature(test), temperature(named.get(0)), LIKE_TEMPERATURE);
  }

  private static boolean isNear(Optional<Double> one, Optional<Double> other, double limit) {
    return one.isPresent()
        && other.isPresent()
        && Math.abs(one.get() - other.get()) <= limit + NOISE;
  }

  private static Optional<Double> temperature(RangeTest test) {
    return test.facts().amount(RangeItem.AMBIENT_TEMPERATURE).map(Estimate::value);
  }

  /** The speed that all drives state: what the drivers aimed at, or else the average. */
  private Optional<Double> speed(RangeTest test) {
    boolean aimed =
        named.stream().allMatch(t -> t.facts().amount(RangeItem.TARGET_SPEED).isPresent());
    RangeItem item = aimed ? RangeItem.TARGET_SPEED : RangeItem.AVERAGE_SPEED;
    return test.facts().amount(item).map(Estimate::value);
  }

  /** Number of different speeds that were driven in like weather. */
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

  /** What is behind {@code range} and {@code consumption} in ids of a speed, rising. */
  public static List<String> speedIds(Numbers numbers) {
    return numbers.all().stream()
        .filter(n -> n.estimate().isPresent())
        .flatMap(n -> RANGE_AT.matcher(n.id()).results())
        .map(found -> found.group(1))
        .toList();
  }

  /** The speed of such an id in the unit of the report. */
  public static int speedOf(String id) {
    return Integer.parseInt(id.split("_", -1)[2]);
  }

  /** The end of the ids of a speed in km/h or mi/h. */
  public static String speedId(int speed, Unit unit) {
    return "_at_" + speed + (unit == Unit.MILE_PER_HOUR ? "_mph" : "_km_h");
  }

  /** True if there is a range over speed. */
  public boolean haveRangeOverSpeed() {
    return speeds() >= LEAST_SPEEDS;
  }

  /**
   * A drive that no number rests on.
   *
   * @param test the drive
   * @param item the item that keeps it out
   */
  public record Unused(RangeTest test, RangeItem item) {}

  /** The drives that no number rests on, with the reason. */
  public List<Unused> unused() {
    List<Unused> unused = new ArrayList<>();
    List<RangeTest> used = haveRangeOverSpeed() ? inLikeWeather() : agreeing();
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
