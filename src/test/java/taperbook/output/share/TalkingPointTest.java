package taperbook.output.share;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class TalkingPointTest {
  /** By hand: 3671 s are 1 h 1 min 11 s. */
  @ParameterizedTest
  @CsvSource({
    "0, 0:00",
    "9.4, 0:09",
    "59.6, 1:00",
    "386.7, 6:27",
    "3599, 59:59",
    "3599.7, 1:00:00",
    "3671, 1:01:11"
  })
  void a_time_code_is_the_nearest_second_in_minutes_and_seconds(double seconds, String code) {
    assertThat(TimeCode.of(seconds)).isEqualTo(code);
  }

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
