package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Means by hand, with t(1) = tan(0.475 pi) and t(2) = 4.302652729911275. */
final class SampleMeanTest {
  @Test
  void two_values_have_the_closed_form() {
    SampleMean mean = SampleMean.of(List.of(3.0, 7.0));
    assertThat(mean.value()).isEqualTo(5);
    assertThat(mean.count()).isEqualTo(2);
    assertThat(mean.deviation()).isCloseTo(4 / Math.sqrt(2), within(1e-12));
    assertThat(mean.standard()).isCloseTo(2, within(1e-12));
    assertThat(mean.half95()).isCloseTo(2 * Math.tan(0.475 * Math.PI), within(1e-9));
  }

  @Test
  void three_values_have_two_degrees_of_freedom() {
    SampleMean mean = SampleMean.of(List.of(1.0, 2.0, 6.0));
    // The squares 4, 1 and 9 over 2 are 7.
    assertThat(mean.value()).isEqualTo(3);
    assertThat(mean.deviation()).isCloseTo(Math.sqrt(7), within(1e-12));
    assertThat(mean.standard()).isCloseTo(Math.sqrt(7 / 3.0), within(1e-12));
    assertThat(mean.half95()).isCloseTo(4.302652729911275 * Math.sqrt(7 / 3.0), within(1e-9));
  }

  @Test
  void a_single_value_has_no_scatter() {
    assertThat(SampleMean.of(List.of(4.0))).isEqualTo(new SampleMean(4, 0, 1));
    assertThat(SampleMean.of(List.of(4.0)).half95()).isZero();
  }
}
