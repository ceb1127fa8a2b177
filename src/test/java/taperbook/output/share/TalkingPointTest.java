package taperbook.output.share;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

final class TalkingPointTest {
  @Test
  void the_first_caption_that_fits_is_used() {
    String long43 = "x".repeat(43);
    assertThat(TalkingPoint.fitting(List.of(long43, "y\u00a0%"))).isEqualTo("y %");
    assertThat(TalkingPoint.fitting(List.of("z".repeat(42), "y"))).isEqualTo("z".repeat(42));
    assertThat(TalkingPoint.fitting(List.of(long43))).isEqualTo("x".repeat(41) + "\u2026");
  }

  @Test
  void a_caption_that_is_too_long_has_no_point() {
    assertThatThrownBy(() -> new TalkingPoint(0, "x".repeat(43), "", List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
