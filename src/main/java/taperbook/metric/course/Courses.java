package taperbook.metric.course;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import taperbook.i18n.Message;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.result.Contribution;
import taperbook.result.Once;
import taperbook.result.Outcome;
import taperbook.result.UncertaintySource;
import taperbook.session.Channel;
import taperbook.session.DisplayRounding;
import taperbook.session.RangeTest;
import taperbook.session.Session;
import taperbook.session.Trace;

/**
 * Courses of power, energy and charge that are consistent with the readings of a session and the
 * record of a drive, drawn from their joint distribution. A number is a function of one draw; its
 * value is the mean over all draws, its interval excludes 2.5 % of them on each side (JCGM
 * 101:2008, 7.6 and 5.3.3), and its budget comes from the same draws.
 *
 * <p>Drawn lazily, with seeds derived from the readings: the same readings give the same numbers.
 */
public final class Courses {
  /** Number of draws for printed numbers; the same in a report and in a library. */
  public static final int FOR_REPORT = 600;

  /** Number of draws for intermediate results whose own draws are not printed. */
  public static final int FEW = 120;

  private static final double COVERAGE = 0.95;

  /** Number of rows beyond which more rows make no difference. */
  private static final int COUNTED_ROWS = 100;

  /** An interval excludes one in this many draws at each end. */
  private static final int ONE_IN = 40;

  /** Number of draws of a budget. */
  private static final int BUDGET_DRAWS = 200;

  /** Contributions below this share of the squared uncertainty are not listed. */
  private static final double LEAST_SHARE = 0.005;

  private final Session session;
  private final List<RangeTest> drives;
  private final int count;
  private final int redraw;
  private final Supplier<Sample> sample = new Once<>(this::draw);

  /**
   * Creates courses of a session, to be drawn lazily.
   *
   * @param session the session
   * @param test the drive that distances use, if there is one
   * @param count number of draws, even
   */
  public Courses(Session session, Optional<RangeTest> test, int count) {
    this(session, test.stream().toList(), count, 0);
  }

  /**
   * Creates courses of a session with alternative draws, to assess the sampling error of a number.
   *
   * @param drives the drives whose mean distances use; may be empty
   * @param redraw index of an alternative set of draws; 0 is that of a report
   */
  public Courses(Session session, List<RangeTest> drives, int count, int redraw) {
    this.redraw = redraw;
    this.session = session;
    this.drives = List.copyOf(drives);
    this.count = count;
  }

  /** Returns the session of the readings. */
  public Session session() {
    return session;
  }

  /** Returns the index of the set of draws; 0 is that of a report. */
  public int redraw() {
    return redraw;
  }

  /** Returns the number of distinct times at which charge, power or energy was read. */
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
   * Returns the offset of the charge at which the display first shows a figure from the charge at
   * which a chart plots it, %: as declared, or that of rounding to nearest.
   */
  public double displayOffset() {
    double step = session.trace(Channel.SOC).map(t -> 2 * t.halfStep()).orElse(1.0);
    return switch (session.displayRounding()) {
      case DOWN -> 0;
      case UP -> step;
      default -> step / 2;
    };
  }

  /** The draws, and the inputs of budgets. */
  private record Sample(List<Draw> draws, List<Influence> influences) {}

  /** Returns all draws. */
  public List<Draw> draws() {
    return sample.get().draws();
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
    List<Draw> draws = new ArrayList<>(count);
    double place = 0.5;
    for (int k = 0; k < count; k++) {
      boolean antithetic = k % 2 == 1;
      place = antithetic ? 1 - place : random.uniform();
      draws.add(
          new Draw(
              courses.get(k),
              sampler.map(d -> d.draw(antithetic)).orElse(Drive.NONE),
              step * offset(session.displayRounding(), random),
              place));
    }
    sampler.ifPresent(d -> addInputs(d, kept, influences));
    return new Sample(draws, influences);
  }

  private List<Course> drawCourses(long seed, int kept, List<Influence> influences) {
    if (!CourseData.spansTime(session)) {
      // No course: only quantities of the drive can be evaluated.
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

  /** Returns the offset of a display above the true charge, in steps. */
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

  /**
   * Returns a seed that depends only on the readings, so that a session has the same draws
   * everywhere.
   */
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

  /** One step of FNV-1a on 64-bit words, with a shift that mixes high bits down. */
  private static long mixed(long seed, double value) {
    long mixed = (seed ^ Double.doubleToLongBits(value)) * 0x100000001b3L;
    return mixed ^ (mixed >>> 32);
  }

  /**
   * Measures a number with its interval and budget.
   *
   * @param quantity the number as a function of one draw, in its unit
   * @return the number, withheld if it is undefined in more draws than the interval excludes
   */
  public Outcome measure(ToDoubleFunction<Draw> quantity) {
    double[] values = values(quantity);
    Optional<Estimate> estimate = estimate(values);
    return estimate.isEmpty()
        ? new Outcome.Withheld(Message.of("metric.courses.readings_do_not_bound_it"))
        : new Outcome.Measured(estimate.get(), COVERAGE, budget(values));
  }

  /** Measures as {@link #measure}, without a budget; empty if withheld. */
  public Optional<Estimate> estimate(ToDoubleFunction<Draw> quantity) {
    return estimate(values(quantity));
  }

  private double[] values(ToDoubleFunction<Draw> quantity) {
    double[] values = new double[count];
    List<Draw> draws = draws();
    for (int k = 0; k < count; k++) {
      values[k] = quantity.applyAsDouble(draws.get(k));
    }
    return values;
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
    // A single outlying draw must not move the value out of the interval.
    double value = Math.min(high, Math.max(low, mean));
    return Optional.of(new Estimate(value, new Interval(low, high)));
  }

  /**
   * Computes the budget of a number from the covariance of its draws with every reading: for linear
   * functions of normal unknowns, the squared covariance with a reading's prediction, over that
   * reading's variance, is exactly the contribution of its error. The remainder is due to the
   * course between readings.
   */
  private List<Contribution> budget(double[] values) {
    List<Influence> influences = sample.get().influences();
    int kept = influences.isEmpty() ? 0 : influences.get(0).size();
    double[] some = centred(everyOther(values, kept));
    double total = variance(some);
    if (!(total > 0) || !Double.isFinite(total)) {
      return List.of();
    }
    Map<UncertaintySource, Double> squares = new EnumMap<>(UncertaintySource.class);
    Map<UncertaintySource, Double> noise = new EnumMap<>(UncertaintySource.class);
    for (Influence influence : influences) {
      if (influence.variance() <= 0) {
        continue;
      }
      double covariance = influence.times(some) / kept;
      // Subtract the expected chance covariance of this many draws.
      double chance = total * influence.squares() / kept / kept / influence.variance();
      double square = covariance * covariance / influence.variance() - chance;
      influence
          .shares()
          .forEach(
              (source, share) -> {
                squares.merge(source, square * share, Double::sum);
                noise.merge(source, 2 * Math.pow(chance * share, 2), Double::sum);
              });
    }
    // Readings without effect show chance contributions: count a source from twice their standard
    // deviation.
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
