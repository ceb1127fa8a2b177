package taperbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Plain decimals against {@code Double.parseDouble}, to the last bit. */
final class PlainDecimalTest {
  @Test
  void gives_the_double_that_the_runtime_reads() {
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
      CellNumber read = PlainDecimal.read(written).orElseThrow();
      assertThat(Double.doubleToLongBits(read.value()))
          .as(written)
          .isEqualTo(Double.doubleToLongBits(Double.parseDouble(written)));
      int dot = written.indexOf('.');
      assertThat(read.lastPlace()).isEqualTo(dot < 0 ? 0 : dot + 1 - written.length());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "-",
        ".",
        "5.",
        ".5",
        "-.5",
        "1.2.3",
        "1,5",
        "1e3",
        "+1",
        "--1",
        "0x1",
        "NaN",
        "1 ",
        "\u0661",
        "1234567890123456",
        "123456789012345.6",
        "0.1234567890123456"
      })
  void leaves_everything_else_to_the_full_reader(String text) {
    assertThat(PlainDecimal.read(text)).isEqualTo(Optional.empty());
  }

  @Test
  void zero_keeps_its_sign() {
    assertThat(1 / PlainDecimal.read("-0.0").orElseThrow().value()).isNegative();
  }
}
