package taperbook.metric;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import taperbook.format.NumberFormatter;
import taperbook.metric.course.ReadByHand;
import taperbook.metric.course.TrueCurve;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.result.Curve;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.session.Session;

/**
 * Every number of a session read from displays with steps has an interval, in its outcome and in
 * print.
 */
final class IntervalsTest {
  private static final Session SESSION =
      ReadByHand.session("read", TrueCurve.random(new Random(5), 9), new Random(5));
  private static final ReportResult RESULT =
      ReportMetrics.measure(
          Sessions.plan(List.of(new SocWindow(20, 70)), List.of()), SESSION, List.of(), List.of());

  /** Residuals of a fit have no interval, and all readings of this session are above 50 kW. */
  private static final List<String> EXACT =
      List.of("time_share_above_50_kw", "energy_fit_residual", "energy_fit_consistency");

  private static List<ReportNumber> measured() {
    return RESULT.main().numbers().all().stream().filter(n -> n.estimate().isPresent()).toList();
  }

  private static boolean isExact(ReportNumber number) {
    return number.estimate().orElseThrow().bounds().width() == 0;
  }

  @Test
  void each_inexact_number_has_an_interval_that_contains_it() {
    assertThat(measured()).hasSizeGreaterThan(30);
    assertThat(measured().stream().filter(IntervalsTest::isExact).map(ReportNumber::id))
        .containsExactlyElementsOf(EXACT);
  }

  @Test
  void each_interval_is_printed_with_both_ends_around_the_value() {
    NumberFormatter formatter = new NumberFormatter(Unit.KILOMETRE);
    for (ReportNumber number : measured()) {
      if (EXACT.contains(number.id())) {
        continue;
      }
      assertThat(formatter.spread(number).orElseThrow())
          .as(number.id())
          .containsPattern("^(give or take|between) .*[1-9]");
      // Two different ends, such as 103.5 to 104.5 kW.
      assertThat(formatter.range(number))
          .as(number.id())
          .matches(".+ to .+")
          .doesNotMatch("(.+) to \\1\\b.*");
    }
  }

  @Test
  void bands_of_curves_have_a_width() {
    for (Curve curve :
        List.of(
            RESULT.main().curves().powerOverSoc().orElseThrow(),
            RESULT.main().curves().powerOverTime().orElseThrow(),
            RESULT.main().curves().socOverTime().orElseThrow(),
            RESULT.main().curves().powerBand().orElseThrow())) {
      for (int i = 0; i < curve.size(); i++) {
        assertThat(curve.low(i)).isLessThan(curve.y(i));
        assertThat(curve.high(i)).isGreaterThan(curve.y(i));
      }
    }
  }
}
