package taperbook.output.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import taperbook.format.NumberFormatter;
import taperbook.plan.Basis;
import taperbook.plan.Paper;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.session.Fact;
import taperbook.session.Facts;
import taperbook.session.HowKnown;
import taperbook.session.RangeItem;
import taperbook.session.RowRef;

final class FactTextsTest {
  private static final RowRef ROW = new RowRef("sessions/ring/range-test.csv", 3);

  @Test
  void a_stated_tolerance_follows_the_value() {
    Map<RangeItem, Fact> facts = new EnumMap<>(RangeItem.class);
    facts.put(RangeItem.DISTANCE, fact("312.4", "km", "1.5"));
    facts.put(RangeItem.ODOMETER_CORRECTION, fact("1.004", "1", "0.002"));
    facts.put(RangeItem.AMBIENT_TEMPERATURE, fact("55", "degF", "4"));
    facts.put(RangeItem.AVERAGE_SPEED, fact("110", "km/h", ""));
    assertThat(FactTexts.table(new Facts<>(ROW.file(), RangeItem.class, facts)))
        .extracting(FactTexts.Stated::value)
        .containsExactly(
            "312.4\u00a0km, give or take 1.5\u00a0km",
            "1.004, give or take 0.002",
            "110\u00a0km/h",
            "55\u00a0\u00b0F, give or take 4\u00a0\u00b0F");
  }

  @Test
  void a_unit_other_than_that_of_the_report_is_in_brackets() {
    NumberFormatter miles = new NumberFormatter(Unit.MILE);
    // 100 km/h are 62.14 mph: the international mile is 1.609344 km.
    Fact speed = around("100", "km/h", 100, 0.5);
    assertThat(FactTexts.value(speed, miles)).isEqualTo("62.1\u00a0mph (100\u00a0km/h)");
    assertThat(FactTexts.value(speed, new NumberFormatter(Unit.KILOMETRE)))
        .isEqualTo("100\u00a0km/h");
    // 50 degrees Fahrenheit are 10 degrees Celsius.
    assertThat(FactTexts.value(around("50", "degF", 10, 0.3), miles))
        .isEqualTo("10\u00a0\u00b0C (50\u00a0\u00b0F)");
    assertThat(FactTexts.value(around("10", "Cel", 10, 0.5), fahrenheit()))
        .isEqualTo("50\u00a0\u00b0F (10\u00a0\u00b0C)");
    assertThat(fahrenheit().degrees(Estimate.exactly(10))).isEqualTo("18\u00a0\u00b0F");
  }

  private static NumberFormatter fahrenheit() {
    return new NumberFormatter(
        new ReportPlan.Style(
            Unit.MILE, Basis.DRIVEN, "report", ReportPlan.Film.NONE, Paper.A4, Unit.FAHRENHEIT));
  }

  private static Fact around(String value, String unit, double base, double half) {
    return new Fact(value, unit, Optional.of(Estimate.around(base, half)), HowKnown.MEASURED, ROW);
  }

  private static Fact fact(String value, String unit, String giveOrTake) {
    return new Fact(
        value,
        unit,
        Optional.of(Estimate.exactly(Double.parseDouble(value))),
        giveOrTake,
        HowKnown.MEASURED,
        ROW);
  }
}
