package taperbook.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.MovedNumber;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.session.Origin;

/** Numbers in text; rounding by JCGM 100:2008, 7.2.6 (at most two digits of uncertainty). */
final class NumberFormatterTest {
  private final NumberFormatter kilometres = new NumberFormatter(Unit.KILOMETRE);
  private final NumberFormatter miles = new NumberFormatter(Unit.MILE);

  @ParameterizedTest
  @CsvSource({
    // The example of the rule: 10.05762 ohm with 27 milliohm is 10.058 ohm.
    "10.05762, 0.027, 3, 10.058",
    "171, 0.5, 3, 171.0",
    "1234.5, 120, 3, 1230",
    "0.7503, 0.0094, 4, 0.750",
  })
  void a_value_is_rounded_to_the_decimal_place_of_its_uncertainty(
      double value, double half, int most, String text) {
    assertThat(Rounding.nearest(value, Rounding.places(Interval.around(value, half), most)))
        .isEqualTo(text);
  }

  @Test
  void the_ends_of_an_interval_are_rounded_outward() {
    assertThat(kilometres.range(new Interval(23.4449, 23.5551), Unit.KILOWATT_HOUR))
        .startsWith("23.44")
        .contains("23.56");
  }

  @Test
  void a_whole_reading_is_printed_without_a_decimal() {
    assertThat(kilometres.value(Estimate.around(171, 0.5), Unit.KILOWATT)).isEqualTo("171\u00a0kW");
    assertThat(kilometres.value(Estimate.around(12, 0.5), Unit.PERCENT)).isEqualTo("12\u00a0%");
  }

  @ParameterizedTest
  @CsvSource({
    "610, 25, 10 min 10 s",
    "1475, 40, 24 min 35 s",
    "1476, 130, 24 min 40 s",
    "3900, 5, 1 h 5 min",
    "42, 1, 42 s",
    "0, 1, 0 s",
    "5400, 1200, 1 h 30 min",
  })
  void times_are_rounded_to_a_step_that_fits_their_uncertainty(
      double seconds, double half, String text) {
    assertThat(kilometres.value(Estimate.around(seconds, half), Unit.SECOND))
        .isEqualTo(text.replace(' ', '\u00a0'));
  }

  /** By hand: times of a trip, whose stops and speed are not known to the second. */
  @ParameterizedTest
  @CsvSource({
    "27360, 27240, 27480, '7 h 36 min, give or take 2 min'",
    // 7 h 35 min 50 s differs from the printed value by 10 s; both ends are within 130 s.
    "27350, 27230, 27470, '7 h 36 min, give or take 3 min'",
    "860, 820, 905, '14 min, give or take 2 min'",
    "27000, 27000, 27000, '7 h 30 min, exact'",
    // An exact value that is printed with fewer digits.
    "27017, 27017, 27017, '7 h 30 min, give or take 1 min'",
  })
  void times_of_a_trip_are_whole_minutes(double value, double low, double high, String text) {
    ReportNumber number =
        new ReportNumber(
            Metric.charging("trip_time", "Time for the trip", Unit.SECOND, Method.TRIP_PLAN),
            new Outcome.Measured(new Estimate(value, new Interval(low, high)), 0.95),
            new Origin("test-session", List.of()),
            List.of());
    assertThat(kilometres.outcome(number).replace('\u00a0', ' ')).isEqualTo(text);
  }

  @Test
  void changes_of_trip_times_are_in_whole_minutes_and_others_in_seconds() {
    Optional<Estimate> was = Optional.of(new Estimate(27360, new Interval(27241, 27479)));
    MovedNumber trip = moved("trip_time", was);
    assertThat(kilometres.value(trip, was).replace('\u00a0', ' ')).isEqualTo("7 h 36 min");
    assertThat(kilometres.range(trip, was).replace('\u00a0', ' '))
        .isEqualTo("7 h 34 min to 7 h 38 min");
    Optional<Estimate> time = Optional.of(new Estimate(389, new Interval(382, 396)));
    MovedNumber other = moved("time_to_add_100_km", time);
    assertThat(kilometres.value(other, time).replace('\u00a0', ' ')).isEqualTo("6 min 29 s");
    assertThat(kilometres.range(other, time).replace('\u00a0', ' '))
        .isEqualTo("6 min 22 s to 6 min 36 s");
    assertThat(kilometres.value(trip, Optional.empty())).isEqualTo("none");
    assertThat(kilometres.range(trip, Optional.empty())).isEmpty();
  }

  private static MovedNumber moved(String id, Optional<Estimate> before) {
    return new MovedNumber(
        id, "finch", "", "A number", Unit.SECOND, before, Optional.empty(), List.of());
  }

  @Test
  void miles_imply_their_derived_units() {
    // 170 Wh/km are 273.588 Wh/mi; 160.9344 km are 100 mi (NIST SP 811, B.8).
    assertThat(miles.value(Estimate.around(170, 1), Unit.WATT_HOUR_PER_KILOMETRE))
        .isEqualTo("273.6\u00a0Wh/mi");
    assertThat(miles.value(Estimate.around(160.9344, 3), Unit.KILOMETRE)).isEqualTo("100\u00a0mi");
    assertThat(miles.value(Estimate.around(171, 0.5), Unit.KILOWATT)).isEqualTo("171\u00a0kW");
  }

  @Test
  void dates_do_not_depend_on_the_locale() {
    assertThat(NumberFormatter.date(LocalDate.of(2026, 3, 14))).isEqualTo("14 March 2026");
  }

  @Test
  void a_minus_is_a_minus_sign() {
    assertThat(kilometres.value(Estimate.around(-40, 0.5), Unit.CELSIUS))
        .isEqualTo("\u221240\u00a0°C");
  }

  /** By hand: 3671 s are 1 h 1 min 11 s. */
  @ParameterizedTest
  @CsvSource({
    "0, 0:00",
    "9.4, 0:09",
    "59.6, 1:00",
    "386.7, 6:27",
    "3599, 59:59",
    "3599.7, 1:00:00",
    "3671, 1:01:11"
  })
  void a_time_code_is_the_nearest_second_in_minutes_and_seconds(double seconds, String code) {
    assertThat(NumberFormatter.timeCode(seconds)).isEqualTo(code);
  }
}
