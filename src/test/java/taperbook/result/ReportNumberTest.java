package taperbook.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import taperbook.i18n.Message;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.session.Origin;

/** JCGM 100:2008, 5.1.2: uncertainties of independent quantities add in quadrature. */
final class ReportNumberTest {
  @Test
  void coverage_intervals_add_in_quadrature() {
    // The root of 3 * 3 + 4 * 4 is 5.
    assertThat(number(100, 3, 0.95).differsSignificantly(number(105.1, 4, 0.95))).isTrue();
    assertThat(number(100, 3, 0.95).differsSignificantly(number(104.9, 4, 0.95))).isFalse();
    assertThat(number(104.9, 4, 0.95).differsSignificantly(number(100, 3, 0.95))).isFalse();
  }

  @Test
  void bounds_add_up() {
    assertThat(number(100, 3, 1).differsSignificantly(number(106.9, 4, 0.95))).isFalse();
    assertThat(number(107.1, 4, 1).differsSignificantly(number(100, 3, 0.95))).isTrue();
  }

  @Test
  void nothing_differs_from_a_withheld_number() {
    ReportNumber withheld = number(new Outcome.Withheld(Message.verbatim("not read")));
    assertThat(withheld.differsSignificantly(number(5, 0, 1))).isFalse();
    assertThat(number(5, 0, 1).differsSignificantly(withheld)).isFalse();
  }

  @Test
  void a_difference_uses_the_facing_sides_of_both_intervals() {
    ReportNumber upper =
        number(new Outcome.Measured(new Estimate(110, new Interval(107, 115)), 0.95));
    ReportNumber lower =
        number(new Outcome.Measured(new Estimate(100, new Interval(88, 104)), 0.95));
    // Below, 3 and 4 face each other; above, 5 and 12: the roots are 5 and 13.
    Interval ends = upper.minus(lower, 0).orElseThrow().estimateIfMeasured().orElseThrow().bounds();
    assertThat(ends.low()).isCloseTo(10 - 5, within(1e-12));
    assertThat(ends.high()).isCloseTo(10 + 13, within(1e-12));
    // With 12 more for the spread between runs, 5 becomes 13.
    assertThat(
            upper.minus(lower, 12).orElseThrow().estimateIfMeasured().orElseThrow().bounds().low())
        .isCloseTo(10 - 13, within(1e-12));
  }

  private static ReportNumber number(double value, double half, double coverage) {
    return number(new Outcome.Measured(Estimate.around(value, half), coverage));
  }

  private static ReportNumber number(Outcome outcome) {
    return new ReportNumber(
        Metric.charging("some_number", "Some number", Unit.KILOWATT, Method.HIGHEST_READING),
        outcome,
        new Origin("session", List.of()),
        List.of());
  }
}
