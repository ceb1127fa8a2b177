package taperbook.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Compares conversions with external values: the definitions of the international mile, foot, pound
 * and degree Fahrenheit in NIST SP 811 (2008), appendix B.8, and in UCUM, and derived values by
 * hand. Each row has a relative tolerance: zero if the factor is exact in binary or given with all
 * digits, otherwise the digits of the source.
 *
 * @see <a href="https://doi.org/10.6028/NIST.SP.811e2008">NIST SP 811 (2008)</a>
 */
final class UnitReferenceTest {
  @ParameterizedTest(name = "{0} {1} is {2} {3}")
  @CsvSource({
    "1,mi,1.609344,km,0",
    "100,mi,160.9344,km,1e-15",
    "200,mi,321.8688,km,1e-15",
    "70,mi/h,112.65408,km/h,1e-15",
    "31.2928,m/s,70,mi/h,1e-12",
    "1,ft,0.3048,m,0",
    "1,lb,0.45359237,kg,0",
    "20,degF,-6.666666667,Cel,1e-9",
    "70,degF,21.111111111,Cel,1e-10",
    "95,degF,35,Cel,1e-15",
    "250,Wh/mi,15.534279805933,kWh/100 km,1e-13",
    "250,Wh/mi,4,mi/kWh,1e-15",
    "250,Wh/mi,6.437376,km/kWh,1e-12",
    "18,kWh/100 km,289.68192,Wh/mi,1e-12",
    "18,kWh/100 km,3.452062178,mi/kWh,1e-9",
    "3.5,mi/kWh,285.714285714,Wh/mi,1e-11",
    "3.5,mi/kWh,17.753462635,kWh/100 km,1e-10",
    "1,h,3600,s,0",
    "75.5,min,4530,s,0",
    "1,bar,1000,hPa,0",
    "1,kPa,10,hPa,0",
    "1,mi/min,1.609344,km/min,0"
  })
  void conversions_are_as_published(
      double amount, String from, double expected, String to, double relative) {
    Unit source = Unit.ofSymbol(from).orElseThrow();
    Unit target = Unit.ofSymbol(to).orElseThrow();
    assertThat(target.fromBase(source.toBase(amount)))
        .isCloseTo(expected, within(relative * Math.abs(expected)));
  }

  /**
   * The pound-force is 4.4482216152605 N and the inch 25.4 mm, both exact; SP 811 rounds to 7
   * digits.
   */
  @Test
  void pound_per_square_inch_uses_the_international_pound_and_inch() {
    double hectopascals = 4.4482216152605 / (0.0254 * 0.0254) / 100;
    assertThat(Unit.POUND_PER_SQUARE_INCH.toBase(1))
        .isCloseTo(hectopascals, within(5e-8 * hectopascals));
  }

  @Test
  void mile_is_not_the_survey_mile() {
    double surveyKilometres = 5280 * 1200.0 / 3937 / 1000;
    assertThat(surveyKilometres - Unit.MILE.toBase(1)).isGreaterThan(3e-6);
  }

  @ParameterizedTest
  @EnumSource(Unit.class)
  void conversion_and_back_returns_the_value(Unit unit) {
    for (double amount : new double[] {0.1, 1, 37.5, 4321}) {
      assertThat(unit.fromBase(unit.toBase(amount)))
          .isCloseTo(amount, within(1e-12 * amount + 1e-13));
    }
  }
}
