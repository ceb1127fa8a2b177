package taperbook.metric;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
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
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.Numbers;
import taperbook.session.DisplayRounding;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;
import taperbook.session.RowsWritten;
import taperbook.session.Session;

/** How often two readings of the same session are distinguished as two cars, by number. */
@Tag("slow")
final class EqualCarsTest {
  private static final int PAIRS = 60;

  /** Expected is one in twenty; with 60 pairs up to six are within chance (binomial, 97.5 %). */
  private static final int MOST = 6;

  private static final List<String> IDS =
      List.of(
          "time_to_soc_80",
          "time_soc_10_80",
          "energy_soc_10_80",
          "average_power_10_80",
          "soc_average_power_10_80",
          "time_to_add_200_km",
          "time_to_add_200_km_by_energy");

  private static final RangeTest DRIVE =
      Sessions.rangeTest(
          Map.of(
              RangeItem.DISTANCE, Estimate.exactly(400),
              RangeItem.START_SOC, Estimate.exactly(100),
              RangeItem.END_SOC, Estimate.exactly(0),
              RangeItem.ENERGY_USED, Estimate.exactly(40)));

  private static final ReportPlan PLAN =
      Sessions.roadPlan(
          List.of(new WantedDistance(200, Unit.KILOMETRE)),
          List.of(80),
          new RoadWishes(Set.of(), Optional.empty()));

  /** Read by two people: one records changes of the display, the other records at set times. */
  private static Numbers read(TrueSession truth, RowsWritten written, Random random) {
    Displays.Way way = new Displays.Way(DisplayRounding.NEAREST, written, 1, false);
    Session session = Displays.byHand(truth, way, 16 + random.nextInt(16), random);
    return ReportMetrics.measureSession(PLAN, session, List.of(DRIVE));
  }

  @Test
  void equal_cars_are_rarely_distinguished() {
    Map<String, Integer> ordered = new TreeMap<>();
    IntStream.rangeClosed(1, PAIRS)
        .parallel()
        .forEach(
            seed -> {
              Random random = new Random(seed * 0x9e3779b97f4a7c15L + 41);
              TrueSession truth = TrueSession.any(random);
              Numbers one = read(truth, RowsWritten.AT_CHANGES, random);
              Numbers other = read(truth, RowsWritten.AT_SET_TIMES, random);
              for (String id : IDS) {
                boolean wrong = one.get(id).differsSignificantly(other.get(id));
                synchronized (ordered) {
                  ordered.merge(id, wrong ? 1 : 0, Integer::sum);
                }
              }
            });
    assertThat(ordered).hasSize(IDS.size());
    ordered.forEach(
        (id, count) -> assertThat(count).as(id + " in " + ordered).isLessThanOrEqualTo(MOST));
  }
}
