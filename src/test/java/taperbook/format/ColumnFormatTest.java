package taperbook.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.session.Origin;

/** Columns of numbers; decimal places by JCGM 100:2008, 7.2.6, as for single numbers. */
final class ColumnFormatTest {
  private static final NumberFormatter KILOMETRES = new NumberFormatter(Unit.KILOMETRE);

  @Test
  void all_values_have_the_decimal_place_of_the_least_certain() {
    assertThat(column(Unit.KILOWATT, est(132.83, 1.3), est(113.2, 10)))
        .containsExactly("kW", "133 131\u2013135", "113 103\u2013124");
  }

  @Test
  void the_most_certain_value_loses_at_most_one_digit() {
    assertThat(column(Unit.KILOWATT, est(132.83, 0.13), est(113.2, 30)))
        .containsExactly("kW", "133 132\u2013133", "113 83\u2013144");
  }

  @Test
  void times_are_as_on_a_clock() {
    assertThat(column(Unit.SECOND, est(389, 7.4), est(62, 3)))
        .containsExactly("min:s", "6:29 6:21\u20136:37", "1:02 0:59\u20131:05");
    assertThat(column(Unit.SECOND, est(3900, 5), est(389, 7)))
        .containsExactly("h:min:s", "1:05:00 1:04:55\u20131:05:05", "0:06:29 0:06:22\u20130:06:36");
  }

  @Test
  void negative_ends_are_joined_by_to() {
    assertThat(column(Unit.SECOND, est(3, 10))).containsExactly("min:s", "0:03 \u22120:07 to 0:13");
  }

  @Test
  void exact_values_have_no_interval() {
    assertThat(column(Unit.KILOWATT, Estimate.exactly(50))).containsExactly("kW", "50 exact");
  }

  @Test
  void values_are_in_miles_if_the_report_is() {
    // The international mile is 1.609344 km: 160.9344 km are 100 mi.
    ReportNumber number = number(Unit.KILOMETRE, est(160.9344, 1.609344));
    ColumnFormat text = new ColumnFormat(List.of(number), new NumberFormatter(Unit.MILE));
    assertThat(text.unit()).isEqualTo("mi");
    assertThat(text.range(number.estimate().orElseThrow())).isEqualTo("99.0\u2013101.0");
  }

  @Test
  void two_units_are_refused() {
    List<ReportNumber> mixed =
        List.of(number(Unit.KILOMETRE, est(1, 1)), number(Unit.KILOWATT, est(1, 1)));
    assertThatThrownBy(() -> new ColumnFormat(mixed, KILOMETRES))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("KILOWATT");
  }

  /** The unit, then value and interval of each estimate. */
  private static List<String> column(Unit unit, Estimate... estimates) {
    List<ReportNumber> numbers = Stream.of(estimates).map(e -> number(unit, e)).toList();
    ColumnFormat text = new ColumnFormat(numbers, KILOMETRES);
    return Stream.concat(
            Stream.of(text.unit()),
            Stream.of(estimates).map(e -> text.value(e) + " " + text.range(e)))
        .toList();
  }

  private static Estimate est(double value, double half) {
    return new Estimate(value, new Interval(value - half, value + half));
  }

  private static ReportNumber number(Unit unit, Estimate estimate) {
    return new ReportNumber(
        Metric.charging("some_number", "Some number", unit, Method.HIGHEST_READING),
        new Outcome.Measured(estimate, 0.95),
        new Origin("session", List.of()),
        List.of());
  }
}
