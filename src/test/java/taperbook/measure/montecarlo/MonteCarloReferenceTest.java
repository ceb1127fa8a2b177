package taperbook.measure.montecarlo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The procedure against worked examples of the guides. Values marked exact follow from the
 * convolution of the input distributions (JCGM 101 prints them rounded); they were recomputed
 * independently.
 */
final class MonteCarloReferenceTest {
  /** More digits than are ever stable, and so half a million trials. */
  private static final MonteCarlo PROCEDURE = new MonteCarlo(5, 0.95, 50);

  private static double rectangular(Random random, double mean, double standardDeviation) {
    return mean + standardDeviation * Math.sqrt(3) * (2 * random.nextDouble() - 1);
  }

  private static Distribution only(MonteCarlo procedure, MonteCarlo.Trial trial) {
    return procedure.run(trial, 1).get(0).distribution();
  }

  @Test
  void four_normal_inputs_of_jcgm_101_9_2_2() {
    Random random = new Random(1);
    Distribution d =
        only(
            PROCEDURE,
            (v, open) -> {
              v[0] = 0;
              for (int i = 0; i < 4; i++) {
                v[0] += random.nextGaussian();
              }
            });
    assertThat(d.mean()).isCloseTo(0, within(0.02));
    assertThat(d.standardUncertainty()).isCloseTo(2.00, within(0.01));
    // Table 2: -3.92 to 3.92.
    assertThat((d.high() - d.low()) / 2).isCloseTo(3.92, within(0.05));
  }

  @Test
  void four_rectangular_inputs_of_jcgm_101_9_2_3() {
    Random random = new Random(2);
    Distribution d =
        only(
            PROCEDURE,
            (v, open) -> {
              v[0] = 0;
              for (int i = 0; i < 4; i++) {
                v[0] += rectangular(random, 0, 1);
              }
            });
    assertThat(d.mean()).isCloseTo(0, within(0.02));
    assertThat(d.standardUncertainty()).isCloseTo(2.00, within(0.01));
    // Table 3 prints 3.88; exact half-width 3.879407. The framework's 3.92 must not come out.
    assertThat((d.high() - d.low()) / 2).isCloseTo(3.879407, within(0.02));
  }

  @Test
  void one_dominating_rectangular_input_of_jcgm_101_9_2_4() {
    Random random = new Random(3);
    Distribution d =
        only(
            PROCEDURE,
            (v, open) -> {
              v[0] = rectangular(random, 0, 10);
              for (int i = 0; i < 3; i++) {
                v[0] += rectangular(random, 0, 1);
              }
            });
    assertThat(d.standardUncertainty()).isCloseTo(10.1489, within(0.05));
    // Table 4 prints 17.0; exact half-width 17.0158, the framework's would be 19.9.
    assertThat((d.high() - d.low()) / 2).isCloseTo(17.0158, within(0.08));
  }

  @Test
  void end_gauge_of_gum_h_1() {
    // l = ls + d - ls (d_alpha theta + alpha_s d_theta), JCGM 100:2008, H.1, inputs of table H.1:
    // normal with the stated standard uncertainties; rectangular for temperatures and expansion.
    Random random = new Random(4);
    Distribution d =
        only(
            new MonteCarlo(2, 0.99, 50),
            (v, open) -> {
              double ls = 50_000_623 + 25 * random.nextGaussian();
              double diff =
                  215
                      + 5.8 * random.nextGaussian()
                      + 3.9 * random.nextGaussian()
                      + 6.7 * random.nextGaussian();
              double alpha = 11.5e-6 + 2e-6 * (2 * random.nextDouble() - 1);
              double dAlpha = 1e-6 * (2 * random.nextDouble() - 1);
              double dTheta = 0.05 * (2 * random.nextDouble() - 1);
              double theta =
                  -0.1
                      + 0.2 * random.nextGaussian()
                      + 0.5 * Math.sin(2 * Math.PI * random.nextDouble());
              v[0] = ls + diff - ls * (dAlpha * theta + alpha * dTheta) - 50_000_000;
            });
    assertThat(d.mean()).isCloseTo(838, within(1.0));
    // H.1.7: 34 nm with the second-order terms that a simulation includes by itself.
    assertThat(d.standardUncertainty()).isCloseTo(34, within(1.0));
  }

  @Test
  void the_tolerance_is_half_a_unit_of_the_last_wanted_digit() {
    // JCGM 101:2008, 7.9.2, examples: 0.035 with two digits gives 0.0005; 2 with one digit 0.5.
    assertThat(new MonteCarlo(2, 0.95, 2).tolerance(0.035)).isCloseTo(0.0005, within(1e-12));
    assertThat(new MonteCarlo(1, 0.95, 2).tolerance(2)).isCloseTo(0.5, within(1e-12));
  }

  @Test
  void a_constant_output_ends_after_the_least_number_of_blocks() {
    MonteCarlo.Result result = PROCEDURE.run((v, open) -> v[0] = 7, 1).get(0);
    assertThat(result.trials()).isEqualTo(2 * MonteCarlo.BLOCK);
    assertThat(result.stable()).isTrue();
    assertThat(result.distribution()).isEqualTo(new Distribution(7, 0, 7, 7, 7, 7));
  }

  @Test
  void an_output_leaves_when_it_is_stable_and_the_others_go_on() {
    // The second output is Cauchy's distribution, which has no standard deviation to be stable.
    Random random = new Random(6);
    List<Integer> asked = new ArrayList<>();
    List<MonteCarlo.Result> results =
        new MonteCarlo(1, 0.95, 8)
            .run(
                (v, open) -> {
                  v[0] = 3 * random.nextGaussian();
                  v[1] = Math.tan(Math.PI * (random.nextDouble() - 0.5));
                  asked.add(open.length);
                },
                2);
    assertThat(results.get(1).stable()).isFalse();
    assertThat(results.get(1).trials()).isEqualTo(8 * MonteCarlo.BLOCK);
    assertThat(results.get(0).stable()).isTrue();
    assertThat(results.get(0).trials()).isLessThan(results.get(1).trials());
    assertThat(asked).hasSize(results.get(1).trials());
    assertThat(asked.stream().filter(n -> n == 2)).hasSize(results.get(0).trials());
    // Normal with standard deviation 3: 1.96 times that.
    assertThat(results.get(0).distribution().highQuantile()).isCloseTo(5.88, within(0.15));
  }

  @Test
  void a_skewed_output_gets_its_shortest_interval() {
    // Exponential with mean 1: the shortest 95 % interval begins at 0 and ends at ln 20 = 2.9957.
    Random random = new Random(5);
    Distribution d = only(PROCEDURE, (v, open) -> v[0] = -Math.log(1 - random.nextDouble()));
    assertThat(d.low()).isCloseTo(0, within(0.02));
    assertThat(d.high()).isCloseTo(Math.log(20), within(0.06));
  }
}
