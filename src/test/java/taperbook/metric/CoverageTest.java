package taperbook.metric;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import taperbook.metric.course.Displays;
import taperbook.metric.course.TrueSession;
import taperbook.plan.ReportPlan;
import taperbook.plan.RoadWishes;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.Numbers;
import taperbook.session.Channel;
import taperbook.session.DisplayRounding;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.RowsWritten;
import taperbook.session.Session;
import taperbook.session.Trace;

/**
 * How often the stated interval contains the true value, how wide it is, and how far the value is
 * from its centre. The true sessions are independent of the program. They are read from displays of
 * each rounding, with each recording habit, with the energy counter in most rows, in every eighth,
 * or never, declared or not; and by loggers of all kinds.
 *
 * <p>The number of sessions for each combination is a system property, for a larger table in the
 * guide: {@code -Dcoverage.sessions=300}.
 */
@Tag("slow")
final class CoverageTest {
  private static final int SESSIONS = Integer.getInteger("coverage.sessions", 20);

  /** Loggers of any kind for each such session: 240 have a standard deviation of 1.4 %. */
  private static final int LOGGERS = 12;

  /** Only combinations whose name contains this text. */
  private static final String WAYS = System.getProperty("coverage.ways", "");

  /** The nominal coverage is 95 %. */
  private static final double LEAST = 0.93;

  private static final List<DisplayRounding> ROUNDINGS =
      List.of(DisplayRounding.NEAREST, DisplayRounding.DOWN, DisplayRounding.UP);

  private static final int[] FEW_ROWS = {2, 3, 5, 8, 15};

  /** Mean offset of a value from the true value, in half-widths of its interval. */
  private static final double MOST_BIAS = 0.2;

  /** The drive for distances, without uncertainty: 400 km on 100 %, 100 Wh/km. */
  private static final RangeTest DRIVE =
      Sessions.rangeTest(
          Map.of(
              RangeItem.DISTANCE, Estimate.exactly(400),
              RangeItem.START_SOC, Estimate.exactly(100),
              RangeItem.END_SOC, Estimate.exactly(0),
              RangeItem.ENERGY_USED, Estimate.exactly(40)));

  private static final ReportPlan PLAN =
      Sessions.roadPlan(
          List.of(new WantedDistance(100, Unit.KILOMETRE), new WantedDistance(200, Unit.KILOMETRE)),
          List.of(20, 50, 80),
          new RoadWishes(Set.of(), Optional.empty()));

  /** Counts of one number. */
  private static final class Count {
    private int all;
    private int inside;
    private double width;
    private double bias;

    void add(Estimate estimate, double truth) {
      Interval interval = estimate.bounds();
      all++;
      inside += interval.contains(truth) ? 1 : 0;
      width += interval.width();
      bias += interval.width() > 0 ? (estimate.value() - truth) / (interval.width() / 2) : 0;
    }

    void add(Count other) {
      all += other.all;
      inside += other.inside;
      width += other.width;
      bias += other.bias;
    }

    double share() {
      return (double) inside / all;
    }
  }

  private final Map<String, Map<String, Count>> counts = new TreeMap<>();

  @Test
  void the_interval_contains_the_true_value_as_often_as_stated() throws IOException {
    List<Displays.Way> ways = new ArrayList<>();
    for (DisplayRounding rounding : ROUNDINGS) {
      for (RowsWritten written :
          List.of(RowsWritten.AT_SET_TIMES, RowsWritten.AT_CHANGES, RowsWritten.MIXED)) {
        for (int energyEvery : new int[] {1, 8, 0}) {
          ways.add(new Displays.Way(rounding, written, energyEvery, true));
          ways.add(new Displays.Way(rounding, written, energyEvery, false));
        }
      }
    }
    ways.stream().filter(w -> name(w).contains(WAYS)).parallel().forEach(this::byHand);
    for (DisplayRounding rounding : List.of(DisplayRounding.NEAREST, DisplayRounding.DOWN)) {
      if (!"logger".contains(WAYS)) {
        continue;
      }
      logged(new Displays.Way(rounding, RowsWritten.AT_SET_TIMES, 1, false));
    }
    loggedAnyhow();
    for (int rows : FEW_ROWS) {
      fewRows(rows);
    }
    String table = table();
    Files.createDirectories(Path.of("target"));
    Files.writeString(Path.of("target/coverage.md"), table);
    Map<String, Count> declared = pooled(", declared");
    Map<String, Count> open = pooled(", not declared");
    Map<String, Count> loggers = pooled(" of any kind");
    for (Map<String, Count> group : List.of(declared, open, loggers)) {
      group.forEach(
          (id, count) -> {
            assertThat(count.share()).as(id + "\n" + table).isGreaterThanOrEqualTo(least(id));
            assertThat(Math.abs(count.bias / count.all))
                .as("bias of " + id + "\n" + table)
                .isLessThanOrEqualTo(id.equals("peak_hold_time") ? 1.5 * MOST_BIAS : MOST_BIAS);
          });
    }
  }

  /**
   * Lower limit of coverage for an id. The end of a hold is where the power falls, and the power
   * between readings is unknown.
   */
  private static double least(String id) {
    return id.equals("peak_hold_time") ? 0.80 : LEAST;
  }

  private void byHand(Displays.Way way) {
    IntStream.rangeClosed(1, SESSIONS)
        .forEach(
            seed -> {
              Random random = new Random(seed * 0x9e3779b97f4a7c15L + name(way).hashCode());
              TrueSession truth = TrueSession.any(random);
              int rows = 14 + random.nextInt(20);
              check(name(way), way, truth, Displays.byHand(truth, way, rows, random));
            });
  }

  /**
   * Known curves reduced to a few rows: the interval contains the true value, or the number is
   * withheld.
   */
  private void fewRows(int rows) {
    String name = "only " + rows + " rows, declared";
    if (!name.contains(WAYS)) {
      return;
    }
    Displays.Way way = new Displays.Way(DisplayRounding.NEAREST, RowsWritten.AT_SET_TIMES, 1, true);
    IntStream.rangeClosed(1, SESSIONS)
        .parallel()
        .forEach(
            seed -> {
              Random random = new Random(seed * 0x2545f4914f6cdd1dL + rows);
              TrueSession truth = TrueSession.any(random);
              check(name, way, truth, Displays.byHand(truth, way, rows, random));
            });
  }

  private void logged(Displays.Way way) {
    IntStream.rangeClosed(1, SESSIONS)
        .parallel()
        .forEach(
            seed -> {
              Random random = new Random(seed * 0xd1342543de82ef95L + 5);
              TrueSession truth = TrueSession.any(random);
              check(
                  "logger, " + way.rounding().words() + ", declared",
                  way,
                  truth,
                  Displays.logged(truth, way, random));
            });
  }

  /** Loggers of all rates and steps, also with noise, with gaps, and without a counter or power. */
  private void loggedAnyhow() {
    if (!"logger".contains(WAYS)) {
      return;
    }
    IntStream.rangeClosed(1, LOGGERS * SESSIONS)
        .parallel()
        .forEach(
            seed -> {
              Random random = new Random(seed * 0x2545f4914f6cdd1dL + 11);
              TrueSession truth = TrueSession.any(random);
              DisplayRounding rounding = ROUNDINGS.get(seed % 3);
              Displays.Way way = new Displays.Way(rounding, RowsWritten.AT_SET_TIMES, 1, true);
              Displays.Log log = Displays.Log.any(random);
              String kind = log.noise() > 0 ? "fluctuating" : "quiet";
              check(
                  "logger, " + kind + ", of any kind",
                  way,
                  truth,
                  Displays.logged(truth, rounding, log, random));
              if (seed % 2 == 0) {
                check(
                    "logger without power",
                    way,
                    truth,
                    Displays.logged(truth, rounding, log.withoutPower(), random));
              }
            });
  }

  private static String name(Displays.Way way) {
    return way.rounding().words()
        + ", "
        + way.written().words()
        + ", energy "
        + switch (way.energyEvery()) {
          case 0 -> "never";
          case 1 -> "in most rows";
          default -> "in every eighth row";
        }
        + (way.declared() ? ", declared" : ", not declared");
  }

  private void check(String name, Displays.Way way, TrueSession truth, Session session) {
    Numbers numbers = ReportMetrics.measureSession(PLAN, session, List.of(DRIVE));
    Map<String, Double> truths = new TreeMap<>();
    double above = Displays.above(way.rounding()) * 2 * halfStep(session);
    for (int mark : new int[] {20, 50, 80}) {
      truths.put("time_to_soc_" + mark, truth.timeOf(mark - above));
    }
    double from = truth.timeOf(10 - above);
    double to = truth.timeOf(80 - above);
    double energy = truth.energy(to) - truth.energy(from);
    double start = truth.charge(0);
    truths.put("time_soc_10_80", to - from);
    truths.put("energy_soc_10_80", energy);
    truths.put("average_power_10_80", energy * 3600 / (to - from));
    truths.put("soc_average_power_10_80", truth.meanOverCharge(10 - above, 80 - above));
    truths.put("time_to_add_100_km", truth.timeOf(start + 25));
    truths.put("time_to_add_200_km", truth.timeOf(start + 50));
    truths.put("distance_after_10_min", 4 * (truth.charge(600) - start));
    truths.put("soc_after_10_min", truth.charge(600));
    truths.put("energy_after_10_min", truth.energy(600));
    truths.put("time_to_add_100_km_by_energy", truth.timeOfEnergy(10));
    truths.put("time_to_add_200_km_by_energy", truth.timeOfEnergy(20));
    // The last row of a film is written just before the end; that of a logger at a whole second.
    double read = session.trace(Channel.SOC).orElseThrow().lastSecond();
    double end = name.startsWith("logger") ? read : truth.end() - 0.3;
    truths.put("energy_added", truth.energy(end));
    truths.put("energy_per_soc", truth.energy(end) / (truth.charge(end) - start));
    // A power that oscillates across the threshold between two rows cannot be timed from them.
    if (!truth.swings() && !name.contains("fluctuating")) {
      session.trace(Channel.POWER).ifPresent(p -> truths.put("peak_hold_time", hold(truth, p)));
    }
    synchronized (counts) {
      Map<String, Count> row = counts.computeIfAbsent(name, k -> new TreeMap<>());
      truths.forEach(
          (id, value) ->
              numbers
                  .estimate(id)
                  .filter(e -> !Double.isNaN(value))
                  .ifPresent(e -> row.computeIfAbsent(id, k -> new Count()).add(e, value)));
    }
  }

  private static double hold(TrueSession truth, Trace power) {
    return truth.longestAbove(power.max() - Math.max(2 * power.halfStep(), 0.02 * power.max()));
  }

  private static double halfStep(Session session) {
    return session.trace(Channel.SOC).orElseThrow().halfStep();
  }

  private Map<String, Count> pooled(String ending) {
    Map<String, Count> pooled = new TreeMap<>();
    counts.forEach(
        (name, row) -> {
          if (name.endsWith(ending)) {
            row.forEach((id, c) -> pooled.computeIfAbsent(id, k -> new Count()).add(c));
          }
        });
    return pooled;
  }

  private String table() {
    StringBuilder table = new StringBuilder();
    counts.forEach(
        (name, row) -> {
          table.append(String.format(Locale.ROOT, "%n%s%n", name));
          row.forEach(
              (id, c) ->
                  table.append(
                      String.format(
                          Locale.ROOT,
                          "  %-30s %5.1f %% of %4d, width %9.3f, bias %+.2f%n",
                          id,
                          100 * c.share(),
                          c.all,
                          c.width / c.all,
                          c.bias / c.all)));
        });
    return table.toString();
  }
}
