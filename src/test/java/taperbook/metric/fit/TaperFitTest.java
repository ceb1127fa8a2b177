package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import taperbook.quantity.Interval;
import taperbook.session.Trace;

final class TaperFitTest {
  private static final TruePower CURVE =
      new TruePower(8, 60, new double[] {21.3, 44.6, 63.2}, new double[] {8.4, -0.1, -2.2, -1.1});

  private static TaperFit fit(TruePower curve, double from, double to, double step) {
    double[] soc = DoubleStream.iterate(from, q -> q <= to, q -> q + step).toArray();
    double[] power = DoubleStream.of(soc).map(curve::at).toArray();
    return TaperFit.of(new TaperPoints(soc, power, 0, 0), DoubleStream.of(power).max().orElse(0));
  }

  private static List<SegmentKind> kinds(TaperFit fit) {
    return fit.segments().stream().map(Segment::kind).toList();
  }

  @Test
  void an_exact_curve_is_recovered() {
    TaperFit fit = fit(CURVE, 8, 88, 1.7);
    assertThat(kinds(fit))
        .containsExactly(
            SegmentKind.WARM_UP, SegmentKind.PLATEAU, SegmentKind.TAPER, SegmentKind.TAPER);
    for (int k = 0; k < 4; k++) {
      Segment segment = fit.segments().get(k);
      assertThat(segment.slope().value())
          .isCloseTo(CURVE.slopes()[k], Percentage.withPercentage(1));
      if (k < 3) {
        assertThat(segment.to().value()).isCloseTo(CURVE.breaks()[k], within(0.1));
      }
      double middle = (segment.from().value() + segment.to().value()) / 2;
      assertThat(segment.power().value()).isCloseTo(CURVE.at(middle), within(0.05));
      assertThat(segment.startKilowatts())
          .isCloseTo(CURVE.at(segment.from().value()), within(0.05));
      assertThat(segment.endKilowatts()).isCloseTo(CURVE.at(segment.to().value()), within(0.05));
    }
  }

  @Test
  void a_curve_in_whole_per_cent_and_kilowatts_is_recovered_within_its_uncertainty() {
    TaperPoints points =
        CURVE.read(
            8.2, 10.9, 13.1, 15.6, 18.2, 20.4, 23.3, 26.1, 29.8, 33.4, 36.7, 40.1, 43.2, 46.9, 49.3,
            52.8, 55.1, 58.6, 61.4, 64.2, 67.7, 71.3, 74.9, 78.1, 81.6, 85.2);
    TaperFit fit = TaperFit.of(points, 172);
    assertThat(fit.segments()).hasSize(4);
    for (int k = 0; k < 4; k++) {
      Segment segment = fit.segments().get(k);
      assertThat(segment.slope().bounds().contains(CURVE.slopes()[k])).isTrue();
      if (k < 3) {
        assertThat(segment.to().bounds().contains(CURVE.breaks()[k])).isTrue();
        assertThat(segment.to().bounds().width()).isBetween(1.0, 8.0);
      }
    }
  }

  @Test
  void intervals_of_breakpoints_are_never_narrower_than_the_display() {
    double[] soc = IntStream.rangeClosed(5, 95).asDoubleStream().toArray();
    TruePower steep = new TruePower(5, 150, new double[] {50}, new double[] {0, -3});
    double[] power = DoubleStream.of(soc).map(steep::at).toArray();
    TaperFit fit = TaperFit.of(new TaperPoints(soc, power, 0.5, 0.05), 150);
    assertThat(fit.segments()).hasSize(2);
    assertThat(fit.segments().get(0).to().bounds().width()).isGreaterThanOrEqualTo(1);
    assertThat(fit.segments().get(1).slope().bounds().width()).isGreaterThan(0);
  }

  @Test
  void a_drop_between_two_readings_is_a_step_in_their_gap() {
    double[] soc = IntStream.rangeClosed(10, 80).filter(q -> q % 2 == 0).asDoubleStream().toArray();
    double[] power = DoubleStream.of(soc).map(q -> q <= 50 ? 150 : 100 - (q - 52)).toArray();
    TaperFit fit = TaperFit.of(new TaperPoints(soc, power, 0.5, 0.5), 150);
    assertThat(kinds(fit)).containsExactly(SegmentKind.PLATEAU, SegmentKind.TAPER);
    assertThat(fit.steps()).hasSize(1);
    assertThat(fit.steps().get(0).after()).isZero();
    assertThat(fit.steps().get(0).soc().bounds()).isEqualTo(new Interval(49.5, 52.5));
    // From 150 kW to 102 kW at 50 %, or to 100 kW at 52 %.
    assertThat(fit.steps().get(0).height().value()).isCloseTo(-49, within(1e-6));
    assertThat(fit.steps().get(0).height().bounds().contains(-48)).isTrue();
    assertThat(fit.steps().get(0).height().bounds().contains(-50)).isTrue();
    assertThat(fit.segments().get(0).power().value()).isCloseTo(150, within(0.01));
    assertThat(fit.segments().get(0).slope().value()).isCloseTo(0, within(0.01));
    assertThat(fit.segments().get(1).slope().value()).isCloseTo(-1, within(0.01));
  }

  /** Rows of a logger: five levels, each change between two rows at one displayed per cent. */
  @Test
  void a_logged_curve_of_exact_steps_is_flat_between_them() {
    double[] places = {30.2, 45.3, 60.4, 70.1};
    double[] levels = {150, 128, 110, 90, 60};
    List<double[]> rows = new ArrayList<>();
    double soc = 9;
    for (int second = 0; soc < 85; second++) {
      int level = 0;
      while (level < places.length && soc > places[level]) {
        level++;
      }
      rows.add(new double[] {second, Math.rint(soc), levels[level]});
      soc += levels[level] / 3600 / 0.6;
    }
    double[] seconds = rows.stream().mapToDouble(r -> r[0]).toArray();
    int[] lines = IntStream.range(2, rows.size() + 2).toArray();
    Trace socs =
        new Trace(
            "readings.csv",
            seconds,
            rows.stream().mapToDouble(r -> r[1]).toArray(),
            lines,
            0.5,
            0.5);
    Trace powers =
        new Trace(
            "readings.csv",
            seconds,
            rows.stream().mapToDouble(r -> r[2]).toArray(),
            lines,
            0.5,
            0.5);
    TaperFit fit = TaperFit.of(socs, powers).orElseThrow();
    assertThat(kinds(fit)).hasSize(5).containsOnly(SegmentKind.PLATEAU);
    assertThat(fit.steps()).hasSize(4);
    for (int k = 0; k < 5; k++) {
      assertThat(fit.segments().get(k).slopeSeen()).isTrue();
      assertThat(fit.segments().get(k).slope().bounds().contains(0)).isTrue();
      assertThat(fit.segments().get(k).power().value()).isCloseTo(levels[k], within(1e-6));
    }
    for (int j = 0; j < 4; j++) {
      assertThat(fit.steps().get(j).soc().bounds().contains(places[j])).isTrue();
      assertThat(fit.steps().get(j).height().bounds().contains(levels[j + 1] - levels[j])).isTrue();
    }
  }

  @Test
  void a_later_rise_is_not_a_warm_up_climb() {
    TruePower rising = new TruePower(10, 90, new double[] {30, 45, 60}, new double[] {0, 4, 0, -2});
    assertThat(kinds(fit(rising, 10, 80, 1)))
        .containsExactly(
            SegmentKind.PLATEAU, SegmentKind.RISE, SegmentKind.PLATEAU, SegmentKind.TAPER);
  }

  @Test
  void a_change_of_less_than_a_step_of_the_display_is_a_plateau() {
    double[] soc = {10, 20, 30, 40, 50, 60};
    double[] power = {3, 3, 3, 3, 2, 2};
    TaperFit fit = TaperFit.of(new TaperPoints(soc, power, 0.5, 1), 3);
    assertThat(kinds(fit)).containsExactly(SegmentKind.PLATEAU);
  }

  @Test
  void readings_at_one_state_of_charge_are_merged() {
    double[] seconds = IntStream.range(0, 3600).asDoubleStream().toArray();
    double[] soc = DoubleStream.of(seconds).map(s -> Math.rint(10 + s / 50)).toArray();
    double[] power =
        DoubleStream.of(seconds)
            .map(s -> 10 + s / 50)
            .map(q -> Math.rint(10 * (q < 40 ? 140 : 140 - 2 * (q - 40))) / 10)
            .toArray();
    int[] lines = IntStream.range(2, 3602).toArray();
    Trace socs = new Trace("readings.csv", seconds, soc, lines, 0.5, 0.5);
    Trace powers = new Trace("readings.csv", seconds, power, lines, 0.05, 0.5);
    TaperFit fit = TaperFit.of(socs, powers).orElseThrow();
    assertThat(fit.points()).isEqualTo(73);
    assertThat(kinds(fit)).containsExactly(SegmentKind.PLATEAU, SegmentKind.TAPER);
    assertThat(fit.segments().get(0).to().value()).isCloseTo(40, within(0.5));
    assertThat(fit.segments().get(1).slope().value()).isCloseTo(-2, within(0.02));
    assertThat(fit.segments().get(0).rows()).hasSizeBetween(1450, 1600);
    assertThat(TaperFit.of(socs, powers)).contains(fit);
  }

  @Test
  void a_session_within_one_per_cent_has_no_fit() {
    double[] seconds = {0, 60, 120, 180, 240, 300};
    int[] lines = {2, 3, 4, 5, 6, 7};
    double[] hardly = {10, 10.1, 10.2, 10.3, 10.4, 10.5};
    Trace soc = new Trace("readings.csv", seconds, hardly, lines, 0.05, 0);
    Trace power =
        new Trace("readings.csv", seconds, new double[] {50, 50, 51, 52, 53, 53}, lines, 0.5, 0);
    assertThat(TaperFit.of(soc, power)).isEmpty();
  }

  @Test
  void too_few_states_of_charge_have_no_fit() {
    double[] seconds = {0, 60, 120, 180, 240, 300};
    int[] lines = {2, 3, 4, 5, 6, 7};
    Trace soc =
        new Trace("readings.csv", seconds, new double[] {10, 10, 12, 14, 16, 16}, lines, 0.5, 0);
    Trace power =
        new Trace("readings.csv", seconds, new double[] {50, 50, 51, 52, 53, 53}, lines, 0.5, 0);
    assertThat(TaperFit.of(soc, power)).isEmpty();
  }
}
