package taperbook.format;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;

final class NumberFormatterIntervalTest {
  private final NumberFormatter kilometres = new NumberFormatter(Unit.KILOMETRE);
  private final NumberFormatter miles = new NumberFormatter(Unit.MILE);

  @Test
  void the_interval_of_the_true_value_is_printed() {
    assertThat(kilometres.between(new Interval(170.5, 171.5), Unit.KILOWATT))
        .isEqualTo("between 170.5 and 171.5\u00a0kW");
  }

  @Test
  void a_value_of_zero_width_is_printed_as_exact() {
    assertThat(kilometres.between(Interval.exactly(150), Unit.KILOMETRE)).isEqualTo("exact");
  }

  @Test
  void numbers_and_units_of_time_are_kept_together() {
    assertThat(kilometres.value(Estimate.around(1480, 1), Unit.SECOND))
        .isEqualTo("24\u00a0min\u00a040\u00a0s");
    assertThat(kilometres.between(new Interval(3900, 3960), Unit.SECOND))
        .isEqualTo("between 1\u00a0h\u00a05\u00a0min and 1\u00a0h\u00a06\u00a0min");
  }

  @ParameterizedTest
  @CsvSource({"1, kW, 1 kW", "0.1, kWh, 0.1 kWh", "0.5, %, 0.5 %", "10, s, 10 s"})
  void a_step_is_printed_without_trailing_zeros(double amount, String unit, String expected) {
    assertThat(kilometres.exactly(amount, Unit.ofSymbol(unit).orElseThrow()))
        .isEqualTo(expected.replace(' ', '\u00a0'));
  }

  @Test
  void a_step_of_distance_is_printed_in_the_unit_of_the_report() {
    // The international mile is 1.609344 km exactly (NIST SP 811, B.8).
    assertThat(miles.exactly(1.609344, Unit.KILOMETRE)).isEqualTo("1\u00a0mi");
  }
}
