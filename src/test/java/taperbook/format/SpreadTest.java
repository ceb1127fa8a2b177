package taperbook.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;

/** Symmetric tolerances, by hand; at most two digits by JCGM 100:2008, 7.2.6. */
final class SpreadTest {
  private static final Pattern TOLERANCE = Pattern.compile("give or take ([0-9.]+) kWh");

  private final NumberFormatter kilometres = new NumberFormatter(Unit.KILOMETRE);
  private final NumberFormatter miles = new NumberFormatter(Unit.MILE);

  @ParameterizedTest
  @CsvSource({
    "610, 585, 635, give or take 25 s",
    // The ends differ by 26 s and 57 s, too unequal for one tolerance.
    "247, 221, 304, between 3 min 41 s and 5 min 4 s",
    // Printed as 24 min 40 s, 134 s above the lower end, and rounded up to two digits.
    "1476, 1346, 1606, give or take 2 min 20 s",
    "5400, 4200, 6600, give or take 20 min",
    // 8 s and 10 s differ by a fifth of the larger; 7 s and 10 s by more.
    "100, 92, 110, give or take 10 s",
    "100, 93, 110, between 1 min 33 s and 1 min 50 s",
    "150, 150, 150, exact",
  })
  void times_have_one_tolerance_if_the_ends_are_nearly_symmetric(
      double value, double low, double high, String text) {
    assertThat(plain(kilometres.spread(new Estimate(value, new Interval(low, high)), Unit.SECOND)))
        .isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "171, 0.5, kW, give or take 0.5 kW",
    // Printed as 10.3, which is 0.38 above the lower end.
    "10.26, 0.34, kWh, give or take 0.4 kWh",
    "0.744, 0.019, kWh/%, give or take 0.019 kWh/%",
    // Printed as 1230, 4.5 below the value: the upper end is 124.5 above it.
    "1234.5, 120, km, give or take 130 km",
  })
  void tolerances_are_rounded_up_to_cover_both_ends(
      double value, double half, String unit, String text) {
    assertThat(
            plain(
                kilometres.spread(Estimate.around(value, half), Unit.ofSymbol(unit).orElseThrow())))
        .isEqualTo(text);
  }

  @Test
  void the_tolerance_is_in_the_units_of_the_report() {
    // 170 Wh/km with a tolerance of 1 are 273.588 Wh/mi with 1.609 (NIST SP 811, B.8), printed as
    // 273.6, which is 1.621 above the lower end.
    assertThat(plain(miles.spread(Estimate.around(170, 1), Unit.WATT_HOUR_PER_KILOMETRE)))
        .isEqualTo("give or take 1.7 Wh/mi");
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
  void the_printed_interval_always_covers_the_interval_with_at_most_two_digits(int seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 500; i++) {
      double value = random.nextDouble() * 100;
      double above = Math.pow(10, random.nextDouble() * 3 - 1.5);
      double below = above * (0.81 + 0.19 * random.nextDouble());
      Estimate estimate = new Estimate(value, new Interval(value - below, value + above));
      String printed = plain(kilometres.value(estimate, Unit.KILOWATT_HOUR));
      double shown = Double.parseDouble(printed.substring(0, printed.length() - 4));
      Matcher spread = TOLERANCE.matcher(plain(kilometres.spread(estimate, Unit.KILOWATT_HOUR)));
      assertThat(spread.matches()).isTrue();
      BigDecimal amount = new BigDecimal(spread.group(1));
      assertThat(shown - amount.doubleValue()).isLessThanOrEqualTo(value - below + 1e-6);
      assertThat(shown + amount.doubleValue()).isGreaterThanOrEqualTo(value + above - 1e-6);
      assertThat(amount.stripTrailingZeros().precision()).isLessThanOrEqualTo(2);
    }
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }
}
