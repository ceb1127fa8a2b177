package taperbook.metric.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.metric.fit.SampleMean;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.result.UncertaintySource;
import taperbook.session.DisplayRounding;
import taperbook.session.RangeItem;
import taperbook.session.RangeTest;

/** Draws of drives whose figures are exact, or differ by more than their last digits. */
final class DriveSamplerTest {
  private static final int COUNT = 600;

  private static RangeTest drive(Map<RangeItem, Estimate> amounts) {
    Map<RangeItem, Estimate> all = new EnumMap<>(RangeItem.class);
    all.put(RangeItem.START_SOC, Estimate.exactly(90));
    all.put(RangeItem.END_SOC, Estimate.exactly(10));
    all.putAll(amounts);
    return Sessions.rangeTest(all);
  }

  /** A drive over 80 % of the battery. */
  private static RangeTest drive(Estimate distance, Estimate energy) {
    return drive(Map.of(RangeItem.DISTANCE, distance, RangeItem.ENERGY_USED, energy));
  }

  private static DriveSampler sampler(RangeTest... tests) {
    return new DriveSampler(Arrays.asList(tests), DisplayRounding.NEAREST, COUNT, 7);
  }

  private static List<Drive> draws(DriveSampler sampler) {
    List<Drive> draws = new ArrayList<>();
    for (int k = 0; k < COUNT; k++) {
      draws.add(sampler.draw(k % 2 == 1));
    }
    return draws;
  }

  private static List<double[]> inputs(DriveSampler sampler, UncertaintySource source) {
    return sampler.inputs().getOrDefault(source, List.of());
  }

  private static double[] sorted(List<Drive> draws, ToDoubleFunction<Drive> quantity) {
    return draws.stream().mapToDouble(quantity).sorted().toArray();
  }

  @Test
  void an_exact_drive_has_its_range_and_consumption() {
    Drive drive = sampler(drive(Estimate.exactly(300), Estimate.exactly(48))).draw(false);
    assertThat(drive.fullRange()).isCloseTo(375, within(1e-9));
    assertThat(drive.consumption()).isCloseTo(160, within(1e-9));
    assertThat(drive.ratedRange()).isNaN();
  }

  @Test
  void the_odometer_correction_applies_to_range_and_consumption() {
    Drive drive =
        sampler(
                drive(
                    Map.of(
                        RangeItem.DISTANCE, Estimate.exactly(300),
                        RangeItem.ENERGY_USED, Estimate.exactly(48),
                        RangeItem.ODOMETER_CORRECTION, Estimate.exactly(0.96),
                        RangeItem.RATED_RANGE, Estimate.exactly(450))))
            .draw(false);
    assertThat(drive.fullRange()).isCloseTo(360, within(1e-9));
    assertThat(drive.consumption()).isCloseTo(48_000 / 288.0, within(1e-9));
    assertThat(drive.ratedRange()).isEqualTo(450);
  }

  @Test
  void without_an_energy_the_displayed_consumption_counts() {
    Drive drive =
        sampler(
                drive(
                    Map.of(
                        RangeItem.DISTANCE, Estimate.exactly(300),
                        RangeItem.CONSUMPTION_DISPLAYED, Estimate.exactly(171))))
            .draw(false);
    assertThat(drive.consumption()).isEqualTo(171);
    Drive bare = sampler(Sessions.rangeTest(Map.of())).draw(false);
    assertThat(bare.consumption()).isNaN();
    assertThat(bare.fullRange()).isNaN();
  }

  @Test
  void every_second_draw_is_opposite_to_the_one_before_it() {
    DriveSampler sampler = sampler(drive(Estimate.around(300, 2), Estimate.around(48, 0.1)));
    List<Drive> draws = draws(sampler);
    for (int k = 0; k < COUNT; k += 2) {
      assertThat(draws.get(k).speedShare() + draws.get(k + 1).speedShare())
          .isCloseTo(1, within(1e-12));
      // A range is proportional to its distance.
      assertThat(draws.get(k).fullRange() + draws.get(k + 1).fullRange())
          .isCloseTo(750, within(1e-9));
    }
    double[] ranges = sorted(draws, Drive::fullRange);
    assertThat(ranges[0]).isBetween(372.5, 373.0);
    assertThat(ranges[COUNT - 1]).isBetween(377.0, 377.5);
    assertThat(ranges[COUNT / 4]).isCloseTo(373.75, within(0.3));
    assertThat(inputs(sampler, UncertaintySource.RANGE_DISTANCE)).hasSize(1);
    double[] distances = inputs(sampler, UncertaintySource.RANGE_DISTANCE).get(0);
    for (int k = 0; k < COUNT; k++) {
      assertThat(draws.get(k).fullRange()).isCloseTo(distances[k] / 0.8, within(1e-9));
    }
    assertThat(inputs(sampler, UncertaintySource.RANGE_ENERGY).get(0)).hasSize(COUNT);
    assertThat(inputs(sampler, UncertaintySource.SPEED).get(0)).hasSize(COUNT);
    assertThat(inputs(sampler, UncertaintySource.RANGE_SOC).get(0)).containsOnly(80);
  }

  /** Ranges of 375, 400 and 387.5 km, with s = 12.5, and consumptions of 160, 155 and 171 Wh/km. */
  @Test
  void the_spread_of_drives_gives_students_interval() {
    RangeTest[] tests = {
      drive(Estimate.around(300, 0.05), Estimate.around(48, 0.05)),
      drive(Estimate.around(320, 0.05), Estimate.around(49.6, 0.05)),
      drive(Estimate.around(310, 0.05), Estimate.around(53.01, 0.05))
    };
    DriveSampler sampler = sampler(tests);
    List<Drive> draws = draws(sampler);
    double half = 4.302652729911275 * 12.5 / Math.sqrt(3);
    double[] ranges = sorted(draws, Drive::fullRange);
    // The 15th of 600 draws to either side is at a probability of 2.5 %.
    assertThat(ranges[15]).isCloseTo(387.5 - half, within(1e-6));
    assertThat(ranges[COUNT - 16]).isCloseTo(387.5 + half, within(1e-6));
    assertThat(Arrays.stream(ranges).average().orElseThrow()).isCloseTo(387.5, within(1e-6));
    SampleMean consumption = SampleMean.of(List.of(160.0, 155.0, 171.0));
    double[] consumptions = sorted(draws, Drive::consumption);
    assertThat(consumptions[15])
        .isCloseTo(consumption.value() - consumption.half95(), within(1e-6));
    assertThat(consumptions[COUNT - 16])
        .isCloseTo(consumption.value() + consumption.half95(), within(1e-6));
    // The limit of the probability keeps the outermost draws near the interval.
    double most = (2 * 0.98 - 1) / Math.sqrt(2 * 0.98 * 0.02) * 12.5 / Math.sqrt(3);
    assertThat(ranges[0]).isCloseTo(387.5 - most, within(1e-6));
    for (int k = 0; k < COUNT; k += 2) {
      Drive one = draws.get(k);
      // A drive with a higher consumption has a shorter range, and pairs are opposite.
      assertThat(one.fullRange() > 387.5).isEqualTo(one.consumption() < 162);
      assertThat(one.fullRange() + draws.get(k + 1).fullRange()).isCloseTo(775, within(1e-6));
    }
    double[] between = inputs(sampler, UncertaintySource.BETWEEN_DRIVES).get(0);
    for (int k = 0; k < COUNT; k++) {
      assertThat(between[k] > 0).isEqualTo(draws.get(k).consumption() > 162);
      assertThat(Math.abs(between[k])).isBetween(0.5, 0.98);
    }
    assertThat(Arrays.stream(between).map(Math::abs).distinct().count()).isGreaterThan(280);
  }

  @Test
  void drives_that_agree_within_their_digits_have_the_mean_of_their_draws() {
    DriveSampler sampler =
        sampler(
            drive(Estimate.around(300, 8), Estimate.exactly(48)),
            drive(Estimate.around(300.2, 8), Estimate.exactly(48)));
    List<Drive> draws = draws(sampler);
    List<double[]> distances = inputs(sampler, UncertaintySource.RANGE_DISTANCE);
    assertThat(distances).hasSize(2);
    for (int k = 0; k < COUNT; k++) {
      double mean = (distances.get(0)[k] + distances.get(1)[k]) / 2;
      assertThat(draws.get(k).fullRange()).isCloseTo(mean / 0.8, within(1e-9));
    }
    // Two independent draws: half of their pairs are on opposite sides of the middle.
    long apart = 0;
    for (int k = 0; k < COUNT; k += 2) {
      apart += distances.get(0)[k] > 300 == distances.get(1)[k] < 300.2 ? 1 : 0;
    }
    assertThat(apart).isBetween(100L, 200L);
  }

  @Test
  void all_drives_share_the_error_of_the_odometer() {
    Map<RangeItem, Estimate> first =
        Map.of(
            RangeItem.DISTANCE, Estimate.exactly(300),
            RangeItem.ODOMETER_CORRECTION, Estimate.around(0.98, 0.02));
    Map<RangeItem, Estimate> second =
        Map.of(
            RangeItem.DISTANCE, Estimate.exactly(300),
            RangeItem.ODOMETER_CORRECTION, Estimate.around(1, 0.01));
    DriveSampler sampler = sampler(drive(first), drive(second));
    draws(sampler);
    List<double[]> corrections =
        inputs(sampler, UncertaintySource.RANGE_DISTANCE).stream()
            .filter(values -> values[0] < 2)
            .toList();
    assertThat(corrections).hasSize(2);
    for (int k = 0; k < COUNT; k++) {
      assertThat((corrections.get(0)[k] - 0.96) / 0.04)
          .isCloseTo((corrections.get(1)[k] - 0.99) / 0.02, within(1e-9));
    }
  }

  @Test
  void drives_that_differ_keep_the_middle_of_their_charges() {
    // Ranges of 375 and 430 km, whose charges are known within 2 % only.
    DriveSampler sampler =
        sampler(
            drive(
                Map.of(
                    RangeItem.DISTANCE, Estimate.exactly(300),
                    RangeItem.START_SOC, Estimate.around(90, 0.5),
                    RangeItem.END_SOC, Estimate.around(10, 0.5))),
            drive(
                Map.of(
                    RangeItem.DISTANCE, Estimate.exactly(344),
                    RangeItem.START_SOC, Estimate.around(90, 0.5),
                    RangeItem.END_SOC, Estimate.around(10, 0.5))));
    double[] ranges = sorted(draws(sampler), Drive::fullRange);
    double half = Math.tan(0.475 * Math.PI) * 27.5;
    assertThat(ranges[15]).isCloseTo(402.5 - half, within(1e-6));
    assertThat(ranges[COUNT - 16]).isCloseTo(402.5 + half, within(1e-6));
    assertThat(inputs(sampler, UncertaintySource.RANGE_SOC)).hasSize(2);
  }

  @Test
  void a_display_of_unknown_rounding_shifts_both_drives_alike() {
    Map<RangeItem, Estimate> amounts =
        Map.of(
            RangeItem.DISTANCE, Estimate.exactly(300),
            RangeItem.START_SOC, Estimate.around(100, 0.5),
            RangeItem.END_SOC, Estimate.around(10, 0.5));
    DriveSampler sampler =
        new DriveSampler(List.of(drive(amounts)), DisplayRounding.NOT_KNOWN, COUNT, 3);
    double[] used = draws(sampler).stream().mapToDouble(d -> 30_000 / d.fullRange()).toArray();
    Interval possible = new Interval(88, 91);
    assertThat(Arrays.stream(used).allMatch(possible::contains)).isTrue();
    // Full at the start, and 9 to 11 % at the end.
    assertThat(Arrays.stream(used).min().orElseThrow()).isLessThan(89.2);
    assertThat(Arrays.stream(used).max().orElseThrow()).isGreaterThan(90.8);
  }

  @Test
  void drives_that_differ_by_more_than_their_digits_allow_have_students_interval() {
    // Half of Student's interval of 375 and 377.5 km is 15.9 km. The mean of two figures within 10
    // km, of rectangular distributions, has one of 1.96 * 20 / sqrt(12) / sqrt(2) = 8 km.
    double[] ranges =
        sorted(
            draws(
                sampler(
                    drive(Estimate.around(300, 8), Estimate.exactly(48)),
                    drive(Estimate.around(302, 8), Estimate.exactly(48)))),
            Drive::fullRange);
    double half = Math.tan(0.475 * Math.PI) * 1.25;
    assertThat(ranges[15]).isCloseTo(376.25 - half, within(1e-6));
    assertThat(ranges[COUNT - 16]).isCloseTo(376.25 + half, within(1e-6));
  }

  @Test
  void the_odometer_correction_applies_to_the_mean_of_several_drives() {
    double[] kilometres = {300, 320, 310};
    double[] energies = {48, 49.6, 53.01};
    RangeTest[] tests = new RangeTest[3];
    for (int i = 0; i < 3; i++) {
      tests[i] =
          drive(
              Map.of(
                  RangeItem.DISTANCE, Estimate.exactly(kilometres[i]),
                  RangeItem.ENERGY_USED, Estimate.exactly(energies[i]),
                  RangeItem.ODOMETER_CORRECTION, Estimate.exactly(0.8)));
    }
    List<Drive> draws = draws(sampler(tests));
    assertThat(draws.stream().mapToDouble(Drive::fullRange).average().orElseThrow())
        .isCloseTo(310, within(1e-6));
    assertThat(draws.stream().mapToDouble(Drive::consumption).average().orElseThrow())
        .isCloseTo(162 / 0.8, within(1e-6));
  }

  @Test
  void a_figure_that_one_drive_lacks_is_that_of_the_other() {
    Drive drive =
        sampler(
                drive(Map.of(RangeItem.DISTANCE, Estimate.exactly(300))),
                drive(Estimate.exactly(300), Estimate.exactly(48)))
            .draw(false);
    assertThat(drive.consumption()).isCloseTo(160, within(1e-9));
    assertThat(drive.fullRange()).isCloseTo(375, within(1e-9));
  }

  @Test
  void a_single_drive_has_no_spread_between_drives() {
    DriveSampler sampler = sampler(drive(Estimate.around(300, 2), Estimate.around(48, 0.1)));
    draws(sampler);
    double[] between = inputs(sampler, UncertaintySource.BETWEEN_DRIVES).get(0);
    assertThat(Arrays.stream(between).distinct().count()).isEqualTo(1);
  }
}
