package taperbook.format;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Spoken amounts; expected texts by hand. */
final class SpokenFormatTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0 seconds",
    "31, 30 seconds",
    "48, 50 seconds",
    "60, 1 minute",
    "88, 1\u00bd minutes",
    "107, 1\u00be minutes",
    "257, 4\u00bc minutes",
    "389, 6\u00bd minutes",
    "584, 9\u00bd minutes",
    "598, 10 minutes",
    "908, 15 minutes",
    "3569, 59 minutes",
    "3571, 1 hour",
    "4800, 1 hour 20 minutes",
    "7200, 2 hours",
    "-88, \u22121\u00bd minutes",
  })
  void times_are_rounded_to_spoken_steps(double seconds, String text) {
    assertThat(SpokenFormat.time(seconds)).isEqualTo(text);
  }

  @Test
  void spoken_times_are_within_a_twelfth() {
    for (double seconds = 50; seconds < 20000; seconds += 7) {
      String text = SpokenFormat.time(seconds);
      assertThat(Math.abs(parsed(text) / seconds - 1))
          .as(seconds + ": " + text)
          .isLessThan(1 / 12.0);
    }
  }

  /** Parses a spoken time, s. */
  private static double parsed(String text) {
    String[] parts = text.split(" ", -1);
    double sum = 0;
    for (int i = 0; i + 1 < parts.length; i += 2) {
      String digits = parts[i].replaceAll("[\u00bc\u00bd\u00be]", "");
      double amount = digits.isEmpty() ? 0 : Double.parseDouble(digits);
      amount += parts[i].endsWith("\u00bc") ? 0.25 : 0;
      amount += parts[i].endsWith("\u00bd") ? 0.5 : 0;
      amount += parts[i].endsWith("\u00be") ? 0.75 : 0;
      sum += amount * (parts[i + 1].startsWith("h") ? 3600 : parts[i + 1].startsWith("m") ? 60 : 1);
    }
    return sum;
  }

  @ParameterizedTest
  @CsvSource({
    "168.2, 168",
    "17.24, 17",
    "9.876, 9.88",
    "345.4, 345",
    "1234, 1230",
    "-3.5, \u22123.5"
  })
  void other_amounts_have_at_most_three_digits(double amount, String text) {
    assertThat(SpokenFormat.amount(amount)).isEqualTo(text);
  }
}
