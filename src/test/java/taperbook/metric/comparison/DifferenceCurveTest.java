package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.metric.Sessions;
import taperbook.metric.comparison.CurveComparison.DifferenceCurve;
import taperbook.metric.course.Courses;
import taperbook.quantity.Interval;
import taperbook.result.Curve;
import taperbook.session.Channel;

/** The drawn difference is the band that determines the leads. */
final class DifferenceCurveTest {
  @Test
  void the_curve_has_the_values_and_both_edges_of_the_band() {
    Pair pair = Pairs.pair(3, 4);
    Band band = pair.band();
    Curve curve = DifferenceCurve.of(pair);
    assertThat(curve.size()).isEqualTo(band.size()).isLessThan(400);
    for (int i = 0; i < band.size(); i++) {
      assertThat(curve.x(i)).isEqualTo(band.percent(i));
      assertThat(curve.y(i)).isEqualTo(band.value(i));
      assertThat(curve.low(i)).isEqualTo(band.low(i)).isLessThan(curve.y(i));
      assertThat(curve.high(i)).isEqualTo(band.high(i)).isGreaterThan(curve.y(i));
    }
  }

  @Test
  void a_fine_band_is_drawn_at_every_other_point_and_at_its_end() {
    // Quarters of a per cent and 150 corners of a log that are none.
    double[] soc = IntStream.range(0, 152).mapToDouble(i -> i == 0 ? 0 : i * 0.66 - 0.3).toArray();
    double[] seconds = IntStream.range(0, 152).mapToDouble(i -> 10 * i).toArray();
    double[] power = IntStream.range(0, 152).mapToDouble(i -> 100).toArray();
    Side log = Pairs.side("log", 0, seconds, soc, power);
    for (double to : new double[] {99, 99.25}) {
      Pair pair = new Pair(log, log, new Interval(0, to), 0);
      Band band = pair.band();
      assertThat(band.size()).isBetween(401, 800);
      Curve curve = DifferenceCurve.of(pair);
      assertThat(curve.size()).isEqualTo(band.size() / 2 + 1);
      for (int i = 0; i + 1 < curve.size(); i++) {
        assertThat(curve.x(i)).isEqualTo(band.percent(2 * i));
      }
      assertThat(curve.x(curve.size() - 1)).isEqualTo(to);
    }
  }

  @Test
  void a_segment_within_a_wide_gap_is_marked() {
    // The gap from 20 % to 38 % is longer than a minute and than 6 % of the time.
    double[] seconds = {0, 30, 330, 360};
    Side gap =
        Side.of(
                new Courses(
                    Sessions.session()
                        .channel(Channel.SOC, 0.5, seconds, new double[] {10, 20, 38, 40})
                        .channel(Channel.POWER, 0.5, seconds, new double[] {100, 100, 100, 100})
                        .build(),
                    Optional.empty(),
                    Courses.FEW))
            .value()
            .orElseThrow();
    Curve curve = DifferenceCurve.of(new Pair(gap, gap, new Interval(10, 39), 0));
    for (int i = 0; i < curve.size(); i++) {
      assertThat(curve.wideGapAfter(i)).isEqualTo(curve.x(i) >= 20 && curve.x(i) < 38);
    }
    Curve inside = DifferenceCurve.of(new Pair(gap, gap, new Interval(25, 30), 0));
    assertThat(inside.wideGapAfter(0)).isTrue();
    assertThat(inside.wideGapAfter(inside.size() - 1)).isFalse();
  }
}
