package taperbook.metric.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import taperbook.quantity.Estimate;

final class SegmentTest {
  @Test
  void its_ends_are_half_its_fall_above_and_below_its_mean() {
    Segment segment =
        new Segment(
            SegmentKind.TAPER,
            Estimate.around(10, 0.5),
            Estimate.around(30, 0.5),
            Estimate.around(-2, 0.1),
            true,
            Estimate.around(100, 1),
            List.of());
    assertThat(segment.width()).isEqualTo(20);
    assertThat(segment.startKilowatts()).isEqualTo(120);
    assertThat(segment.endKilowatts()).isEqualTo(80);
  }
}
