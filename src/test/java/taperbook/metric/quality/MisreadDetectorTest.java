package taperbook.metric.quality;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.metric.course.Displays;
import taperbook.metric.course.TrueSession;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.DisplayRounding;
import taperbook.session.Review;
import taperbook.session.Review.Misread;
import taperbook.session.RowsWritten;
import taperbook.session.Session;

/** Constant power of 120 kW into 60 kWh: 2 kWh and 3 1/3 % per minute. */
final class MisreadDetectorTest {
  private static final int ROWS = 21;

  private final double[] seconds = new double[ROWS];
  private final double[] soc = new double[ROWS];
  private final double[] power = new double[ROWS];
  private final double[] energy = new double[ROWS];

  MisreadDetectorTest() {
    for (int i = 0; i < ROWS; i++) {
      seconds[i] = 60 * i;
      soc[i] = Math.floor(10 + 10 * i / 3.0);
      power[i] = 120;
      energy[i] = 2 * i;
    }
  }

  private Session session() {
    return Sessions.session()
        .clockHalfStep(0.5)
        .channel(Channel.SOC, 0.5, seconds, soc)
        .channel(Channel.POWER, 0.5, seconds, power)
        .channel(Channel.ENERGY_ADDED, 0.05, seconds, energy)
        .amount(ConditionItem.STATION_RATED_POWER, 200, 1)
        .build();
  }

  private Misread only() {
    List<Misread> found = MisreadDetector.find(session());
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  @Test
  void consistent_readings_are_not_reported() {
    assertThat(MisreadDetector.find(session())).isEmpty();
  }

  @Test
  void swapped_digits_are_detected_and_named() {
    energy[8] = 61;
    Misread misread = only();
    assertThat(misread.channel()).contains(Channel.ENERGY_ADDED);
    assertThat(misread.row().line()).isEqualTo(10);
    assertThat(misread.read()).isEqualTo(61);
    assertThat(misread.fitting().contains(16)).isTrue();
    assertThat(misread.fitting().width()).isLessThan(1);
    assertThat(misread.slip()).contains("16.0: digits swapped?");
  }

  @Test
  void a_wrong_time_is_attributed_to_the_time_and_not_to_the_readings() {
    seconds[9] += 50;
    Misread misread = only();
    assertThat(misread.channel()).isEmpty();
    assertThat(misread.row().line()).isEqualTo(11);
    assertThat(misread.read()).isEqualTo(590);
    assertThat(misread.fitting().contains(540)).isTrue();
    assertThat(misread.fitting().width()).isLessThan(25);
  }

  @Test
  void power_far_above_the_station_rating_is_impossible() {
    power[5] = 301;
    Misread misread = only();
    assertThat(misread.isImpossible()).isTrue();
    assertThat(misread.fitting().contains(120)).isTrue();
  }

  @Test
  void power_above_the_station_rating_alone_is_doubtful() {
    power[5] = 190;
    assertThat(only().isImpossible()).isFalse();
  }

  @Test
  void negative_power_while_the_charge_rises_is_impossible() {
    power[5] = -40;
    assertThat(only().isImpossible()).isTrue();
  }

  @Test
  void a_charge_that_jumps_and_falls_is_impossible() {
    soc[6] = 39;
    Misread misread = only();
    assertThat(misread.isImpossible()).isTrue();
    assertThat(misread.fitting().contains(30)).isTrue();
  }

  @Test
  void confirmed_readings_are_not_reported_again() {
    energy[8] = 61;
    Session session = session();
    Misread misread = only();
    Review review =
        new Review(
            List.of(new Review.AsRead(misread.row(), List.of(Channel.ENERGY_ADDED), true)),
            List.of());
    assertThat(MisreadDetector.find(session.with(review)))
        .noneMatch(m -> m.row().equals(misread.row()) && m.channel().equals(misread.channel()));
  }

  @Test
  void a_session_of_few_rows_is_not_checked_against_its_curve() {
    Session few =
        Sessions.session()
            .clockHalfStep(0.5)
            .channel(Channel.SOC, 0.5, new double[] {0, 600, 1200}, new double[] {10, 50, 60})
            .build();
    assertThat(MisreadDetector.find(few)).isEmpty();
  }

  @Test
  void one_wrong_row_of_a_log_is_detected() {
    Random random = new Random(91);
    TrueSession truth = TrueSession.of(random, 8, 85);
    Displays.Way way =
        new Displays.Way(DisplayRounding.NEAREST, RowsWritten.AT_SET_TIMES, 1, false);
    Session log = Displays.logged(truth, way, random);
    double[] values = log.trace(Channel.POWER).orElseThrow().values();
    double right = values[700];
    values[700] = right / 10;
    Session wrong =
        TranscriptionSlips.with(
            log, Channel.POWER, log.trace(Channel.POWER).orElseThrow().seconds(), values);
    List<Misread> found = MisreadDetector.find(wrong);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).channel()).isEqualTo(Optional.of(Channel.POWER));
    assertThat(found.get(0).row()).isEqualTo(log.trace(Channel.POWER).orElseThrow().row(700));
    assertThat(found.get(0).fitting().contains(right)).isTrue();
  }
}
