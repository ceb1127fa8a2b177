package taperbook.format;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;

final class NumberFormatterCountTest {
  private final NumberFormatter formatter = new NumberFormatter(Unit.KILOMETRE);

  @Test
  void counts_have_no_decimals_and_no_unit() {
    assertThat(formatter.value(new Estimate(4, new Interval(3, 5)), Unit.ONE)).isEqualTo("4");
    assertThat(formatter.range(new Interval(3, 5), Unit.ONE)).isEqualTo("3 to 5");
  }

  @Test
  void a_ratio_keeps_its_decimals() {
    assertThat(formatter.range(new Interval(1.35, 1.5), Unit.ONE)).isEqualTo("1.35 to 1.50");
  }

  @Test
  void a_slope_is_rounded_to_the_decimal_place_of_its_uncertainty() {
    assertThat(formatter.value(Estimate.around(-1.8014, 0.006), Unit.KILOWATT_PER_PERCENT))
        .isEqualTo("\u22121.801\u00a0kW/%");
  }
}
