package taperbook.metric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.quantity.Estimate;

final class VehicleRankingTest {
  private static final int SETS = 500;
  private static final int CARS = 9;
  private static final double NORMAL_95 = 1.959963984540054;

  /**
   * True times in s with a distance of one step, with nine cars with one or more runs and a spread.
   */
  @ParameterizedTest
  @CsvSource({
    "0,1,0",
    "10,1,0",
    "60,1,0",
    "0,1,0.02",
    "20,1,0.02",
    "0,4,0.02",
    "20,4,0.02",
    "0,2,0.02"
  })
  void rank_intervals_contain_all_true_ranks_in_95_percent_of_sets(
      double stepSeconds, int runs, double runSpread) {
    Random random = new Random(7);
    int inside = 0;
    for (int set = 0; set < SETS; set++) {
      double[] truths =
          IntStream.range(0, CARS)
              .mapToDouble(k -> 1500 + stepSeconds * Math.floorDiv(k, 2))
              .toArray();
      List<List<Estimate>> cars = new ArrayList<>();
      for (double truth : truths) {
        List<Estimate> read = new ArrayList<>();
        for (int run = 0; run < runs; run++) {
          double uncertainty = 3 + 5 * random.nextDouble();
          double ofRun = truth * (1 + runSpread * random.nextGaussian());
          read.add(
              Estimate.around(
                  ofRun + uncertainty * random.nextGaussian(), NORMAL_95 * uncertainty));
        }
        cars.add(read);
      }
      // With one run for each car the spread is stated; otherwise it is that of the runs.
      double spread =
          runs == 1 ? runSpread : VehicleRanking.pooled(cars).widened(VehicleRanking.factor(CARS));
      List<VehicleRanking.Mean> means =
          cars.stream().map(read -> VehicleRanking.mean(read, spread)).toList();
      inside += allInside(truths, VehicleRanking.ranks(means)) ? 1 : 0;
    }
    assertThat(inside).isGreaterThanOrEqualTo((int) (0.95 * SETS));
  }

  /** True if each interval contains all ranks that a car shares with equal cars. */
  private static boolean allInside(double[] truths, List<VehicleRanking.Ranks> ranks) {
    for (int k = 0; k < truths.length; k++) {
      double own = truths[k];
      long less = IntStream.range(0, CARS).filter(j -> truths[j] < own).count();
      long notGreater = IntStream.range(0, CARS).filter(j -> truths[j] <= own).count();
      if (ranks.get(k).from() > less + 1 || ranks.get(k).to() < notGreater) {
        return false;
      }
    }
    return true;
  }

  @Test
  void distinct_cars_have_one_rank_each_and_equal_cars_share_all() {
    List<VehicleRanking.Mean> apart =
        List.of(
            new VehicleRanking.Mean(1200, 5),
            new VehicleRanking.Mean(1000, 5),
            new VehicleRanking.Mean(1400, 5));
    assertThat(VehicleRanking.ranks(apart))
        .containsExactly(
            new VehicleRanking.Ranks(2, 2),
            new VehicleRanking.Ranks(1, 1),
            new VehicleRanking.Ranks(3, 3));
    VehicleRanking.Mean same = new VehicleRanking.Mean(1200, 5);
    assertThat(VehicleRanking.ranks(List.of(same, same)))
        .containsOnly(new VehicleRanking.Ranks(1, 2));
    assertThat(VehicleRanking.ranks(List.of(same))).containsOnly(new VehicleRanking.Ranks(1, 1));
  }

  @Test
  void the_spread_of_runs_is_pooled_over_cars_and_widened_for_few_runs() {
    // Relative deviations of 1 % from both means: 4 * 0.01^2 over 2 degrees of freedom.
    VehicleRanking.Spread spread =
        VehicleRanking.pooled(
            List.of(
                List.of(Estimate.exactly(990), Estimate.exactly(1010)),
                List.of(Estimate.exactly(1980), Estimate.exactly(2020)),
                List.of(Estimate.exactly(3000))));
    assertThat(spread.relative()).isCloseTo(0.01 * Math.sqrt(2), within(1e-12));
    assertThat(spread.degrees()).isEqualTo(2);
    // Student's t at 97.5 % with 30 degrees of freedom is 2.04227 (SciPy 1.17.1, stats.t.ppf).
    assertThat(new VehicleRanking.Spread(1, 30).widened(NORMAL_95) * NORMAL_95)
        .isCloseTo(2.04227, within(1e-4));
    assertThat(VehicleRanking.mean(List.of(Estimate.around(1000, NORMAL_95)), 0.02).uncertainty())
        .isCloseTo(Math.sqrt(401), within(1e-9));
  }
}
