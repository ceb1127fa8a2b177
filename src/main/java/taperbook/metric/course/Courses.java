package taperbook.metric.course;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.result.Contribution;
import taperbook.result.Outcome;
import taperbook.result.UncertaintySource;
import taperbook.session.Channel;
import taperbook.session.DisplayRounding;
import taperbook.session.RangeTest;
import taperbook.session.Session;
import taperbook.session.Trace;

/**
 * What the readings of a session and the record of a drive allow together: many courses of power,
 * energy and charge, drawn from their joint distribution. A number is a function of one draw; its
 * value is the mean over all draws, its interval leaves 2.5 % of them on either side (JCGM
 * 101:2008, 7.6 and 5.3.3), and its budget comes from the same draws.
 *
 * <p>Drawn when first asked for, from seeds that the readings give: the same readings give the same
 * numbers.
 */
public final class Courses {
  /** Draws for what a page prints: a session has the same number in a report and in a library. */
  public static final int FOR_REPORT = 600;

  /** Draws for a step on the way to a number, whose own draws no page prints. */
  public static final int FEW = 120;

  private static final double COVERAGE = 0.95;

  /** More rows than this are as good as any number of them. */
  private static final int COUNTED_ROWS = 100;

  /** One in so many draws lies below an interval, and one above. */
  private static final int ONE_IN = 40;

  /** Draws that a budget is made from. */
  private static final int BUDGET_DRAWS = 200;

  /** Less than this share of the squared uncertainty is not listed. */
  private static final double LEAST_SHARE = 0.005;

  private final Session session;
  private final List<RangeTest> drives;
  private final int count;
  private final int redraw;
  private @Nullable Sample sample;

  /**
   * Courses of a session, not drawn yet.
   *
   * @param session the session
   * @param test the drive that distances rest on, if there is one
   * @param count number of draws, even
   */
  public Courses(Session session, Optional<RangeTest> test, int count) {
    this(session, test.stream().toList(), count, 0);
  }

  /**
   * Courses of a session that may be drawn again, to see what drawing does to a number.
   *
   * @param drives the drives whose mean distances rest on; perhaps none
   * @param redraw which other draws; 0 are those of a report
   */
  public Courses(Session session, List<RangeTest> drives, int count, int redraw) {
    this.redraw = redraw;
    this.session = session;
    this.drives = List.copyOf(drives);
    this.count = count;
  }

  /** The session whose readings they follow. */
  public Session session() {
    return session;
  }

  /** Which other draws these are; 0 are those of a report. */
  public int redraw() {
    return redraw;
  }

  /** Number of different times at which charge, power or energy was read. */
  public int rowCount() {
    return (int)
        List.of(Channel.SOC, Channel.POWER, Channel.ENERGY_ADDED).stream()
            .flatMap(c -> session.trace(c).stream())
            .flatMapToDouble(t -> Arrays.stream(t.seconds()))
            .distinct()
            .limit(COUNTED_ROWS)
            .count();
  }

  /**
   * How far the charge that the display first shows lies above the charge that stands in its place
   * in a chart, %: as declared, or as of a display that rounds to nearest.
   */
  public double displayOffset() {
    double step = session.trace(Channel.SOC).map(t -> 2 * t.halfStep()).orElse(1.0);
    return switch (session.displayRounding()) {
      case DOWN -> 0;
      case UP -> step;
      default -> step / 2;
    };
  }

  /** The draws, and what budgets are made from. */
  private record Sample(List<Draw> drawn, List<Influence> influences) {}

  /** All draws. */
  public List<Draw> drawn() {
    return sample().drawn();
  }

  private synchronized Sample sample() {
    if (sample == null) {
      sample = draw();
    }
    return sample;
  }

  private Sample draw() {
    long seed = seed();
    int kept = Math.min(BUDGET_DRAWS, count / 2);
    List<Influence> influences = new ArrayList<>();
    List<Course> courses = drawCourses(seed, kept, influences);
    Optional<DriveSampler> sampler =
        drives.isEmpty()
            ? Optional.empty()
            : Optional.of(new DriveSampler(drives, session.displayRounding(), count, seed + 1));
    RandomNumbers random = new RandomNumbers(seed + 2);
    double step = session.trace(Channel.SOC).map(t -> 2 * t.halfStep()).orElse(1.0);
    List<Draw> drawn = new ArrayList<>(count);
    double place = 0.5;
    for (int k = 0; k < count; k++) {
      boolean mirror = k % 2 == 1;
      place = mirror ? 1 - place : random.uniform();
      drawn.add(
          new Draw(
              courses.get(k),
              sampler.map(d -> d.draw(mirror)).orElse(Drive.NONE),
              step * offset(session.displayRounding(), random),
              place));
    }
    sampler.ifPresent(d -> addInputs(d, kept, influences));
    return new Sample(drawn, influences);
  }

  private List<Course> drawCourses(long seed, int kept, List<Influence> influences) {
    if (!CourseData.spansTime(session)) {
      // Nothing to follow: only what the drive says can be asked for.
      return Collections.nCopies(count, Course.NONE);
    }
    CourseSampler sampler = new CourseSampler(session, seed);
    List<Course> courses = sampler.draw(count / 2, kept);
    influences.addAll(sampler.influences());
    return courses;
  }

  private static void addInputs(DriveSampler drives, int kept, List<Influence> influences) {
    drives
        .inputs()
        .forEach(
            (source, inputs) ->
                inputs.forEach(
                    values -> {
                      double[] some = everyOther(values, kept);
                      influences.add(new Influence(some, variance(some), Map.of(source, 1.0)));
                    }));
  }

  /** How far above the true charge a display counts, in steps. */
  private static double offset(DisplayRounding rounding, RandomNumbers random) {
    return switch (rounding) {
      case NEAREST -> 0.5;
      case DOWN -> 0;
      case UP -> 1;
      case NOT_KNOWN -> Math.floor(3 * random.uniform()) / 2;
    };
  }

  private static double[] everyOther(double[] values, int most) {
    double[] some = new double[Math.min(most, values.length / 2)];
    for (int i = 0; i < some.length; i++) {
      some[i] = values[2 * i];
    }
    return some;
  }

  private static double[] centred(double[] values) {
    double mean = Arrays.stream(values).average().orElse(0);
    return Arrays.stream(values).map(v -> v - mean).toArray();
  }

  private static double variance(double[] values) {
    double mean = Arrays.stream(values).average().orElse(0);
    return Arrays.stream(values).map(v -> (v - mean) * (v - mean)).average().orElse(0);
  }

  /** A seed from the readings alone, so that a session gives the same draws wherever it is used. */
  private long seed() {
    long seed = 17;
    for (Trace trace : session.traces().values()) {
      seed = mixed(seed, trace.halfStep());
      for (int i = 0; i < trace.size(); i++) {
        seed = mixed(mixed(seed, trace.second(i)), trace.value(i));
      }
    }
    return redraw == 0 ? seed : mixed(seed, redraw);
  }

  /** One step of FNV-1a on whole words, with a shift that carries high bits down. */
  private static long mixed(long seed, double value) {
    long mixed = (seed ^ Double.doubleToLongBits(value)) * 0x100000001b3L;
    return mixed ^ (mixed >>> 32);
  }

  /**
   * A number with its interval and budget.
   *
   * @param quantity the number as a function of one draw, in its unit
   * @return the number, withheld if more draws than the interval leaves out have none
   */
  public Outcome measure(ToDoubleFunction<Draw> quantity) {
    double[] values = values(quantity);
    Optional<Estimate> estimate = estimate(values);
    return estimate.isEmpty()
        ? new Outcome.Withheld("the readings do not bound it")
        : new Outcome.Measured(estimate.get(), COVERAGE, budget(values));
  }

  /** As {@link #measure}, without a budget; empty if withheld. */
  public Optional<Estimate> estimate(ToDoubleFunction<Draw> quantity) {
    return estimate(values(quantity));
  }

  private double[] values(ToDoubleFunction<Draw> quantity) {
    return drawn().stream().mapToDouble(quantity).toArray();
  }

  private static Optional<Estimate> estimate(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int tail = sorted.length / ONE_IN;
    double low = sorted[tail];
    double high = sorted[sorted.length - 1 - tail];
    if (!Double.isFinite(low) || !Double.isFinite(high)) {
      return Optional.empty();
    }
    double mean = Arrays.stream(sorted).filter(Double::isFinite).average().orElse(low);
    // One wild draw in hundreds must not carry the value out of the interval.
    double value = Math.min(high, Math.max(low, mean));
    return Optional.of(new Estimate(value, new Interval(low, high)));
  }

  /**
   * The budget of a number by the covariance of its draws with every reading: for linear functions
   * of normal unknowns, the squared covariance with what a reading would show, over that reading's
   * variance, is exactly what its error contributes. What is left is what happened between
   * readings.
   */
  private List<Contribution> budget(double[] values) {
    List<Influence> influences = sample().influences();
    int kept = influences.isEmpty() ? 0 : influences.get(0).size();
    double[] some = centred(everyOther(values, kept));
    double total = variance(some);
    if (!(total > 0) || !Double.isFinite(total)) {
      return List.of();
    }
    Map<UncertaintySource, Double> squares = new EnumMap<>(UncertaintySource.class);
    Map<UncertaintySource, Double> noise = new EnumMap<>(UncertaintySource.class);
    for (Influence influence : influences) {
      double covariance = 0;
      double own = 0;
      for (int k = 0; k < kept; k++) {
        covariance += some[k] * influence.value(k);
        own += influence.value(k) * influence.value(k);
      }
      if (influence.variance() <= 0) {
        continue;
      }
      covariance /= kept;
      // What chance alone makes of so many draws is taken off.
      double chance = total * own / kept / kept / influence.variance();
      double square = covariance * covariance / influence.variance() - chance;
      influence
          .shares()
          .forEach(
              (source, share) -> {
                squares.merge(source, square * share, Double::sum);
                noise.merge(source, 2 * Math.pow(chance * share, 2), Double::sum);
              });
    }
    // Of many readings that have no part in a number, some seem to: a source counts from twice the
    // standard deviation of that on.
    squares.replaceAll(
        (source, square) -> square < 2 * Math.sqrt(noise.getOrDefault(source, 0.0)) ? 0 : square);
    double explained = squares.values().stream().mapToDouble(s -> s).sum();
    double between = Math.max(0, total - explained);
    squares.merge(UncertaintySource.BETWEEN_READINGS, between, Double::sum);
    double sum = squares.values().stream().mapToDouble(s -> s).sum();
    List<Contribution> budget = new ArrayList<>();
    squares.forEach(
        (source, square) -> {
          double share = square / sum;
          if (share >= LEAST_SHARE) {
            budget.add(new Contribution(source, Math.sqrt(share * total), Math.min(1, share)));
          }
        });
    budget.sort(Comparator.comparingDouble(Contribution::share).reversed());
    return budget;
  }
}
