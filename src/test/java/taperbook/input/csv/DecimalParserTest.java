package taperbook.input.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Compares plain decimals with {@code Double.parseDouble}, bit by bit. */
final class DecimalParserTest {
  private final DecimalParser decimal = new DecimalParser();

  /** The number if the entire text is one, otherwise NaN. */
  private double whole(String text) {
    int end = decimal.read(text.toCharArray(), 0, text.length());
    return end == text.length() ? decimal.value() : Double.NaN;
  }

  @Test
  void returns_the_double_that_the_jdk_parses() {
    Random random = new Random(1);
    for (int i = 0; i < 200_000; i++) {
      int digits = 1 + random.nextInt(15);
      StringBuilder text = new StringBuilder(random.nextInt(5) == 0 ? "-" : "");
      int point = random.nextInt(digits + 1);
      for (int k = 0; k < digits; k++) {
        if (k == point && k > 0) {
          text.append('.');
        }
        text.append((char) ('0' + random.nextInt(10)));
      }
      String written = text.toString();
      assertThat(Double.doubleToLongBits(whole(written)))
          .as(written)
          .isEqualTo(Double.doubleToLongBits(Double.parseDouble(written)));
      int dot = written.indexOf('.');
      assertThat(decimal.decimals()).isEqualTo(dot < 0 ? 0 : written.length() - dot - 1);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "-",
        "- 1",
        ".",
        "5.",
        ".5",
        "-.5",
        "1.2.3",
        "1 2",
        "1,5",
        "1e3",
        "+1",
        "--1",
        "0x1",
        "NaN",
        "1\t",
        "1\u00a0",
        "\u0661",
        "1234567890123456",
        "123456789012345.6",
        "0.1234567890123456"
      })
  void defers_other_notations_to_the_full_parser(String text) {
    assertThat(whole(text)).isNaN();
  }

  @Test
  void zero_keeps_its_sign() {
    assertThat(1 / whole("-0.0")).isNegative();
  }

  @Test
  void spaces_around_a_number_are_consumed_and_later_text_is_not() {
    char[] text = "x  -7.25 ;8".toCharArray();
    assertThat(decimal.read(text, 1, text.length)).isEqualTo(9);
    assertThat(decimal.value()).isEqualTo(-7.25);
    assertThat(decimal.read(text, 10, 11)).isEqualTo(11);
    assertThat(decimal.value()).isEqualTo(8);
  }
}
