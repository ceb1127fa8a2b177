package taperbook.diagnostics;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class QuotedTest {
  @Test
  void text_is_enclosed_in_quotes() {
    assertThat(Quoted.of("12,5")).isEqualTo("\"12,5\"");
    assertThat(Quoted.of("")).isEqualTo("\"\"");
  }

  @Test
  void line_ends_and_other_controls_become_spaces() {
    assertThat(Quoted.of("a\r\nb\u001b[31m")).isEqualTo("\"a  b [31m\"");
  }

  @Test
  void long_text_is_truncated_between_characters_with_an_ellipsis() {
    String car = "\ud83d\ude97";
    assertThat(Quoted.of(car.repeat(60))).isEqualTo("\"" + car.repeat(60) + "\"");
    assertThat(Quoted.of(car.repeat(61))).isEqualTo("\"" + car.repeat(60) + "\u2026\"");
  }
}
