package taperbook.metric.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.BitSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.metric.Sessions;
import taperbook.quantity.Interval;
import taperbook.session.Channel;

/**
 * Rows every 60 s of 120 kW into 60 kWh: 2 kWh and 3.33 % from row to row. Readings of the charge
 * have the indices 0 to 20, those of power 21 to 41, those of energy 42 to 62.
 */
final class ReadingFitTest {
  private static final int ROWS = 21;
  private static final int POWER = ROWS;
  private static final int ENERGY = 2 * ROWS;

  private final double[] seconds = IntStream.range(0, ROWS).mapToDouble(i -> 60 * i).toArray();
  private final double[] soc =
      IntStream.range(0, ROWS).mapToDouble(i -> Math.floor(10 + 10 * i / 3.0)).toArray();
  private final double[] power = IntStream.range(0, ROWS).mapToDouble(i -> 120).toArray();
  private final double[] energy = IntStream.range(0, ROWS).mapToDouble(i -> 2 * i).toArray();

  private ReadingFit fit() {
    return new ReadingFit(
        Sessions.session()
            .channel(Channel.SOC, 0.5, seconds, soc)
            .channel(Channel.POWER, 0.5, seconds, power)
            .channel(Channel.ENERGY_ADDED, 0.05, seconds, energy)
            .build());
  }

  private static BitSet only(int... readings) {
    BitSet set = new BitSet();
    Arrays.stream(readings).forEach(set::set);
    return set;
  }

  @Test
  void readings_are_in_the_order_of_their_channels() {
    ReadingFit fit = fit();
    assertThat(fit.size()).isEqualTo(3 * ROWS);
    assertThat(fit.channel(4)).isEqualTo(Channel.SOC);
    assertThat(fit.channel(POWER + 4)).isEqualTo(Channel.POWER);
    assertThat(fit.channel(ENERGY + 4)).isEqualTo(Channel.ENERGY_ADDED);
    assertThat(fit.index(POWER + 4)).isEqualTo(4);
    assertThat(fit.second(ENERGY + 4)).isEqualTo(240);
  }

  @Test
  void consistent_readings_fit_and_hardly_any_gains_by_leaving_it_out() {
    ReadingFit fit = fit();
    for (int i = 0; i < fit.size(); i++) {
      assertThat(fit.gainWithout(only(i))).as("%s", i).isBetween(-0.5, 3.0);
      assertThat(fit.isLeftOut(i)).isFalse();
    }
  }

  @Test
  void a_consistent_reading_is_within_the_values_that_fit() {
    ReadingFit fit = fit();
    for (int row = 2; row < ROWS - 2; row++) {
      assertThat(fit.fitting(POWER + row).contains(120)).isTrue();
      assertThat(fit.fitting(ENERGY + row).contains(2 * row)).isTrue();
      assertThat(fit.fitting(row).contains(soc[row])).isTrue();
      assertThat(fit.fitting(POWER + row).width()).isBetween(1.0, 20.0);
      assertThat(fit.fitting(ENERGY + row).width()).isBetween(0.1, 0.5);
      assertThat(fit.fitting(row).width()).isBetween(1.0, 4.0);
    }
  }

  @ParameterizedTest
  @CsvSource({"ENERGY_ADDED, 42, 8, 21", "POWER, 21, 9, 210", "SOC, 0, 10, 63"})
  void a_misread_reading_fits_worst_and_its_true_value_fits_without_it(
      Channel channel, int first, int row, double misread) {
    double[] values = channel == Channel.SOC ? soc : channel == Channel.POWER ? power : energy;
    double truth = values[row];
    values[row] = misread;
    ReadingFit fit = fit();
    int i = first + row;
    assertThat(fit.likely(3)).hasSize(3).startsWith(i);
    double gain = fit.gainWithout(only(i));
    assertThat(gain).isGreaterThan(8);
    // The trial changes nothing.
    assertThat(fit.gainWithout(only(i))).isCloseTo(gain, within(1e-6));
    for (int other : new int[] {first + row - 3, first + row + 3}) {
      assertThat(fit.gainWithout(only(other))).isLessThan(gain / 2);
    }
    fit.leaveOut(only(i));
    assertThat(fit.isLeftOut(i)).isTrue();
    assertThat(fit.isLeftOut(i + 1)).isFalse();
    assertThat(fit.likely(fit.size())).endsWith(i);
    Interval fitting = fit.fitting(i);
    assertThat(fitting.contains(truth)).as("%s", fitting).isTrue();
    assertThat(fitting.contains(misread)).isFalse();
    assertThat(fitting.middle()).isCloseTo(truth, within(channel == Channel.POWER ? 3 : 0.7));
    assertThat(fitting.width()).isGreaterThanOrEqualTo(channel == Channel.ENERGY_ADDED ? 0.1 : 1);
    // Once it is left out, no other reading is suspicious.
    for (int k = 0; k < fit.size(); k++) {
      assertThat(fit.gainWithout(only(k))).isLessThan(3);
    }
  }

  @Test
  void a_time_fits_where_the_counter_shows_the_reading_within_its_step() {
    ReadingFit fit = fit();
    fit.leaveOut(only(8, POWER + 8, ENERGY + 8));
    // 16 kWh within 0.1 kWh, at 120 kW 3 s to either side of 480 s.
    Interval ofCounter = fit.timesThatFit(only(ENERGY + 8), new Interval(430, 530)).orElseThrow();
    assertThat(ofCounter.low()).isCloseTo(477, within(1.1));
    assertThat(ofCounter.high()).isCloseTo(483, within(1.1));
    // The middle of the step of 36 % within 1 %, at 1 % in 18 s. The middles of all steps are
    // higher than the charge by a sixth on average, so that 480 s is at 36.83 %.
    Interval ofCharge = fit.timesThatFit(only(8), new Interval(430, 530)).orElseThrow();
    assertThat(ofCharge.low()).isCloseTo(456, within(3.0));
    assertThat(ofCharge.high()).isCloseTo(492, within(3.0));
    // Power is the same at all times.
    assertThat(fit.timesThatFit(only(POWER + 8), new Interval(430.5, 529.5)))
        .contains(new Interval(431, 529));
    Interval ofAll =
        fit.timesThatFit(only(8, POWER + 8, ENERGY + 8), new Interval(430, 530)).orElseThrow();
    assertThat(ofAll.low()).isEqualTo(Math.max(ofCounter.low(), ofCharge.low()));
    assertThat(ofAll.high()).isEqualTo(Math.min(ofCounter.high(), ofCharge.high()));
    assertThat(fit.timesThatFit(only(ENERGY + 8), new Interval(490, 530))).isEmpty();
    Interval edge = fit.timesThatFit(only(ENERGY + 8), new Interval(480, 480)).orElseThrow();
    assertThat(edge).isEqualTo(new Interval(480, 480));
  }

  @Test
  void a_power_that_differs_from_the_course_fits_at_no_time() {
    power[8] = 150;
    ReadingFit fit = fit();
    fit.leaveOut(only(POWER + 8));
    assertThat(fit.timesThatFit(only(POWER + 8), new Interval(430, 530))).isEmpty();
  }

  /** Unit cost of 0.7 % of 120 kW, the 90th percentile. */
  private static final double SCALE = 0.84;

  private double excused(int row) {
    return fit().excusedGain(POWER + row) * SCALE;
  }

  @Test
  void a_rise_at_the_start_and_a_fall_at_the_end_are_excused() {
    power[0] = 50;
    power[ROWS - 1] = 20;
    assertThat(excused(0)).isCloseTo(70, within(1e-9));
    assertThat(excused(ROWS - 1)).isCloseTo(100, within(1e-9));
    power[0] = 130;
    power[ROWS - 1] = 125;
    assertThat(excused(0)).isZero();
    assertThat(excused(ROWS - 1)).isZero();
  }

  @Test
  void an_extremum_is_excused_as_far_as_the_slopes_beside_it_lead() {
    double[] peak = {90, 100, 110, 118, 112, 106};
    System.arraycopy(peak, 0, power, 3, peak.length);
    // From 100 and 110 to 120, from 106 and 112 to 118: 8 and 6 over the neighbours.
    assertThat(excused(6)).isCloseTo(2 * 6, within(1e-9));
    power[6] = 140;
    assertThat(excused(6)).isCloseTo(2 * (120 - 112), within(1e-9));
    double[] valley = {130, 120, 110, 95, 108, 116};
    System.arraycopy(valley, 0, power, 3, valley.length);
    // From 120 and 110 to 100, from 116 and 108 to 100.
    assertThat(excused(6)).isCloseTo(2 * (108 - 100), within(1e-9));
    power[6] = 104;
    assertThat(excused(6)).isCloseTo(2 * (108 - 104), within(1e-9));
    double[] slope = {130, 125, 120, 115, 110, 105};
    System.arraycopy(slope, 0, power, 3, slope.length);
    assertThat(excused(6)).isZero();
  }

  @Test
  void the_second_reading_may_be_a_top_of_up_to_one_and_four_tenths() {
    power[0] = 60;
    power[1] = 150;
    assertThat(excused(1)).isCloseTo(2 * (150 - 120), within(1e-9));
    power[1] = 200;
    assertThat(excused(1)).isCloseTo(2 * (1.4 * 120 - 120), within(1e-9));
  }

  @Test
  void only_readings_of_power_are_excused() {
    assertThat(fit().excusedGain(8)).isZero();
    assertThat(fit().excusedGain(ENERGY + 8)).isZero();
  }

  @Test
  void long_gaps_allow_larger_changes_and_weak_chargers_at_least_a_third_of_a_kilowatt() {
    power[0] = 50;
    // Gaps of 150 s are twice the short ones.
    Arrays.setAll(seconds, i -> 150 * i);
    Arrays.setAll(energy, i -> 5 * i);
    Arrays.setAll(soc, i -> Math.floor(2 + 4 * i));
    assertThat(fit().excusedGain(POWER)).isCloseTo(70 / (2 * SCALE), within(1e-9));
    Arrays.fill(power, 11);
    power[0] = 5;
    Arrays.setAll(seconds, i -> 60 * i);
    Arrays.setAll(energy, i -> 11 * i / 60.0);
    assertThat(fit().excusedGain(POWER)).isCloseTo(6 / 0.3, within(1e-9));
  }
}
