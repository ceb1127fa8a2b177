package taperbook.measure.simulate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import taperbook.measure.ReportMeasuring;
import taperbook.measure.Sessions;
import taperbook.measure.montecarlo.MonteCarlo;
import taperbook.model.Channel;
import taperbook.model.Estimate;
import taperbook.model.Interval;
import taperbook.model.Numbers;
import taperbook.model.RangeItem;
import taperbook.model.RangeTest;
import taperbook.model.ReportPlan;
import taperbook.model.RoadTopic;
import taperbook.model.RoadWishes;
import taperbook.model.Session;
import taperbook.model.Trace;
import taperbook.model.Trip;
import taperbook.model.Unit;
import taperbook.model.WantedDistance;

/**
 * How often the truth lies inside the stated interval: true sessions from closed-form curves,
 * rounded and thinned as a person reading a film would, half of them read as the display changed
 * and half at other moments.
 */
final class CoverageTest {
  private static final int SESSIONS = 1000;

  /** Intervals are meant to hold 95 %; less than this over 1,000 sessions is a fault. */
  private static final double LEAST = 0.93;

  private final Map<String, int[]> inside = new TreeMap<>();
  private final Map<String, double[]> widths = new TreeMap<>();

  @Test
  void the_truth_lies_in_the_stated_interval_at_least_as_often_as_stated() throws IOException {
    for (int seed = 1; seed <= SESSIONS; seed++) {
      // Mixed, as the first draws of neighbouring seeds are alike.
      one(new Random(seed * 0x9e3779b97f4a7c15L));
    }
    StringBuilder table = new StringBuilder("| number | inside | mean width of the interval |\n");
    table.append("|---|---|---|\n");
    for (Map.Entry<String, int[]> entry : inside.entrySet()) {
      int[] counts = entry.getValue();
      double[] width = widths.getOrDefault(entry.getKey(), new double[1]);
      table.append(
          String.format(
              Locale.ROOT,
              "| `%s` | %.1f %% of %d | %.3g %s |%n",
              entry.getKey(),
              100.0 * counts[0] / counts[1],
              counts[1],
              width[0] / counts[1],
              "of the value"));
    }
    Files.createDirectories(Path.of("target"));
    Files.writeString(Path.of("target/coverage.md"), table);
    inside.forEach(
        (id, counts) -> {
          assertThat(counts[1]).as(id).isGreaterThan(SESSIONS / 2);
          assertThat((double) counts[0] / counts[1])
              .as(id + "\n" + table)
              .isGreaterThanOrEqualTo(LEAST);
        });
  }

  private void one(Random random) {
    TrueCurve curve = TrueCurve.random(random, 3 + 6.4 * random.nextDouble());
    double range = 250 + 250 * random.nextDouble();
    double used = curve.capacity() * (0.93 + 0.05 * random.nextDouble());
    Session session = ReadByHand.session("test-session", curve, random);
    RangeTest test = drive(range, used, random);
    ReportPlan plan = plan();
    // Fewer trials than a report's: this test is about the model, not about its numerical noise.
    Numbers numbers =
        SessionSimulation.refine(
            plan,
            session,
            Optional.of(test),
            ReportMeasuring.bounded(plan, session, List.of(test)),
            new MonteCarlo(1000, 1, 0.95, 2));
    check(numbers, "time_to_soc_50", curve.second(50));
    check(numbers, "time_to_soc_80", curve.second(80));
    check(numbers, "time_soc_10_80", curve.second(80) - curve.second(10));
    check(numbers, "energy_soc_10_80", 0.7 * curve.capacity());
    check(
        numbers,
        "average_power_10_80",
        0.7 * curve.capacity() * 3600 / (curve.second(80) - curve.second(10)));
    check(numbers, "energy_per_soc", curve.capacity() / 100);
    // Defined as the highest power that was read, so its truth is the true power at that moment.
    double peak = truePeakRead(curve, session);
    check(numbers, "peak_power", peak);
    check(numbers, "peak_hold_time", curve.secondsAbove(peak - Math.max(1, 0.02 * peak)));
    check(numbers, "driven_range_full", range);
    check(numbers, "consumption", used / range * 1000);
    road(numbers, curve, range);
    for (int km : new int[] {100, 150}) {
      double target = curve.start() + 100 * km / range;
      double added = used / range * km / (curve.capacity() / 100);
      check(numbers, "time_to_add_" + km + "_km", curve.second(target));
      check(numbers, "time_to_add_" + km + "_km_by_energy", curve.second(curve.start() + added));
    }
  }

  private static ReportPlan plan() {
    return Sessions.roadPlan(
        List.of(new WantedDistance(100, Unit.KILOMETRE), new WantedDistance(150, Unit.KILOMETRE)),
        List.of(50, 80),
        new RoadWishes(
            Set.of(RoadTopic.PLUG_IN, RoadTopic.NEXT_LEG, RoadTopic.PER_MINUTE, RoadTopic.TRIP),
            Optional.of(
                new Trip(
                    new WantedDistance(700, Unit.KILOMETRE),
                    new WantedDistance(50, Unit.KILOMETRE),
                    300,
                    100,
                    10))));
  }

  /** Where to stop and to unplug is the report's choice; its truth is what that choice takes. */
  private void road(Numbers numbers, TrueCurve curve, double range) {
    for (int from : new int[] {10, 30}) {
      double to = from + 100 * 100 / range;
      check(numbers, "plug_in_" + from + "_100_km", curve.second(to) - curve.second(from));
    }
    numbers
        .estimate("best_unplug_soc_150_km")
        .map(Estimate::value)
        .ifPresent(
            unplug ->
                check(
                    numbers,
                    "best_unplug_time_150_km",
                    curve.second(unplug) - curve.second(unplug - 100 * 150 / range)));
    numbers
        .estimate("road_per_minute_best_soc_from")
        .map(Estimate::value)
        .ifPresent(
            from ->
                check(
                    numbers,
                    "road_per_minute_best",
                    range / 10 * 60 / (curve.second(from + 10) - curve.second(from))));
    if (numbers.estimate("trip_charging_time").isPresent()) {
      double charging = 0;
      double left = 100;
      double kilometre = 0;
      for (int k = 1; numbers.find(RoadWishes.stopId(k, "time")).isPresent(); k++) {
        double at = numbers.estimate(RoadWishes.stopId(k, "distance")).orElseThrow().value();
        double unplug = numbers.estimate(RoadWishes.stopId(k, "unplug_soc")).orElseThrow().value();
        double arrival = left - 100 * (at - kilometre) / range;
        charging += curve.second(unplug) - curve.second(arrival);
        left = unplug;
        kilometre = at;
      }
      check(numbers, "trip_charging_time", charging);
    }
  }

  private static double truePeakRead(TrueCurve curve, Session session) {
    Trace power = session.trace(Channel.POWER).orElseThrow();
    double most = 0;
    for (int i = 0; i < power.size(); i++) {
      if (power.value(i) == power.max()) {
        most = Math.max(most, curve.power(curve.soc(power.second(i))));
      }
    }
    return most;
  }

  private void check(Numbers numbers, String id, double truth) {
    Optional<Estimate> estimate = numbers.estimate(id);
    if (estimate.isEmpty()) {
      return;
    }
    Interval interval = estimate.get().bounds();
    int[] counts = inside.computeIfAbsent(id, k -> new int[2]);
    counts[0] += interval.contains(truth) ? 1 : 0;
    counts[1]++;
    widths.computeIfAbsent(id, k -> new double[1])[0] += interval.width() / estimate.get().value();
  }

  /** A drive from a nearly full to a nearly empty battery, rounded as displays do. */
  private static RangeTest drive(double range, double usable, Random random) {
    double from = 90 + 9.4 * random.nextDouble();
    double to = 1 + 8 * random.nextDouble();
    double share = (from - to) / 100;
    return Sessions.rangeTest(
        Map.of(
            RangeItem.AVERAGE_SPEED, Estimate.exactly(100),
            RangeItem.DISTANCE, rounded(range * share, 0.1),
            RangeItem.START_SOC, rounded(from, 1),
            RangeItem.END_SOC, rounded(to, 1),
            RangeItem.ENERGY_USED, rounded(usable * share, 0.1)));
  }

  private static Estimate rounded(double truth, double step) {
    return Estimate.around(Math.rint(truth / step) * step, step / 2);
  }
}
