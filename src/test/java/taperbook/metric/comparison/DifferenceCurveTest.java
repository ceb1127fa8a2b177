package taperbook.metric.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import taperbook.metric.comparison.CurveComparison.DifferenceCurve;
import taperbook.metric.course.Courses;
import taperbook.metric.course.ReadByHand;
import taperbook.metric.course.TrueCurve;
import taperbook.quantity.Interval;
import taperbook.result.Curve;

/** The drawn difference is the band that determines the leads. */
final class DifferenceCurveTest {
  private static Side side(String name, long seed) {
    TrueCurve curve = TrueCurve.random(new Random(seed), 10);
    return Side.of(
            new Courses(
                ReadByHand.session(name, curve, new Random(seed)), Optional.empty(), Courses.FEW))
        .value()
        .orElseThrow();
  }

  @Test
  void the_curve_has_the_values_and_both_edges_of_the_band() {
    Pair pair = new Pair(side("one", 3), side("other", 4), new Interval(20, 70), 0);
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
}
