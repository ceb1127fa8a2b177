package taperbook.metric.quality;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import taperbook.metric.ReportMetrics;
import taperbook.metric.Sessions;
import taperbook.metric.course.Displays;
import taperbook.metric.course.TrueSession;
import taperbook.plan.ReportPlan;
import taperbook.plan.RoadWishes;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.Numbers;
import taperbook.session.DisplayRounding;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.Review.Misread;
import taperbook.session.RowsWritten;
import taperbook.session.Session;

/**
 * How many slips are detected, and at the correct cell: one slip of each kind is inserted into each
 * of many true sessions, with displays and recording habits of all kinds. The detector was tuned on
 * the sessions of the first hundred thousand seeds, and never on those of this test.
 *
 * <p>More of them: {@code -Dslips.sessions=216 -Dslips.seed=...}.
 */
@Tag("slow")
final class TranscriptionSlipsTest {
  private static final int SESSIONS = Integer.getInteger("slips.sessions", 36);
  private static final long SEED = Long.getLong("slips.seed", 4_000_000);

  private static final double LEAST_REPORTED = 0.9;
  private static final double LEAST_AT_CELL = 0.85;
  private static final double MOST_FALSE = 0.01;

  /** Headline numbers of a report. */
  private static final List<String> HEADLINES =
      List.of(
          "time_to_soc_20",
          "time_to_soc_50",
          "time_to_soc_80",
          "time_soc_10_80",
          "energy_added",
          "average_power_10_80",
          "peak_power",
          "peak_hold_time",
          "time_to_add_100_km",
          "time_to_add_200_km");

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

  /** Counts of one kind of slip. */
  private static final class Count {
    private int all;
    private int refused;
    private int reported;
    private int atCell;
    private int harmful;
    private int harmfulReported;
    private int harmfulAtCell;

    void add(List<Misread> found, boolean right, boolean harm) {
      boolean any = !found.isEmpty();
      all++;
      refused += found.stream().anyMatch(Misread::isImpossible) ? 1 : 0;
      reported += any ? 1 : 0;
      atCell += right ? 1 : 0;
      harmful += harm ? 1 : 0;
      harmfulReported += harm && any ? 1 : 0;
      harmfulAtCell += harm && right ? 1 : 0;
    }

    void add(Count other) {
      all += other.all;
      refused += other.refused;
      reported += other.reported;
      atCell += other.atCell;
      harmful += other.harmful;
      harmfulReported += other.harmfulReported;
      harmfulAtCell += other.harmfulAtCell;
    }

    String row(String name) {
      return String.format(
          Locale.ROOT,
          "| %s | %d | %d | %d | %d | %d | %d | %d |%n",
          name,
          all,
          refused,
          reported - refused,
          all - reported,
          harmful,
          harmful - harmfulReported,
          harmfulReported == 0 ? 100 : Math.round(100.0 * harmfulAtCell / harmfulReported));
    }
  }

  private final Map<TranscriptionSlips.Kind, Count> counts =
      new EnumMap<>(TranscriptionSlips.Kind.class);

  /** A session without a slip. */
  private static Session clean(long seed, Random random) {
    return Displays.byHand(truth(random), way(seed, random), rows(random), random);
  }

  private static TrueSession truth(Random random) {
    return TrueSession.of(random, 3 + 12 * random.nextDouble(), 82 + 12 * random.nextDouble());
  }

  private static int rows(Random random) {
    return 20 + random.nextInt(25);
  }

  private static Displays.Way way(long seed, Random random) {
    DisplayRounding[] roundings = {
      DisplayRounding.NEAREST, DisplayRounding.DOWN, DisplayRounding.UP
    };
    RowsWritten[] habits = {RowsWritten.AT_SET_TIMES, RowsWritten.AT_CHANGES, RowsWritten.MIXED};
    int[] energyEvery = {1, 1, 8, 0};
    int k = (int) (seed % 36);
    return new Displays.Way(
        roundings[k % 3], habits[k / 3 % 3], energyEvery[k / 9], random.nextBoolean());
  }

  @Test
  void harmful_errors_are_reported_at_their_cell() throws IOException {
    IntStream.range(0, SESSIONS).parallel().forEach(k -> slips(SEED + k));
    Count all = new Count();
    StringBuilder table = new StringBuilder();
    table.append(
        "| slip | put in | refused | told | silent | harmful | of them silent | at the right");
    table.append(" cell, % |\n|---|---|---|---|---|---|---|---|\n");
    new TreeMap<>(counts)
        .forEach(
            (kind, count) -> {
              table.append(count.row(kind.name().toLowerCase(Locale.ROOT).replace('_', ' ')));
              all.add(count);
            });
    table.append(all.row("all"));
    Files.createDirectories(Path.of("target"));
    Files.writeString(Path.of("target/slips.md"), table);
    assertThat(all.harmfulReported)
        .as(table.toString())
        .isGreaterThan((int) (LEAST_REPORTED * all.harmful));
    assertThat(all.harmfulAtCell)
        .as(table.toString())
        .isGreaterThan((int) (LEAST_AT_CELL * all.harmfulReported));
  }

  private void slips(long seed) {
    Session clean = clean(seed, new Random(seed));
    Numbers before = numbers(clean);
    for (TranscriptionSlips.Kind kind : TranscriptionSlips.Kind.values()) {
      Random random = new Random(seed * 31 + kind.name().hashCode());
      Optional<TranscriptionSlips.Slip> slip = TranscriptionSlips.of(kind, clean, random);
      if (slip.isPresent()) {
        List<Misread> found = MisreadDetector.find(slip.get().session());
        boolean harm = harms(before, numbers(slip.get().session()));
        synchronized (counts) {
          counts
              .computeIfAbsent(kind, k -> new Count())
              .add(found, !found.isEmpty() && isAt(slip.get(), found.get(0)), harm);
        }
      }
    }
  }

  /** A wrong time affects every reading of its row. */
  private static boolean isAt(TranscriptionSlips.Slip slip, Misread found) {
    boolean column =
        slip.channel().isEmpty()
            || slip.channel().equals(found.channel())
            || slip.kind() == TranscriptionSlips.Kind.CHANNELS_EXCHANGED;
    return column && slip.lines().contains(found.row().line());
  }

  private static Numbers numbers(Session session) {
    return ReportMetrics.measureSession(PLAN, session, List.of(DRIVE));
  }

  /** True if a headline number leaves its interval without the slip. */
  private static boolean harms(Numbers before, Numbers after) {
    return HEADLINES.stream()
        .anyMatch(
            id ->
                before
                    .estimate(id)
                    .filter(
                        e ->
                            after
                                .estimate(id)
                                .filter(a -> e.bounds().contains(a.value()))
                                .isEmpty())
                    .isPresent());
  }

  @Test
  void valid_sessions_are_rarely_reported_and_never_refused() {
    int sessions = 10 * SESSIONS;
    AtomicInteger reported = new AtomicInteger();
    IntStream.range(0, sessions)
        .parallel()
        .forEach(
            k -> {
              long seed = SEED + 1_000_000 + k;
              List<Misread> found = MisreadDetector.find(clean(seed, new Random(seed)));
              reported.addAndGet(found.isEmpty() ? 0 : 1);
              assertThat(found).as("seed " + seed).noneMatch(Misread::isImpossible);
            });
    assertThat(reported.get()).isLessThanOrEqualTo((int) Math.ceil(MOST_FALSE * sessions));
  }

  @Test
  void a_momentary_station_failure_is_never_refused() {
    IntStream.range(0, 5 * SESSIONS)
        .parallel()
        .forEach(
            k -> {
              long seed = SEED + 2_000_000 + k;
              Random random = new Random(seed);
              TrueSession truth = truth(random);
              double from = truth.end() * (0.1 + 0.7 * random.nextDouble());
              TrueSession dipped =
                  truth.withDip(
                      from, 15 + 105 * random.nextDouble(), random.nextBoolean() ? 0 : 0.3);
              Session session = Displays.byHand(dipped, way(seed, random), rows(random), random);
              assertThat(MisreadDetector.find(session))
                  .as("seed " + seed)
                  .noneMatch(Misread::isImpossible);
            });
  }

  @Test
  void logs_without_errors_are_not_reported() {
    for (int k = 0; k < 6; k++) {
      Random random = new Random(SEED + 3_000_000 + k);
      Session session = Displays.logged(truth(random), way(k, random), random);
      assertThat(MisreadDetector.find(session)).as("logger " + k).isEmpty();
    }
  }
}
