package taperbook.diagnostics;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Which parts of an external text reach a terminal. */
final class PrintableTest {
  @Test
  void visible_text_is_unchanged() {
    String text = "Zoë, 3 µm, 40\u00a0kW, 日本, e\u0301, \ud83d\ude97 \\u001b";
    assertThat(Printable.of(text)).isSameAs(text);
  }

  @Test
  void control_sequences_are_escaped() {
    assertThat(Printable.of("\u001b[2J\r\n\t\u007f\u009b1m\0"))
        .isEqualTo("\\u001b[2J\\u000d\\u000a\\u0009\\u007f\\u009b1m\\u0000");
  }

  @Test
  void control_direction_and_zero_width_characters_are_escaped() {
    StringBuilder all = new StringBuilder("\u061c\u200e\u200f\u2028\u2029\ufeff\u00ad\ud800");
    all.appendCodePoint(0xe0041);
    for (char c = 0; c < 0x20; c++) {
      all.append(c).append((char) (0x7f + c)).append((char) (0x200b + c % 5));
      all.append((char) (0x202a + c % 5)).append((char) (0x2060 + c % 5));
      all.append((char) (0x2066 + c % 4));
    }
    assertThat(Printable.of(all + "x").codePoints())
        .allMatch(c -> c > 0x1f && c < 0x7f)
        .endsWith((int) 'x');
    assertThat(Printable.of("\udc00\ud83d")).isEqualTo("\\udc00\\ud83d");
    assertThat(Printable.of(new String(Character.toChars(0xe0041)))).isEqualTo("\\u{e0041}");
  }

  @Test
  void line_breaks_of_the_program_are_kept() {
    assertThat(Printable.ofLines("a\nb\u001b\n\nc")).isEqualTo("a\nb\\u001b\n\nc");
    assertThat(Printable.ofLines("a\n")).isEqualTo("a\n");
  }
}
