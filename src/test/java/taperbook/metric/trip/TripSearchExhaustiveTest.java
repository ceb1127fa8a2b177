package taperbook.metric.trip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.quantity.Interval;
import taperbook.session.Trace;

/**
 * Compares the search with an exhaustive search of all plans, on small invented trips with
 * irregular curves. The exhaustive search does not use the principle of optimality.
 */
final class TripSearchExhaustiveTest {
  private static final int MOST_STOPS = 4;
  private static final double NONE = Double.POSITIVE_INFINITY;

  static IntStream seeds() {
    return IntStream.rangeClosed(1, 200);
  }

  /** A small trip: at most four stations, and a curve over a few per cent. */
  private record Case(ChargeTimes clock, TripTask task) {
    static Case of(int seed) {
      Random random = new Random(seed);
      int low = 5 + random.nextInt(10);
      int high = low + 8 + random.nextInt(6);
      double[] soc = new double[high - low + 1];
      double[] seconds = new double[soc.length];
      int[] lines = new int[soc.length];
      for (int i = 0; i < soc.length; i++) {
        soc[i] = low + i;
        seconds[i] = i == 0 ? 0 : seconds[i - 1] + 5 + 60 * random.nextDouble();
        lines[i] = i + 2;
      }
      int stations = 1 + random.nextInt(MOST_STOPS);
      double spacing = 10 + 10 * random.nextDouble();
      TripTask task =
          new TripTask(
              spacing * (stations + 0.3 + 0.7 * random.nextDouble()),
              spacing,
              stations,
              random.nextInt(3) * 60,
              high + random.nextInt(5),
              4 + random.nextInt(8),
              2 + 3 * random.nextDouble());
      Trace trace = new Trace("readings.csv", seconds, soc, lines, 0, 0);
      return new Case(ChargeTimes.of(trace).orElseThrow(), task);
    }

    double share(double kilometres) {
      return kilometres / task.kilometresPerPercent();
    }

    double floor() {
      return Math.max(task.reservePercent(), clock.low());
    }

    /** Levels at which one may unplug, by the definition in the report. */
    TreeSet<Double> levels(int station) {
      TreeSet<Double> levels = new TreeSet<>();
      for (double v = clock.low(); v <= clock.high(); v++) {
        levels.add(v);
      }
      for (int later = station + 1; later <= task.stations(); later++) {
        levels.add(floor() + share((later - station) * task.spacingKilometres()));
      }
      double toEnd = task.distanceKilometres() - station * task.spacingKilometres();
      levels.add(task.reservePercent() + share(toEnd));
      levels.removeIf(v -> v < clock.low() - 1e-9 || v > clock.high() + 1e-9);
      return levels;
    }

    /** Least time after leaving a station, with a number of remaining stops. */
    double least(int station, double percent, int stops) {
      if (stops == 0) {
        double toEnd = task.distanceKilometres() - station * task.spacingKilometres();
        return percent - share(toEnd) >= task.reservePercent() - 1e-9 ? 0 : NONE;
      }
      double best = NONE;
      for (int next = station + 1; next <= task.stations(); next++) {
        double arrival = percent - share((next - station) * task.spacingKilometres());
        if (arrival < floor() - 1e-9 || arrival > clock.high() + 1e-9) {
          continue;
        }
        for (double unplug : levels(next)) {
          if (unplug >= arrival - 1e-9) {
            double here = task.secondsPerStop() + clock.seconds(arrival, unplug);
            best = Math.min(best, here + least(next, unplug, stops - 1));
          }
        }
      }
      return best;
    }

    double least(int stops) {
      return least(0, task.startPercent(), stops);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void the_search_agrees_with_exhaustive_search(int seed) {
    Case small = Case.of(seed);
    TripSearch search = new TripSearch(small.clock(), small.task());
    double[] least = new double[small.task().stations() + 1];
    for (int stops = 0; stops < least.length; stops++) {
      least[stops] = small.least(stops);
      assertSame(search.best(stops), least[stops]);
    }
    // Within half a minute of the fastest plan, the fewest stops win.
    double tied = Arrays.stream(least).min().orElseThrow() + 30;
    int fewest = 0;
    while (least[fewest] > tied) {
      fewest++;
    }
    assertSame(search.best(), least[fewest]);
    int stops = fewest;
    search.best().ifPresent(plan -> assertThat(plan.stops()).hasSize(stops));
  }

  private static void assertSame(Optional<TripPlan> plan, double least) {
    assertThat(plan.isPresent()).isEqualTo(least < NONE);
    plan.ifPresent(p -> assertThat(p.stopSeconds()).isCloseTo(least, within(1e-6)));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void a_plan_adds_up_and_keeps_the_reserve(int seed) {
    Case small = Case.of(seed);
    Optional<TripPlan> best = new TripSearch(small.clock(), small.task()).best();
    if (best.isEmpty()) {
      return;
    }
    double percent = small.task().startPercent();
    double kilometre = 0;
    double seconds = 0;
    for (TripPlan.Stop stop : best.get().stops()) {
      double arrival = percent - small.share(stop.kilometre() - kilometre);
      assertThat(stop.arrivalPercent()).isCloseTo(arrival, within(1e-9));
      assertThat(arrival).isGreaterThanOrEqualTo(small.floor() - 1e-9);
      seconds += small.task().secondsPerStop() + stop.chargingSeconds();
      percent = stop.unplugPercent();
      kilometre = stop.kilometre();
    }
    double end = percent - small.share(small.task().distanceKilometres() - kilometre);
    assertThat(best.get().arrivalPercent()).isCloseTo(end, within(1e-9));
    assertThat(end).isGreaterThanOrEqualTo(small.task().reservePercent() - 1e-9);
    assertThat(best.get().stopSeconds()).isCloseTo(seconds, within(1e-6));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void the_flat_range_of_a_single_stop_agrees_with_exhaustive_search(int seed) {
    Case small = Case.of(seed);
    Optional<TripPlan> plan = new TripSearch(small.clock(), small.task()).best();
    if (plan.isEmpty() || plan.get().stops().size() != 1) {
      return;
    }
    TripPlan.Stop stop = plan.get().stops().get(0);
    double slower = 40;
    Interval tried = Interval.exactly(stop.unplugPercent());
    for (double level : small.levels(stop.station())) {
      boolean reaches = small.least(stop.station(), level, 0) == 0;
      if (reaches && level >= stop.arrivalPercent() - 1e-9) {
        double more = small.clock().seconds(stop.arrivalPercent(), level) - stop.chargingSeconds();
        tried = more <= slower ? tried.hull(level) : tried;
      }
    }
    List<Interval> ranges = UnplugRanges.within(small.clock(), small.task(), plan.get(), slower);
    assertThat(ranges).containsExactly(tried);
  }

  @Test
  void the_small_trips_cover_every_number_of_stops() {
    List<Integer> stops =
        seeds()
            .mapToObj(Case::of)
            .flatMap(c -> new TripSearch(c.clock(), c.task()).best().stream())
            .map(p -> p.stops().size())
            .toList();
    assertThat(stops).contains(0, 1, 2, 3);
    assertThat(stops.size()).isBetween(100, 199);
  }
}
