package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.metric.course.Courses;
import taperbook.metric.course.ReadByHand;
import taperbook.metric.course.TrueCurve;
import taperbook.quantity.Estimate;

/** Numbers of a pair by definition: mean and quantiles of 2.5 % over all trials. */
final class SampledPairTest {
  private static final double[] GRID =
      IntStream.rangeClosed(80, 280).mapToDouble(i -> i / 4.0).toArray();

  private final Courses one = courses("one", 3);
  private final Courses other = courses("other", 4);
  private final SampledPair pair = new SampledPair(one, other, GRID, 0);

  private static Courses courses(String name, long seed) {
    TrueCurve curve = TrueCurve.random(new Random(seed), 10);
    return new Courses(
        ReadByHand.session(name, curve, new Random(seed)), Optional.empty(), Courses.FEW);
  }

  @Test
  void a_mean_lead_has_the_quantiles_of_the_trials() {
    for (int i = 0; i + 1 < GRID.length; i += 40) {
      double[] left = pair.kilowatts(i);
      double[] right = pair.kilowatts(i + 1);
      double[] means = new double[pair.trials()];
      Arrays.setAll(means, k -> (left[k] + right[k]) / 2);
      Arrays.sort(means);
      Estimate lead = pair.meanLead(GRID[i], GRID[i + 1]);
      assertThat(lead.value())
          .isCloseTo(Arrays.stream(means).average().orElseThrow(), within(1e-9));
      assertThat(lead.bounds().low()).isCloseTo(means[means.length / 40], within(1e-9));
      assertThat(lead.bounds().high())
          .isCloseTo(means[means.length - 1 - means.length / 40], within(1e-9));
      assertThat(lead.bounds().low()).isLessThan(lead.value());
      assertThat(lead.bounds().high()).isGreaterThan(lead.value());
    }
  }

  @Test
  void the_lead_over_a_window_is_the_mean_of_its_parts() {
    double whole = pair.meanLead(20, 70).value();
    double parts =
        (pair.meanLead(20, 33.1).value() * 13.1 + pair.meanLead(33.1, 70).value() * 36.9);
    assertThat(whole).isCloseTo(parts / 50, within(1e-9));
    double gains = pair.timeGain(20, 33.1).value() + pair.timeGain(33.1, 70).value();
    assertThat(pair.timeGain(20, 70).value()).isCloseTo(gains, within(1e-9));
  }

  @Test
  void time_and_ratio_have_intervals_too() {
    for (Estimate estimate : new Estimate[] {pair.timeGain(20, 70), pair.meanRatio(20, 70)}) {
      assertThat(estimate.bounds().low()).isLessThan(estimate.value());
      assertThat(estimate.bounds().high()).isGreaterThan(estimate.value());
    }
  }

  @Test
  void a_session_has_its_own_power_and_time() {
    SampledPair same = new SampledPair(one, one, GRID, 0);
    assertThat(same.meanLead(20, 70).value()).isCloseTo(0, within(1e-9));
    assertThat(same.timeGain(20, 70).value()).isCloseTo(0, within(1e-9));
    assertThat(same.meanRatio(20, 70).value()).isCloseTo(100, within(0.1));
    // Independent draws: with paired draws, every difference would be zero.
    assertThat(same.meanLead(20, 70).bounds().width()).isPositive();
  }

  @Test
  void a_spread_between_runs_widens_every_interval() {
    SampledPair spread = new SampledPair(one, other, GRID, 0.1);
    assertThat(spread.meanLead(20, 70).bounds().width())
        .isGreaterThan(2 * pair.meanLead(20, 70).bounds().width());
    // Half-width of the 95 % interval of the quotient of two such runs, 1.1 to the power of the
    // root of 2.
    double half = 100 * (Math.pow(1.1, Math.sqrt(2)) - 1);
    double ratio = pair.meanRatio(20, 70).value() / 100;
    assertThat(spread.meanRatio(20, 70).bounds().width() / 2 / ratio)
        .isCloseTo(half, within(0.35 * half));
  }

  @Test
  void swapping_the_sessions_changes_the_sign_of_every_trial() {
    SampledPair swapped = new SampledPair(other, one, GRID, 0);
    assertThat(swapped.trials()).isEqualTo(pair.trials()).isEqualTo(5 * Courses.FEW);
    for (int i = 0; i < GRID.length; i += 20) {
      double[] opposite = Arrays.stream(swapped.kilowatts(i)).map(d -> -d).sorted().toArray();
      assertThat(opposite).isEqualTo(Arrays.stream(pair.kilowatts(i)).sorted().toArray());
    }
  }

  @Test
  void no_draw_is_compared_with_that_of_the_same_index() {
    // The differences of a session to itself would be zero in these trials.
    SampledPair same = new SampledPair(one, one, GRID, 0);
    assertThat(same.kilowatts(100)).doesNotContain(0);
    // With fewer draws on one side only as many are used.
    SampledPair fewer =
        new SampledPair(one, new Courses(other.session(), Optional.empty(), 60), GRID, 0);
    assertThat(fewer.trials()).isEqualTo(5 * 60);
    assertThat(new SampledPair(one, one, GRID, 0.1).kilowatts(100)).doesNotContain(0);
  }

  @Test
  void a_mean_of_sorted_values_is_exactly_opposite_for_opposite_values() {
    assertThat(SampledPair.mean(new double[] {7})).isEqualTo(7);
    assertThat(SampledPair.mean(new double[] {1, 2})).isEqualTo(1.5);
    assertThat(SampledPair.mean(new double[] {1, 2, 6})).isEqualTo(3);
    assertThat(SampledPair.mean(new double[] {0.1, 0.2, 0.3, 1e9}))
        .isEqualTo(-SampledPair.mean(new double[] {-1e9, -0.3, -0.2, -0.1}));
    assertThat(SampledPair.mean(new double[] {0.1, 0.2, 0.3}))
        .isEqualTo(-SampledPair.mean(new double[] {-0.3, -0.2, -0.1}));
  }
}
